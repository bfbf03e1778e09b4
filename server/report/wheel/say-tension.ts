/** A tension as builders say it, in newtons with three figures: `1110 N`. */
export function sayTension(value: number): string {
  return `${Number(value.toPrecision(3))} N`.replace('-', '−');
}
