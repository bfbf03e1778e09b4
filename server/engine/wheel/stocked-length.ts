/** A length that can be had, and how far its end then stands above (+) or below (−) the bottom of the slot, mm. */
export interface StockedLength {
  readonly length: number;
  readonly end: number;
  /** Whether the end lies in the band the nipple allows. */
  readonly fits: boolean;
}

/** Lengths in steps of a millimetre round the ideal one, where no stock is listed. */
export function millimetreSteps(ideal: number): readonly number[] {
  const middle = Math.floor(ideal);
  return [-2, -1, 0, 1, 2].map((step) => middle + step);
}

/**
 * The stocked length nearest the ideal one, of two as near the shorter; lengths that the band allows come first. Null
 * without stock.
 */
export function stockedLength(
  ideal: number,
  stock: readonly number[],
  band: { readonly lo: number; readonly hi: number },
): StockedLength | null {
  const rated = stock.map((length): StockedLength => {
    const end = length - ideal;
    return { length, end, fits: band.lo <= end && end <= band.hi };
  });
  rated.sort(
    (a, b) => Number(b.fits) - Number(a.fits) || Math.abs(a.end) - Math.abs(b.end) || a.length - b.length,
  );
  return rated[0] ?? null;
}
