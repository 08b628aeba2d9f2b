import { useId } from 'react';

/** What is missing, one sentence with its remedy a line; nothing where nothing is. */
export function MissingList({
  title,
  issues,
}: {
  title: string;
  issues: readonly { readonly code: string; readonly about: string; readonly text: string }[];
}) {
  const id = useId();
  if (issues.length === 0) return null;
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <ul>
        {issues.map(({ code, about, text }) => (
          <li key={`${code} ${about}`}>{text}</li>
        ))}
      </ul>
    </section>
  );
}
