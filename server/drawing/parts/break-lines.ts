import type { SectionPart } from '../../assembly/section-shape.ts';
import { line, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** A part of unknown length is broken: two zigzag lines across its middle (ISO 128-3). */
export function breakLines(part: SectionPart, sheet: Sheet): readonly Shape[] {
  if (!part.broken) return [];
  const middle = sheet.x((part.left + part.right) / 2);
  const outside = Math.max(...part.steps.map((step) => step.outside), part.bearing?.outer.outside ?? 0);
  const inside = Math.min(...part.steps.map((step) => step.inside));
  return ([-1, 1] as const).flatMap((half) => {
    const [y1, y2] = [sheet.point(0, inside / 2, half).y - half, sheet.point(0, outside / 2, half).y + half];
    const tooth = (y2 - y1) / 6;
    const mid = (y1 + y2) / 2;
    return [-0.8, 0.8].map((off) => {
      const x = middle + off;
      return line('thin', [
        { x, y: y1 },
        { x, y: mid - tooth },
        { x: x + 1, y: mid - tooth / 2 },
        { x: x - 1, y: mid + tooth / 2 },
        { x, y: mid + tooth },
        { x, y: y2 },
      ]);
    });
  });
}
