/** Words in brackets, and the line without them. A bracket that is never closed stays where it is, as a space. */
export function withoutBrackets(text: string): { readonly text: string; readonly inside: readonly string[] } {
  const inside: string[] = [];
  let open = text;
  for (;;) {
    const taken = open.replace(/\(([^()]*)\)|\[([^[\]]*)\]/, (_, round?: string, square?: string) => {
      inside.push((round ?? square ?? '').trim());
      return ' ';
    });
    if (taken === open) break;
    open = taken;
  }
  return {
    text: open
      .replace(/[()[\]{}]/g, ' ')
      .replace(/\s+/g, ' ')
      .replace(/ (?=[,;:.])/g, '')
      .trim(),
    inside: inside.filter((words) => words !== ''),
  };
}
