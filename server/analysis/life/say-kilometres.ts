/** Kilometres with two figures: a third would be a lie. */
export function sayKilometres(kilometres: number): string {
  if (!Number.isFinite(kilometres)) return 'no load';
  if (1e6 <= kilometres) return `${Number((kilometres / 1e6).toPrecision(2))} million km`;
  const rounded = Number(kilometres.toPrecision(2));
  return `${String(rounded).replace(/\B(?=(\d{3})+$)/g, ' ')} km`;
}
