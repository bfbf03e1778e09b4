import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledSeat } from '../assembly/housings.ts';
import type { LinePart } from '../assembly/line.ts';

/** Every seat of a variant with the bearings in it. */
export function seatsOf(variant: VariantAnalysis): readonly FilledSeat[] {
  const { shell, freehub } = variant.assembly;
  return [shell, freehub].flatMap((housing) => housing?.seats ?? []);
}

/** The seat of an address: `shell.left`. */
export function findSeat(variant: VariantAnalysis, address: string): FilledSeat | undefined {
  return seatsOf(variant).find((seat) => seat.address === address);
}

/** Whether other parts of the stack lie between the bearings of one seat, whose outer rings touch. */
export function isSplit({ bearings }: FilledSeat, line: readonly LinePart[]): boolean {
  return bearings.slice(1).some((bearing, index) => {
    const before = bearings[index];
    return before !== undefined && line.indexOf(bearing) - line.indexOf(before) !== 1;
  });
}
