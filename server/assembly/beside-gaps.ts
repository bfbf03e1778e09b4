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
    const loop = besideGap(item, { hub, line, rules });
    return loop ? [loop] : [];
  });
}

interface Around {
  readonly hub: ResolvedHub;
  readonly line: readonly LinePart[];
  readonly rules: SettlingRules;
}

/**
 * Everything is measured from the left dropout face: the part from `at` to `at` + length, what it runs against
 * from its left to its right face. The gap lies between the two faces that look at each other. A gap that is asked
 * for and cannot be followed to a face stays unchecked.
 */
function besideGap(item: BesidePart, around: Around): GapLoop | null {
  const { rules } = around;
  const { at, gap } = item.values;
  const to = item.values.to?.value ?? dropoutOf(item);
  const wanted = gap ? wantedGap(settle(gap, rules), gap.value.tolerance.kind !== 'none') : null;
  const own = facesOf(item.address, around);
  const target = to === null ? null : facesOf(to, around);
  if (!own || !target) {
    const key = at ? 'to, a part of the stack,' : 'at';
    const missing = [{ address: item.address, key, path: item.path }];
    const asked = gap !== undefined || item.values.to !== undefined;
    if (!asked) return null;
    return {
      kind: 'gap',
      role: 'beside',
      between: [item.address, to ?? 'stack'],
      wanted,
      terms: [],
      missing,
    };
  }
  const address = to ?? '';
  const liesBefore =
    address === 'dropout.right' || (address !== 'dropout.left' && sum(own.left) <= sum(target.left));
  const items = liesBefore
    ? [...target.left, ...own.right.map(negate)]
    : [...own.left, ...target.right.map(negate)];
  return { kind: 'gap', role: 'beside', between: [item.address, address], wanted, ...gather(cancel(items)) };
}

function dropoutOf(item: BesidePart): string | null {
  if (item.kind === 'rotor-face') return 'dropout.left';
  return item.kind === 'driver-face' ? 'dropout.right' : null;
}

interface Faces {
  readonly left: readonly TermOrMissing[];
  readonly right: readonly TermOrMissing[];
}

/** The two faces of what has an address, from the left dropout face; null where the address has none. */
function facesOf(address: string, around: Around, asking: readonly string[] = []): Faces | null {
  const { hub, line } = around;
  const whole = line.map((part) => part.length);
  if (address === 'dropout.left') return { left: [], right: [] };
  if (address === 'dropout.right') return { left: whole, right: whole };
  const index = line.findIndex((part) => part.address === address);
  if (index !== -1) return { left: whole.slice(0, index), right: whole.slice(0, index + 1) };
  const item = hub.beside.find((part) => part.address === address);
  // Two parts that are each measured from the other stand nowhere.
  return item && !asking.includes(address) ? facesBeside(item, around, [...asking, address]) : null;
}

function facesBeside(item: BesidePart, around: Around, asking: readonly string[]): Faces | null {
  const { at, length } = item.values;
  const from = at?.value.from ?? null;
  const start = from === null ? { left: [] } : facesOf(from, around, asking);
  if (!at || !start) return null;
  const self = { address: item.address, key: 'at', path: item.path };
  const distance = settle({ value: at.value.distance, path: at.path }, around.rules);
  const left = [...start.left, termOf(at, distance, self)];
  const own = length ? [termOf(length, settle(length, around.rules), { ...self, key: 'length' })] : [];
  return { left, right: [...left, ...own] };
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
