import type { BesidePart } from '../spec/beside-model.ts';
import { wantedGap } from './gap-loops.ts';
import type { LinePart } from './line.ts';
import { type GapLoop, gather, negate, type TermOrMissing, termOf } from './loop.ts';
import { type SettlingRules, settle } from './settle.ts';
import type { ResolvedHub } from './variants.ts';

/** The faces the dropouts bear on, as addresses a part beside the stack can name. */
export const dropoutFaces = ['dropout.left', 'dropout.right'] as const;

/** Gaps of the parts beside the stack to what each runs against; a rotor or driver face to its dropout face. */
export function besideGaps(
  hub: ResolvedHub,
  line: readonly LinePart[],
  rules: SettlingRules,
): readonly GapLoop[] {
  return hub.beside.flatMap((item) => {
    const loop = besideGap(item, line, rules);
    return loop ? [loop] : [];
  });
}

/**
 * Everything is measured from the left dropout face: the part from `at` to `at` + length, what it runs against
 * from its left to its right face. The gap lies between the two faces that look at each other.
 */
function besideGap(item: BesidePart, line: readonly LinePart[], rules: SettlingRules): GapLoop | null {
  const { at, gap, length } = item.values;
  const to = item.values.to?.value ?? dropoutOf(item);
  if (!at || to === null) return null;
  const target = facesOf(to, line);
  if (!target) return null;
  const self = { address: item.address, key: 'at', path: item.path };
  const distance = settle({ value: at.value.distance, path: at.path }, rules);
  const left = [...upTo(line, at.value.from), termOf(at, distance, self)];
  const own = length ? [termOf(length, settle(length, rules), { ...self, key: 'length' })] : [];
  const liesBefore = to === 'dropout.right' || (to !== 'dropout.left' && sum(left) <= sum(target.left));
  const items = liesBefore
    ? [...target.left, ...[...left, ...own].map(negate)]
    : [...left, ...target.right.map(negate)];
  const wanted = gap ? wantedGap(settle(gap, rules), gap.value.tolerance.kind !== 'none') : null;
  return { kind: 'gap', role: 'beside', between: [item.address, to], wanted, ...gather(cancel(items)) };
}

function dropoutOf(item: BesidePart): string | null {
  if (item.kind === 'rotor-face') return 'dropout.left';
  return item.kind === 'driver-face' ? 'dropout.right' : null;
}

interface Faces {
  readonly left: readonly TermOrMissing[];
  readonly right: readonly TermOrMissing[];
}

function facesOf(address: string, line: readonly LinePart[]): Faces | null {
  const whole = line.map((part) => part.length);
  if (address === 'dropout.left') return { left: [], right: [] };
  if (address === 'dropout.right') return { left: whole, right: whole };
  const index = line.findIndex((part) => part.address === address);
  return index === -1 ? null : { left: whole.slice(0, index), right: whole.slice(0, index + 1) };
}

function upTo(line: readonly LinePart[], address: string | null): readonly TermOrMissing[] {
  const index = address === null ? 0 : line.findIndex((part) => part.address === address);
  return line.slice(0, Math.max(index, 0)).map((part) => part.length);
}

/** A length that enters once each way does not enter at all. */
function cancel(items: readonly TermOrMissing[]): readonly TermOrMissing[] {
  const kept: TermOrMissing[] = [];
  for (const item of items) {
    const twin = kept.findIndex(
      (other) => other.settled && item.settled && other.path === item.path && other.sign !== item.sign,
    );
    if (twin === -1) kept.push(item);
    else kept.splice(twin, 1);
  }
  return kept;
}

function sum(items: readonly TermOrMissing[]): number {
  return items.reduce(
    (total, item) => total + (item.settled ? item.sign * item.count * item.settled.drawn.nominal : 0),
    0,
  );
}
