/**
 * Plain data as one JSON document, numbers rounded to 1e-6. What JSON has no number for (a limit that is open
 * to one side) is null.
 */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, (_, item: unknown) => (typeof item === 'number' ? rounded(item) : item), 2)}\n`;
}

function rounded(value: number): number | null {
  if (!Number.isFinite(value)) return null;
  const round = Math.round(value * 1e6) / 1e6;
  return round === 0 ? 0 : round;
}
