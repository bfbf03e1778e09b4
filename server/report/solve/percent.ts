/**
 * A share as a percentage: what is asked for and what is reached are held against each other, so two decimals, and
 * more where they would read as all.
 */
export function percent(value: number): string {
  const digits = value < 1 && 0.9999 < value ? 4 : 2;
  return `${Number((value * 100).toFixed(digits))} %`;
}
