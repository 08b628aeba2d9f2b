import { nameKey } from '../core/name-key';
import type { TypedLine } from '../model/line-question';
import { measureWord } from './line/unit-words';

/**
 * A line after its ingredient is known, with the names of the ingredient's own measures (a leaf, a pod): "3 leaves gelatine" needs no
 * question any more where gelatine says what a leaf is, and "3 gelatine leaves" is the same line. Nothing else is settled.
 */
export function settledLine(line: TypedLine, measures: Iterable<string>): TypedLine {
  const named = new Map([...measures].map((name) => [measureWord(nameKey(name)) ?? nameKey(name), name]));
  const last = line.name.split(' ').at(-1) ?? '';
  const inName =
    line.unit === 'each' && line.name.includes(' ') ? named.get(measureWord(last) ?? nameKey(last)) : undefined;
  if (inName !== undefined) {
    return { ...line, unit: inName, measure: true, name: line.name.slice(0, -last.length).trimEnd() };
  }
  const unit = line.measure && line.unit !== null ? named.get(line.unit) : undefined;
  if (unit === undefined) return line;
  const questions = line.questions.filter(({ code }) => code !== 'named-measure');
  return { ...line, unit, certain: questions.length === 0, questions };
}
