import type { Unchecked } from '../../assembly/assemble.ts';
import { asBuilt, meanOf, type SettlingRules, settle, sizeRange } from '../../assembly/settle.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed, SpecPath } from '../../spec/place.ts';

/** What is gathered while a wheel is worked out: what it would take, and what was taken for granted. Each is said once. */
export interface Notes {
  readonly unchecked: Unchecked[];
  readonly assumed: string[];
}

/** Notes that something could not be worked out. */
export function lacks(notes: Notes, what: string, missing: string, path: SpecPath): void {
  const known = notes.unchecked.some((one) => one.what === what && one.missing === missing);
  if (!known) notes.unchecked.push({ what, missing, path });
}

/** Notes what was taken for granted. */
export function assumes(notes: Notes, text: string): void {
  if (!notes.assumed.includes(text)) notes.assumed.push(text);
}

/** A size as it is today, mm: the reading where there is one, else the middle of what was drawn; ± how far it may stray. */
export interface Size {
  readonly value: number;
  readonly stray: number;
}

/** The size of a dimension as it is today; null where it is not written. */
export function sizeOf(placed: Placed<Dimension> | undefined, rules: SettlingRules): Size | null {
  if (!placed) return null;
  const limits = asBuilt(settle(placed, rules));
  const [lo, hi] = sizeRange(limits);
  return { value: meanOf(limits), stray: (hi - lo) / 2 };
}
