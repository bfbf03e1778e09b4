/** A closed range of a quantity, `lo` ≤ `hi`, both ends in the unit of that quantity. */
export interface Interval {
  readonly lo: number;
  readonly hi: number;
}

/** The range from a first to a second value, whichever is the smaller. */
export function interval(a: number, b: number): Interval {
  return a <= b ? { lo: a, hi: b } : { lo: b, hi: a };
}

/** Every sum of one value from each range. */
export function add(a: Interval, b: Interval): Interval {
  return { lo: a.lo + b.lo, hi: a.hi + b.hi };
}

/** Every difference of one value from `a` less one from `b`: the ends of `b` change places. */
export function subtract(a: Interval, b: Interval): Interval {
  return { lo: a.lo - b.hi, hi: a.hi - b.lo };
}

/** The range with every value multiplied by `factor`; a negative factor turns the range round. */
export function scale(a: Interval, factor: number): Interval {
  return interval(a.lo * factor, a.hi * factor);
}

/** The range moved by `distance`. */
export function shift(a: Interval, distance: number): Interval {
  return { lo: a.lo + distance, hi: a.hi + distance };
}

/** The middle of the range. */
export function mid(a: Interval): number {
  return (a.lo + a.hi) / 2;
}

/** Half the width of the range. */
export function half(a: Interval): number {
  return (a.hi - a.lo) / 2;
}

/** Whether `x` lies in the range, its ends included. */
export function contains(a: Interval, x: number): boolean {
  return a.lo <= x && x <= a.hi;
}

/** The values that both ranges share, or null when they share none. */
export function overlap(a: Interval, b: Interval): Interval | null {
  const lo = Math.max(a.lo, b.lo);
  const hi = Math.min(a.hi, b.hi);
  return lo <= hi ? { lo, hi } : null;
}
