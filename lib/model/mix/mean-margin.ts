/** The portion-weighted mean margin of the items whose margin is known: sum(CM sold) / sum(sold). Null where none of those was sold. */
export function meanMargin(items: readonly { readonly sold: number; readonly margin: number | null }[]): number | null {
  const costed = items.flatMap(({ sold, margin }) => (margin === null ? [] : [{ sold, margin }]));
  const sold = costed.reduce((sum, item) => sum + item.sold, 0);
  return sold > 0 ? costed.reduce((sum, item) => sum + item.margin * item.sold, 0) / sold : null;
}
