import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { StackBearing } from '../../assembly/bearings.ts';
import { plain } from '../../engine/base/figures.ts';
import { decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { bearingsFitting } from '../../engine/bearings/identify-bearing.ts';
import type { Dimension, StackPart } from '../../spec/model.ts';
import type { Placed, SpecPath } from '../../spec/place.ts';
import { findSeat } from '../seat-of.ts';

/** What a bearing must fit: the bore of its seat and the axle through it, where they are written. */
export interface Surroundings {
  readonly seat: {
    readonly address: string;
    readonly bore: number;
    readonly depth: number | null;
    readonly path: SpecPath;
  } | null;
  readonly axle: { readonly diameter: number; readonly path: SpecPath } | null;
}

interface Size {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
}

/** A drawn nominal and the ring in it agree when they are this near, mm: a written 25.99 still means 26. */
const near = 0.05;
/** A ring may stand this far out of its seat, mm, before the seat is plainly made for another. */
const proud = 0.5;

/** What stands around a bearing of the stack. */
export function surroundingsOf(variant: VariantAnalysis, part: StackPart): Surroundings {
  const address = part.values.seat?.value;
  const { bore, depth } = (address === undefined ? undefined : findSeat(variant, address))?.seat.values ?? {};
  const journal: Placed<Dimension> | undefined =
    part.values.journal ?? variant.assembly.hub.axle?.values.diameter;
  const seat =
    bore && address !== undefined
      ? { address, bore: bore.value.nominal, depth: depth?.value.nominal ?? null, path: bore.path }
      : null;
  return { seat, axle: journal ? { diameter: journal.value.nominal, path: journal.path } : null };
}

/** Whether a size fits all that is known around it; null where nothing is known. */
export function fits({ seat, axle }: Surroundings, size: Size): boolean | null {
  if (!seat && !axle) return null;
  if (seat && (near < Math.abs(seat.bore - size.outside) || (seat.depth ?? size.width) + proud < size.width))
    return false;
  return !axle || Math.abs(axle.diameter - size.bore) <= near;
}

/** `, which fits seat shell.left and the axle`; empty for a size that does not fit, or where nothing is known. */
export function sayFits(around: Surroundings, size: Size): string {
  if (!fits(around, size)) return '';
  const what = [
    around.seat && `seat ${around.seat.address}`,
    around.axle && `the ${plain(around.axle.diameter)} mm axle`,
  ];
  return `, which fits ${what.filter((word) => word !== null).join(' and ')}`;
}

/**
 * Codes of the deep groove bearings that fit seat and axle, commonest in hubs first; none while one of the two is
 * unknown.
 */
export function codesThatFit(around: Surroundings): ReturnType<typeof bearingsFitting> {
  const { seat, axle } = around;
  if (!seat || !axle) return [];
  const fitting = bearingsFitting({ bore: axle.diameter, outside: seat.bore }, near);
  return fitting.filter((size) => fits(around, size) && isDeepGroove(size.code));
}

function isDeepGroove(code: string): boolean {
  const found = decodeBearing(code);
  return 'bearing' in found && found.bearing.kind === 'deep-groove';
}

/** What the seat and the axle say, as related places. */
export function relatedSurroundings({ seat, axle }: Surroundings): { path: SpecPath; message: string }[] {
  return [
    ...(seat ? [{ path: seat.path, message: `${seat.address} is bored ${plain(seat.bore)}` }] : []),
    ...(axle ? [{ path: axle.path, message: `the axle is ${plain(axle.diameter)} here` }] : []),
  ];
}

/** `17 × 26 × 5` */
export function saySize(size: Size): string {
  return `${plain(size.bore)} × ${plain(size.outside)} × ${plain(size.width)}`;
}

/** The code of a bearing of the stack where it is its own, not one of the house. */
export function ownCode(bearing: StackBearing): Placed<string> | null {
  const { code } = bearing.part.values;
  return code && bearing.houseCode !== code.value ? code : null;
}
