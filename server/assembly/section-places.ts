import { plain } from '../engine/base/figures.ts';
import type { StackKind } from '../spec/model.ts';
import type { Assembly } from './assemble.ts';
import { type LinePart, nominalOf } from './line.ts';
import { isMissing } from './loop.ts';

/** Where each part of the clamped line stands, with lengths filled in where they are missing. */
export interface Places {
  readonly length: number;
  readonly at: ReadonlyMap<
    LinePart,
    { readonly left: number; readonly right: number; readonly guessed: boolean }
  >;
  readonly assumed: readonly string[];
}

/** Lengths that a part of unknown length is drawn with, mm: middling ones, only to have something to show. */
const usual: Record<StackKind, number> = {
  'end-cap': 12,
  bearing: 6,
  spacer: 30,
  shim: 0.2,
  washer: 1,
  collar: 30,
  adjuster: 8,
  'wave-washer': 1.5,
  cone: 12,
  locknut: 5,
};

/**
 * Places the line once more for the eye: a part of unknown length gets what the width leaves for it when it
 * is the only one, else a usual length. Loops are never closed over these.
 */
export function placeAll(assembly: Assembly): Places {
  const { line, width } = assembly;
  const missing = line.filter(({ length }) => isMissing(length));
  const known = line.reduce((sum, { length }) => sum + (isMissing(length) ? 0 : nominalOf(length)), 0);
  const wanted = width.wanted?.nominal;
  const left = wanted === undefined ? 0 : wanted - known;
  const remainder = missing.length === 1 && 0 < left ? left : null;
  // Cones are set by hand: the right one and what lies outside of it end where the width wants them.
  const cones = line.filter(({ part }) => part.kind === 'cone');
  const setByHand = cones.length === 2 && missing.length === 0 && 0 < left ? cones[1] : undefined;
  const at = new Map<LinePart, { left: number; right: number; guessed: boolean }>();
  const assumed: string[] = [];
  let face = 0;
  if (setByHand)
    assumed.push('the cones are drawn as far apart as the width leaves them: they are set by hand');
  for (const part of line) {
    if (part === setByHand) face += left;
    const guessed = isMissing(part.length);
    const length = isMissing(part.length) ? (remainder ?? usual[part.part.kind]) : nominalOf(part.length);
    if (guessed) {
      const why =
        remainder === null
          ? 'its length is not written'
          : `what the width of ${plain(wanted ?? 0)} mm leaves`;
      assumed.push(`${part.address} is drawn ${plain(length)} mm long: ${why}`);
    }
    const right = face + Math.max(length, 0);
    at.set(part, { left: face, right, guessed });
    face = right;
  }
  return { length: face, at, assumed };
}
