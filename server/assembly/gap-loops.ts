import { type FilledHousing, type FilledSeat, housingTerm, stopTerms } from './housings.ts';
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
export function wantedGap(settled: Settled, toleranced: boolean): Wanted {
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
  if (left.stopSide === 'left') items.unshift(from.length);
  if (right.stopSide === 'right') items.push(to.length);
  return items;
}

/** From the stop of a seat out to the housing's end on one side: its depth, or round by the housing's length. */
function fromStopToEnd(
  filled: FilledHousing,
  seat: FilledSeat,
  side: 'left' | 'right',
  rules: SettlingRules,
): readonly TermOrMissing[] {
  if (seat.from === side) return stopTerms(seat, rules);
  return [housingTerm(filled.housing, 'length', rules), ...stopTerms(seat, rules, -1)];
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
