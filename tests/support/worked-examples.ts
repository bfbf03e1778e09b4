import { expect } from 'vitest';
import { recordsOf } from './reference-rows.ts';

/** A published example with the figures it prints and how closely they are printed. */
export interface WorkedExample {
  readonly id: string;
  readonly source: string;
  readonly inputs: Readonly<Record<string, never>>;
  readonly expected: Readonly<Record<string, number>>;
  readonly tolerance: Tolerance & { readonly keys?: Readonly<Record<string, Tolerance>> };
}

interface Tolerance {
  readonly abs?: number;
  readonly rel?: number;
}

const examples = recordsOf<WorkedExample>('worked/bearing-mechanics.json');

/** The published examples whose id starts so; it fails the test when there are none. */
export function workedExamples(start: string): readonly WorkedExample[] {
  const found = examples.filter(({ id }) => id.startsWith(start));
  if (found.length === 0) throw new Error(`no worked example ${start}`);
  return found;
}

/** The one published example with this id. */
export function workedExample(id: string): WorkedExample {
  const found = examples.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`no worked example ${id}`);
  return found;
}

/** The inputs of an example as numbers. */
export function numbers(example: WorkedExample): Record<string, number> {
  return example.inputs as Record<string, number>;
}

/** Compares computed figures with the printed ones of the same name, each within its printed tolerance. */
export function expectPrinted(example: WorkedExample, computed: Readonly<Record<string, number>>): void {
  for (const [name, value] of Object.entries(computed)) {
    const printed = example.expected[name];
    expect(printed, `${example.id} prints ${name}`).toBeTypeOf('number');
    const { abs = 0, rel = 0 } = example.tolerance.keys?.[name] ?? example.tolerance;
    const allowed = Math.max(abs, rel * Math.abs(printed as number));
    expect(allowed, `${example.id} ${name} has a tolerance`).toBeGreaterThan(0);
    expect(
      Math.abs(value - (printed as number)),
      `${example.id} ${name}: ${value} against ${printed}`,
    ).toBeLessThanOrEqual(allowed);
  }
}
