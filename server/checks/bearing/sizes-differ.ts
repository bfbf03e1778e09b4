import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledSeat } from '../../assembly/housings.ts';
import { plain } from '../../engine/base/figures.ts';
import type { DecodedBearing } from '../../engine/bearings/decode-bearing.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { copyCode, type Known } from './copy-code.ts';
import { saySize } from './fitting.ts';
import { oneSlipApart } from './one-slip-apart.ts';

/** Two seats are alike, and the bearings in them are of two sizes. */
export const sizesDiffer: Check = {
  code: 'sizes-differ',
  group: 'bearing',
  severity: 'warning',
  summary: 'Two seats of a housing are alike, and the bearings in them are of two sizes.',
  page: {
    why: 'Seats of one bore and one depth are made for one bearing. A wider ring of the same diameters stands proud of its seat and shifts the stack, and a code with one digit more or less is easily typed. Where two sizes are meant, the seats should say so with their depths.',
    bad: pageHub(['code: 6803-2RS\n    seat: shell.right', 'code: 63803-2RS\n    seat: shell.right']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) =>
    eachVariant(analysis, (variant) =>
      hasSeats(variant) ? differing(analysis, variant) : oneSlipApart(analysis, variant),
    ),
};

interface Seated extends Known {
  readonly seat: FilledSeat;
}

function* differing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { shell, freehub } = variant.assembly;
  for (const housing of [shell, freehub]) {
    const seated = (housing?.seats ?? []).map(single);
    const [one, other] = seated;
    if (seated.length !== 2 || !one || !other || !alike(one, other)) continue;
    const apart = differences(one.bearing, other.bearing);
    if (apart.length === 0) continue;
    const [kept, suspect] = worse(one) < worse(other) ? [one, other] : [other, one];
    const [keep, change] = worse(one) === worse(other) ? [one, other] : [kept, suspect];
    const sure = clearly(keep, change);
    // Two outsides in one bore: the seats say so themselves, unless one of the two plainly belongs.
    if (one.bearing.outside !== other.bearing.outside && !sure) continue;
    const place = change.stacked.from;
    yield {
      path: place,
      message: `${name(change)}, ${name(keep)}: ${apart.join(' and ')} differ in two seats that are alike — make them one size, or draw the seats for two`,
      related: [
        { path: keep.stacked.from, message: name(keep) },
        ...[change, keep].flatMap(({ seat }) => seatPlace(seat)),
      ],
      severity: sure ? 'error' : 'warning',
      doubts: [place],
      data: {
        bearings: [change, keep].map(({ stacked, bearing }) => [stacked.address, saySize(bearing)]),
        apart,
      },
      fixes: [...copyCode(analysis, keep, change, sure), ...copyCode(analysis, change, keep, false)],
    };
  }
}

const hasSeats = ({ assembly }: VariantAnalysis): boolean =>
  assembly.shell !== null || assembly.freehub !== null;

/** The one bearing of a seat; null for an empty seat or a pair. */
function single(seat: FilledSeat): Seated | null {
  const stacked = seat.bearings.length === 1 ? seat.bearings[0]?.bearing : null;
  return stacked?.bearing ? { seat, stacked, bearing: stacked.bearing } : null;
}

/** Seats are alike when bore and depth agree as far as both are written. */
function alike(a: Seated, b: Seated): boolean {
  const { bore: boreA, depth: depthA } = a.seat.seat.values;
  const { bore: boreB, depth: depthB } = b.seat.seat.values;
  if (!boreA || !boreB || 0.1 < apartBy(boreA, boreB)) return false;
  return !depthA || !depthB || apartBy(depthA, depthB) <= 0.25;
}

const apartBy = (a: Placed<Dimension>, b: Placed<Dimension>): number =>
  Math.abs(a.value.nominal - b.value.nominal);

function differences(a: DecodedBearing, b: DecodedBearing): readonly string[] {
  return (['bore', 'outside', 'width'] as const).flatMap((key) =>
    a[key] === b[key] ? [] : [`${key}s ${plain(a[key])} and ${plain(b[key])}`],
  );
}

/** How far the ring is from what its seat is drawn for, mm: the larger of width against depth and outside against bore. */
function worse({ seat, bearing }: Seated): number {
  const { bore, depth } = seat.seat.values;
  const [deep, wide] = [depth?.value.nominal ?? bearing.width, bore?.value.nominal ?? bearing.outside];
  return Math.max(Math.abs(deep - bearing.width), Math.abs(wide - bearing.outside));
}

/** Whether the seats are drawn for one of the two and not for the other. */
const clearly = (keep: Seated, change: Seated): boolean => worse(keep) <= 0.5 && 0.5 < worse(change);

const name = ({ stacked, bearing }: Seated): string => `${stacked.address} is ${saySize(bearing)}`;

function seatPlace(seat: FilledSeat): { path: Placed<Dimension>['path']; message: string }[] {
  const { bore, depth } = seat.seat.values;
  const deep = depth ? `, ${plain(depth.value.nominal)} deep` : '';
  return bore
    ? [{ path: bore.path, message: `${seat.address} is bored ${plain(bore.value.nominal)}${deep}` }]
    : [];
}
