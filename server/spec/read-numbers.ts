import { isSeq } from 'yaml';
import { makeProblem } from './make-problem.ts';
import type { Placed, SpecPath } from './place.ts';
import type { Entry, Reader } from './section-reader.ts';
import { readNumber } from './small-values.ts';
import { asScalar, isEmpty, nodeSpan, writtenOf } from './yaml-text.ts';

/** A list of numbers, or one alone; one that is no number is reported and left out. `unit` may stand behind each. */
export function readNumbers(
  reader: Reader,
  entry: Entry,
  path: SpecPath,
  example: string,
  unit: 'mm' | 'N' = 'mm',
): Placed<readonly number[]> | null {
  const items = isSeq(entry.value) ? entry.value.items : [entry.value];
  if (isEmpty(entry.value)) return null;
  const numbers: number[] = [];
  for (const [i, node] of items.entries()) {
    const scalar = asScalar(node);
    const span = nodeSpan(reader.yaml, node) ?? entry.keySpan;
    if (!scalar) {
      const message = `${entry.key} is a list of numbers, such as ${example}`;
      reader.problems.push(
        makeProblem('value-not-understood', message, entry.keySpan, { data: { key: entry.key, path } }),
      );
      return null;
    }
    const written = withoutUnit(writtenOf(reader.yaml, scalar), unit);
    const reading = readNumber(written, 'a number', 0, 1e4, example);
    if ('value' in reading) numbers.push(reading.value);
    else {
      const { code, message } = reading.problem;
      reader.problems.push(
        makeProblem(code, `${entry.key}: ${message}`, span, { data: { key: entry.key, path: [...path, i] } }),
      );
    }
  }
  return { value: numbers, path };
}

function withoutUnit(written: string, unit: string): string {
  const text = written.trimEnd();
  return text.endsWith(unit) ? text.slice(0, -unit.length).trimEnd() : text;
}
