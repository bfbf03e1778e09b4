import type { FilledHousing } from '../../assembly/housings.ts';
import type { PairMechanics } from './pair-mechanics.ts';

/**
 * Inner-ring position less outer-ring position of each bearing of a line, the first at zero, mm: the mismatches of
 * its pairs added up. A ring that only its spacer locates was pressed until it met that spacer, so it goes with the
 * bearing on the far side of it. Null where the pairs do not tie all bearings together.
 */
export function linePositions(
  order: readonly string[],
  pairs: readonly PairMechanics[],
  housing: FilledHousing,
): readonly number[] | null {
  const ties = pairs.filter((pair) => pair.loop.located !== 'spacer');
  const pressed = pairs.filter((pair) => pair.loop.located === 'spacer');
  const met = pressed.filter((pair) => meetsSpacer(pair, housing));
  const places = new Map<string, number>([[order[0] ?? '', 0]]);
  // Stops first, then the spacer each ring was pressed against, then whatever still ties a bearing to the rest.
  for (const some of [ties, met, ties, pressed, ties, met]) spread(places, some);
  const found = order.map((address) => places.get(address));
  return found.every((place) => place !== undefined) ? found : null;
}

/** Hands places on along the pairs until nothing new is reached. */
function spread(places: Map<string, number>, pairs: readonly PairMechanics[]): void {
  for (let before = -1; before < places.size; ) {
    before = places.size;
    for (const { loop, input } of pairs) {
      const [left, right] = loop.bearings;
      const [l, r] = [places.get(left), places.get(right)];
      if (l !== undefined && r === undefined) places.set(right, l + input.mismatch);
      else if (r !== undefined && l === undefined) places.set(left, r - input.mismatch);
    }
  }
}

/** Whether the spacer of a pair is the one its ring was pressed against: the one ahead of it on its way in. */
function meetsSpacer({ loop }: PairMechanics, { seats }: FilledHousing): boolean {
  const seat = (address: string) =>
    seats.find(({ contact, stop }) => stop === 'spacer' && contact?.address === address);
  return seat(loop.bearings[0])?.from === 'left' || seat(loop.bearings[1])?.from === 'right';
}
