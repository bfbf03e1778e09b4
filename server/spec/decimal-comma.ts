import type { ValueProblem } from './value-problem.ts';

/** A comma between figures (`14,03`) as a problem with the value written with a point, or null. */
export function decimalComma(written: string): ValueProblem | null {
  const at = written.search(/\d,\d/);
  if (at < 0) return null;
  const start = written.slice(0, at + 1).search(/\d+$/);
  const end = at + 2 + (/^\d*/.exec(written.slice(at + 2))?.[0].length ?? 0);
  // A comma before three figures and a point sets off thousands.
  const suggestion = written.replace(/(\d),(?=\d{3}\.\d)/g, '$1').replace(/(\d),(?=\d)/g, '$1.');
  return {
    code: 'decimal-comma',
    message: `${written.slice(start, end)} has a decimal comma; a point is wanted here: ${suggestion}`,
    at: [start, end],
    suggestion,
  };
}
