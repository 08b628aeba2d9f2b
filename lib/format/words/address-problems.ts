import type { ProblemWords } from './problems';

export const noSuchPath: ProblemWords = {
  title: 'No such address',
  detail: 'The address has a per cent sign that spells no letter. Write names in it as UTF-8, such as %C3%A9 for é.',
};

export function notServed(method: string, served: string): ProblemWords {
  return { title: 'Not done here', detail: `${method} does nothing at this address. Use ${served}.` };
}

export function unknownOptions(names: readonly string[], known: readonly string[]): ProblemWords {
  const there = known.length === 0 ? 'It takes none.' : `There is ${known.join(', ')}.`;
  return {
    title: 'No such option',
    detail: `This address takes no ${names.map((name) => `“${name}”`).join(', ')}. ${there}`,
  };
}

export const unknownOption = 'is no option of this address';

export function noSuchFormat(format: string, known: readonly string[]): ProblemWords {
  return {
    title: 'No such format',
    detail: `There is no answer in the format “${format}”. There is ${known.slice(0, -1).join(', ')} and ${known.at(-1)}.`,
  };
}
