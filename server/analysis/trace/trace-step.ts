import type { SourceId } from '../../engine/base/sources.ts';

/** Units that a traced value comes in; `1` is a number without one. */
export type TraceUnit = 'mm' | 'N' | 'MPa' | '°C' | 'mm/N' | 'mm²' | 'km' | '°' | '1';

/** A value with its name: what a formula is fed with. */
export interface TracedValue {
  readonly name: string;
  readonly value: number;
  readonly unit: TraceUnit;
}

/** One link of the chain that leads to a number. */
export interface TraceStep extends TracedValue {
  /** In the field's symbols; null where the value is written or read from a table. */
  readonly formula: string | null;
  /** Key into the bibliography; null where it is the user's own or plain arithmetic. */
  readonly source: SourceId | null;
  readonly inputs: readonly TracedValue[];
  readonly assumed: readonly string[];
}

/** A value as an input. */
export function input(name: string, value: number, unit: TraceUnit): TracedValue {
  return { name, value, unit };
}

/** A link with nothing assumed, unless said. */
export function step(
  result: TracedValue,
  formula: string | null,
  source: SourceId | null,
  inputs: readonly TracedValue[],
  assumed: readonly string[] = [],
): TraceStep {
  return { ...result, formula, source, inputs, assumed };
}
