import type { LacedSpoke } from '../../analysis/wheel/laced-spokes.ts';
import { type SpokeCrossing, seenFromRight } from '../../analysis/wheel/spoke-crossings.ts';
import type { Point } from '../scene.ts';

/**
 * Pieces of a spoke as lines: it is broken where it passes behind another. `within`: radius at which it is cut off, mm;
 * `gap`: half the length left out at a crossing, mm of the wheel.
 */
export function spokeStrokes(
  spoke: LacedSpoke,
  crossings: readonly SpokeCrossing[],
  gap: number,
  within = Number.POSITIVE_INFINITY,
): readonly (readonly [Point, Point])[] {
  const from = seenFromRight(spoke.hubTurn, spoke.hubRadius);
  const to = seenFromRight(spoke.rimTurn, spoke.rimRadius);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (!(0 < length)) return [];
  const at = (along: number): Point => ({
    x: from.x + ((to.x - from.x) * along) / length,
    y: from.y + ((to.y - from.y) * along) / length,
  });
  // Where the line leaves the circle of that radius.
  const across = from.x * ((to.x - from.x) / length) + from.y * ((to.y - from.y) / length);
  const inside = Math.max(0, within ** 2 - spoke.hubRadius ** 2);
  const end = Number.isFinite(within) ? Math.min(length, -across + Math.sqrt(across ** 2 + inside)) : length;
  const breaks = crossings
    .filter(({ outer, inner, under }) => (under ? outer : inner) === spoke)
    .map(({ x, y }) => Math.hypot(x - from.x, y - from.y))
    .sort((a, b) => a - b);
  const pieces: (readonly [Point, Point])[] = [];
  let start = 0;
  for (const middle of breaks) {
    if (start < middle - gap && middle - gap < end) pieces.push([at(start), at(middle - gap)]);
    start = middle + gap;
  }
  if (start < end) pieces.push([at(start), at(end)]);
  return pieces;
}
