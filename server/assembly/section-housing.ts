import { plain } from '../engine/base/figures.ts';
import type { Assembly } from './assemble.ts';
import type { FilledHousing, FilledSeat } from './housings.ts';
import { type CupBore, cupBores } from './section-cups.ts';
import { flangeRings } from './section-flanges.ts';
import { sectionRetainingRing } from './section-retaining-ring.ts';
import { plainPart, type Say, type SectionPart, type Step } from './section-shape.ts';

/** What a housing stands in. */
export interface HousingContext {
  readonly assembly: Assembly;
  readonly asWritten: Assembly;
  /** The hub's mid-plane, mm from the left dropout face. */
  readonly middle: number;
  readonly say: Say;
}

/** A seat in its place. Lengths and places in mm. */
export interface PlacedSeat {
  readonly filled: FilledSeat;
  readonly stop: number;
  /** Housing end face the seat is bored from. */
  readonly mouth: number;
  readonly bore: number;
}

/** Shell or freehub as a tube with its seats bored in, its flanges and its retaining rings. */
export function sectionHousing(
  filled: FilledHousing,
  stack: readonly SectionPart[],
  context: HousingContext,
): readonly SectionPart[] {
  const { say } = context;
  const { housing } = filled;
  const seats = placeSeats(filled, stack, say);
  const cups = cupBores(filled, stack);
  const ends = endsOf(filled, seats, cups, context);
  if (!ends) return [];
  const [left, right] = ends;
  const placed = seats.map((seat) => ({ ...seat, mouth: seat.filled.from === 'left' ? left : right }));
  const widest = Math.max(...placed.map(({ bore }) => bore), ...cups.map(({ diameter }) => diameter), 0);
  const outside = housing.values.outside?.value.nominal ?? (0 < widest ? widest + 6 : 34);
  if (!housing.values.outside)
    say(`outside of the ${housing.name} is drawn ⌀${plain(outside)}: it is not written`);
  const through = throughBore(filled, placed, outside, say);
  const grooves = placed.flatMap((seat) => sectionRetainingRing(seat, say));
  const flanges = filled.housing.name === 'shell' ? flangeRings(outside, context) : [];
  for (const { name, from, to } of flanges) {
    if (to < left || right < from)
      say(`the ${name} flange stands off the ${housing.name}, which ends before it`);
  }

  const cuts = [
    left,
    right,
    ...placed.flatMap(({ stop }) => [stop]),
    ...grooves.flatMap(({ groove }) => [groove.left, groove.right]),
    ...flanges.flatMap(({ from, to }) => [from, to]),
    ...cups.flatMap((cup) => [cup.left, cup.right]),
  ];
  const inside = [...new Set(cuts.map(exact))]
    .filter((at) => left <= at && at <= right)
    .sort((a, b) => a - b);
  const steps = inside.slice(1).map((to, index): Step => {
    const from = inside[index] as number;
    const middle = (from + to) / 2;
    const seat = placed.find((one) => within(middle, one.stop, one.mouth));
    const groove = grooves.find((one) => within(middle, one.groove.left, one.groove.right))?.groove;
    const flange = flanges.find((one) => within(middle, one.from, one.to));
    const cup = cups.find((one) => within(middle, one.left, one.right));
    const aroundSeat = seat !== undefined || placed.length === 0;
    return {
      left: from,
      right: to,
      inside: groove?.diameter ?? seat?.bore ?? Math.max(cup?.diameter ?? 0, through.diameter),
      outside: flange ? Math.max(flange.foot, outside) : outside,
      guessed: {
        inside: seat ? false : cup !== undefined || through.guessed,
        // `outside` is written for the wall around the seats; between them nothing says it.
        outside: !flange && (!housing.values.outside || !aroundSeat),
      },
    };
  });
  const body = plainPart({
    address: housing.name,
    kind: housing.name,
    path: housing.path,
    left,
    right,
    steps,
    detached: flanges.flatMap(({ rim }) => (rim ? [rim] : [])),
    spokeHoles: flanges.flatMap(({ spokeHole }) => (spokeHole ? [spokeHole] : [])),
    splineTip: housing.name === 'freehub' ? outside + 3 : null,
  });
  if (housing.name === 'freehub')
    say('splines of the freehub are drawn 1.5 mm deep from its outside: their tips are not written');
  return [body, ...grooves.map(({ part }) => part)];
}

/** Each seat's stop where its bearing touches it; where the distance between shoulders differs, half on each side. */
function placeSeats(
  filled: FilledHousing,
  stack: readonly SectionPart[],
  say: Say,
): readonly Omit<PlacedSeat, 'mouth'>[] {
  const seats = filled.seats.flatMap((seat) => {
    const innermost = seat.from === 'left' ? seat.bearings.at(-1) : seat.bearings[0];
    const bearing = stack.find(({ address }) => address === innermost?.address)?.bearing;
    if (!bearing) {
      say(`${seat.address} is not drawn: no bearing stands in it`);
      return [];
    }
    const stop = seat.from === 'left' ? bearing.outer.right : bearing.outer.left;
    const bore = seat.seat.values.bore?.value.nominal ?? bearing.outer.outside;
    if (!seat.seat.values.bore) say(`bore of ${seat.address} is drawn as its bearing's outside`);
    return [{ filled: seat, stop, bore }];
  });
  const between = filled.housing.values['between-shoulders']?.value.nominal;
  const ordered = [...seats].sort((a, b) => a.stop - b.stop);
  const [first, last] = [ordered[0], ordered.at(-1)];
  if (between === undefined || !first || !last || first === last) return ordered;
  const off = (last.stop - first.stop - between) / 2;
  return ordered.map((seat) =>
    seat === first
      ? { ...seat, stop: seat.stop + off }
      : seat === last
        ? { ...seat, stop: seat.stop - off }
        : seat,
  );
}

/** End faces of the housing: by the depth of the outermost seats, by the length, else flush with the bearings. */
function endsOf(
  filled: FilledHousing,
  seats: readonly Omit<PlacedSeat, 'mouth'>[],
  cups: readonly CupBore[],
  { assembly, middle, say }: HousingContext,
): readonly [number, number] | null {
  const { housing } = filled;
  const length = housing.values.length?.value.nominal;
  const [leftCup, rightCup] = cups;
  if (seats.length === 0 && length === undefined && leftCup && rightCup) {
    say(`the ${housing.name} is drawn from ball row to ball row: its length is not written`);
    return [exact(leftCup.mouth), exact(rightCup.mouth)];
  }
  if (seats.length === 0) {
    const total = length ?? assembly.width.wanted?.nominal;
    if (total === undefined) return null;
    const own = length ?? total * 0.6;
    say(
      `the ${housing.name} is drawn in the middle${length === undefined ? `, ${plain(own)} mm long` : ''}: no seat places it`,
    );
    return [middle - own / 2, middle + own / 2];
  }
  const mouth = (side: 'left' | 'right'): number | null => {
    const own = seats.filter(({ filled: seat }) => seat.from === side);
    const seat = side === 'left' ? own[0] : own.at(-1);
    if (!seat) return null;
    const written = seat.filled.seat.values.depth?.value.nominal;
    const rings = seat.filled.bearings.reduce(
      (sum, { bearing }) => sum + (bearing?.outerWidth?.drawn.nominal ?? 0),
      0,
    );
    if (written === undefined)
      say(`${seat.filled.address} is drawn as deep as its bearing: its depth is not written`);
    const inMouth = seat.filled.stopSide === seat.filled.from ? mouthDepth(seat.filled) : null;
    const deep = inMouth === null ? (written ?? rings) : rings + inMouth;
    return side === 'left' ? seat.stop - deep : seat.stop + deep;
  };
  const [left, right] = [mouth('left'), mouth('right')];
  // A blind end gets a wall beyond the last stop.
  const wall = 3;
  const [firstStop, lastStop] = [seats[0]?.stop ?? 0, seats.at(-1)?.stop ?? 0];
  const leftEnd = left ?? (length !== undefined && right !== null ? right - length : firstStop - wall);
  const rightEnd = right ?? (length !== undefined && left !== null ? left + length : lastStop + wall);
  if ((left === null || right === null) && length === undefined) {
    say(
      `the blind end of the ${housing.name} is drawn ${wall} mm beyond its last shoulder: its length is not written`,
    );
  }
  return leftEnd < rightEnd ? [exact(leftEnd), exact(rightEnd)] : null;
}

/** From the end face to the face of a ring in the mouth of a seat, mm; null where nothing tells. */
function mouthDepth({ seat }: FilledSeat): number | null {
  const { 'groove-from-face': groove, thickness } = seat.ring?.values ?? {};
  if (groove && thickness) return groove.value.nominal + thickness.value.nominal;
  return seat.values.depth?.value.nominal ?? null;
}

function throughBore(
  filled: FilledHousing,
  seats: readonly PlacedSeat[],
  outside: number,
  say: Say,
): { readonly diameter: number; readonly guessed: boolean } {
  const written =
    filled.housing.values.through ??
    seats.find(({ filled: seat }) => seat.seat.values['shoulder-bore'])?.filled.seat.values['shoulder-bore'];
  if (written) return { diameter: written.value.nominal, guessed: false };
  if (seats.length === 0) {
    say(`bore through the ${filled.housing.name} is drawn ⌀${plain(outside - 6)}: it is not written`);
    return { diameter: outside - 6, guessed: true };
  }
  const smallest = Math.min(...seats.map(({ bore }) => bore));
  const shoulders = seats.filter(({ filled: seat }) => seat.stop === 'shoulder');
  if (shoulders.length === 0) return { diameter: smallest, guessed: true };
  const diameter = smallest - 2;
  say(`bore through the ${filled.housing.name} is drawn ⌀${plain(diameter)}: it is not written`);
  return { diameter, guessed: true };
}

const within = (at: number, a: number, b: number): boolean => Math.min(a, b) <= at && at <= Math.max(a, b);
const exact = (value: number): number => Math.round(value * 1e6) / 1e6;
