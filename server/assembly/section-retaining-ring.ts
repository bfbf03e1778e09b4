import { plain } from '../engine/base/figures.ts';
import { boreRing } from '../engine/tables/retaining-rings.ts';
import type { PlacedSeat } from './section-housing.ts';
import { plainPart, type Say, type SectionPart } from './section-shape.ts';

/** The retaining ring of a seat and the groove it lies in; none where the seat has no ring. */
export function sectionRetainingRing(
  seat: PlacedSeat,
  say: Say,
): readonly {
  readonly part: SectionPart;
  readonly groove: { readonly left: number; readonly right: number; readonly diameter: number };
}[] {
  const { ring, address, values: seatValues } = seat.filled.seat;
  if (!ring) return [];
  const { values } = ring;
  const bore = values.size?.value.nominal ?? seatValues.bore?.value.nominal ?? seat.bore;
  const standard = boreRing(bore);
  const name = `${address}.retaining-ring`;
  const thickness = values.thickness?.value.nominal ?? standard?.thickness ?? 1.2;
  const width = values['groove-width']?.value.nominal ?? standard?.grooveWidth ?? thickness + 0.1;
  const diameter = standard?.grooveDiameter ?? seat.bore + 1.2;
  say(
    standard
      ? `groove of ${name} is drawn ⌀${plain(diameter)}, of DIN 472 for a bore of ${plain(bore)}`
      : `groove of ${name} is drawn ⌀${plain(diameter)}: no standard ring has a bore of ${plain(bore)}`,
  );
  const out = seat.filled.from === 'left' ? -1 : 1;
  const rings = seat.filled.bearings.reduce(
    (sum, { bearing }) => sum + (bearing?.outerWidth?.drawn.nominal ?? 0),
    0,
  );
  const blind = values.side?.value === 'blind';
  const fromFace = values['groove-from-face']?.value.nominal;
  // The face of the ring that looks at the bearing, and the wall of the groove it leans on.
  const toBearing = blind
    ? seat.stop
    : fromFace !== undefined
      ? seat.mouth - out * (fromFace + thickness)
      : seat.stop + out * rings;
  const lean = blind ? toBearing - out * thickness : toBearing + out * thickness;
  if (!blind && fromFace === undefined)
    say(`${name} is drawn against the bearing: groove-from-face is not written`);
  const grooveOther = lean - (blind ? -out : out) * width;
  const [left, right] = order(toBearing, lean);
  const [grooveLeft, grooveRight] = order(lean, grooveOther);
  const inside = seat.bore - Math.max(2, seat.bore * 0.09);
  return [
    {
      part: plainPart({
        address: name,
        kind: 'retaining-ring',
        path: ring.path,
        left,
        right,
        steps: [{ left, right, inside, outside: diameter - 0.1, guessed: { inside: true } }],
      }),
      groove: { left: grooveLeft, right: grooveRight, diameter },
    },
  ];
}

const order = (a: number, b: number): readonly [number, number] => (a < b ? [a, b] : [b, a]);
