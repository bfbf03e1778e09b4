import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledSeat } from '../assembly/housings.ts';

/** Every seat of a variant with the bearings in it. */
export function seatsOf(variant: VariantAnalysis): readonly FilledSeat[] {
  const { shell, freehub } = variant.assembly;
  return [shell, freehub].flatMap((housing) => housing?.seats ?? []);
}

/** The seat of an address: `shell.left`. */
export function findSeat(variant: VariantAnalysis, address: string): FilledSeat | undefined {
  return seatsOf(variant).find((seat) => seat.address === address);
}
