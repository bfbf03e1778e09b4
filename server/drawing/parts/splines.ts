import type { SectionPart } from '../../assembly/section-shape.ts';
import { line, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** Splines around a freehub: uncut teeth between root and tip (ISO 6413); nobody writes their tips. */
export function splines(part: SectionPart, sheet: Sheet): readonly Shape[] {
  const { splineTip, left, right, steps } = part;
  const root = steps[0]?.outside;
  if (splineTip === null || root === undefined) return [];
  // They stop short of the inboard end, where the shell turns beside the body.
  const from = left + Math.min(3, (right - left) / 6);
  return ([-1, 1] as const).map((half) =>
    line('assumed', [
      sheet.point(from, root / 2, half),
      sheet.point(from, splineTip / 2, half),
      sheet.point(right, splineTip / 2, half),
      sheet.point(right, root / 2, half),
    ]),
  );
}
