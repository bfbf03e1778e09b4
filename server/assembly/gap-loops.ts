import { depthTerm, type FilledHousing, type FilledSeat, housingTerm } from './housings.ts';
import type { LinePart } from './line.ts';
import { type GapLoop, gather, negate, type TermOrMissing, termOf, type Wanted } from './loop.ts';
import { type Settled, type SettlingRules, settle, sizeRange } from './settle.ts';
import type { ResolvedHub } from './variants.ts';

/** The gap between the shell's right end and the freehub's left end. */
export function freehubGap(
  shell: FilledHousing | null,
  freehub: FilledHousing | null,
  line: readonly LinePart[],
  rules: SettlingRules,
  leastGap: number,
): GapLoop | null {
  if (!shell || !freehub) return null;
  const inboard = located(shell.seats, line).at(-1);
  const outboard = located(freehub.seats, line)[0];
  if (!inboard?.contact || !outboard?.contact) return null;
  const items: TermOrMissing[] = [
    ...faceToFace(line, inboard, outboard),
    ...fromStopToEnd(shell, inboard, 'right', rules).map(negate),
    ...fromStopToEnd(freehub, outboard, 'left', rules).map(negate),
  ];
  const { gap } = freehub.housing.values;
  const wanted = gap
    ? wantedGap(settle(gap, rules), gap.value.tolerance.kind !== 'none')
    : {
        nominal: leastGap,
        lo: leastGap,
        hi: Number.POSITIVE_INFINITY,
        path: freehub.housing.path,
        assumed: `at least ${leastGap}: freehub.gap is not written`,
      };
  return { kind: 'gap', role: 'running', between: ['shell', 'freehub'], wanted, ...gather(items) };
}

/** A running gap with no tolerance is a least gap; with one, its limits. */
function wantedGap(settled: Settled, toleranced: boolean): Wanted {
  const [lo, hi] = sizeRange(settled.drawn);
  const { nominal } = settled.drawn;
  return { nominal, lo, hi: toleranced ? hi : Number.POSITIVE_INFINITY, path: settled.path, assumed: null };
}

function located(seats: readonly FilledSeat[], line: readonly LinePart[]): readonly FilledSeat[] {
  return seats
    .filter((seat) => seat.contact && seat.stop !== 'spacer')
    .sort((a, b) => line.indexOf(a.contact as LinePart) - line.indexOf(b.contact as LinePart));
}

/** Along the inner rings from the stop of one seat to the stop of the next. */
function faceToFace(
  line: readonly LinePart[],
  left: FilledSeat,
  right: FilledSeat,
): readonly TermOrMissing[] {
  const [from, to] = [left.contact as LinePart, right.contact as LinePart];
  const items: TermOrMissing[] = line
    .slice(line.indexOf(from) + 1, line.indexOf(to))
    .map((part) => part.length);
  if (left.from === 'right') items.unshift(from.length);
  if (right.from === 'left') items.push(to.length);
  return items;
}

/** From the stop of a seat out to the housing's end on one side: its depth, or round by the housing's length. */
function fromStopToEnd(
  filled: FilledHousing,
  seat: FilledSeat,
  side: 'left' | 'right',
  rules: SettlingRules,
): readonly TermOrMissing[] {
  if (seat.from === side) return [depthTerm(seat, rules)];
  return [housingTerm(filled.housing, 'length', rules), depthTerm(seat, rules, -1)];
}

/**
 * The room left for the axle between the bottoms of the two end caps' sockets; when it is used up the caps
 * bottom on the axle before they clamp the bearings.
 */
export function axleEndGap(
  hub: ResolvedHub,
  line: readonly LinePart[],
  rules: SettlingRules,
): GapLoop | null {
  const length = hub.axle?.values.length;
  const [first, last] = [line[0], line.at(-1)];
  if (
    !hub.axle ||
    !length ||
    first?.part.kind !== 'end-cap' ||
    last?.part.kind !== 'end-cap' ||
    first === last
  )
    return null;
  const socket = (cap: LinePart): TermOrMissing => {
    const placed = cap.part.values.socket;
    const at = { address: cap.address, key: 'socket', path: cap.part.path };
    return termOf(placed, placed ? settle(placed, rules) : null, at);
  };
  if (!first.part.values.socket && !last.part.values.socket) return null;
  const axle = termOf(
    length,
    settle(length, rules),
    { address: 'axle', key: 'length', path: hub.axle.path },
    -1,
  );
  const items = [socket(first), ...line.slice(1, -1).map((part) => part.length), socket(last), axle];
  return { kind: 'gap', role: 'axle-end', between: ['axle', 'end-cap'], wanted: null, ...gather(items) };
}

/** Gaps of the parts beside the stack: to the part each runs against, else to the left dropout face. */
export function besideGaps(
  hub: ResolvedHub,
  line: readonly LinePart[],
  rules: SettlingRules,
): readonly GapLoop[] {
  return hub.beside.flatMap((item): readonly GapLoop[] => {
    const { at, to, gap, length } = item.values;
    if (!at || !to) return [];
    const place = at.value;
    const self = { address: item.address, key: 'at', path: item.path };
    const distance = settle({ value: place.distance, path: at.path }, rules);
    const left = [...upTo(line, place.from), termOf(at, distance, self)];
    const target = line.findIndex((part) => part.address === to.value);
    if (target === -1) return [];
    const own = length ? termOf(length, settle(length, rules), { ...self, key: 'length' }) : null;
    const toTheRight = line.slice(0, target).map((part) => part.length);
    const toTheLeft = [...toTheRight, (line[target] as LinePart).length];
    // The part lies left or right of what it runs against, by nominal place.
    const before = sum(left) <= sum(toTheRight);
    const items = before
      ? [...toTheRight, ...left.map(negate), ...(own ? [negate(own)] : [])]
      : [...left, ...toTheLeft.map(negate)];
    const wanted = gap ? wantedGap(settle(gap, rules), gap.value.tolerance.kind !== 'none') : null;
    return [
      { kind: 'gap', role: 'beside', between: [item.address, to.value], wanted, ...gather(cancel(items)) },
    ];
  });
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
