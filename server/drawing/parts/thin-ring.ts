import type { SectionPart } from '../../assembly/section-shape.ts';
import type { Point, Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** Below this width on the sheet a part is filled instead of hatched, and drawn this wide, mm. */
export const leastWidth = 0.7;

/** Whether a part is too thin on the sheet to be drawn to scale. */
export function isThin(part: SectionPart, sheet: Sheet): boolean {
  return (part.right - part.left) * sheet.scale < leastWidth;
}

/** A shim, a washer or a retaining ring: filled, about its true middle, wide enough to be seen. */
export function thinRing(part: SectionPart, sheet: Sheet): readonly Shape[] {
  const step = part.steps[0];
  if (!step) return [];
  const middle = sheet.x((part.left + part.right) / 2);
  return ([-1, 1] as const).map((half) => {
    const y = (diameter: number): number => sheet.point(0, diameter / 2, half).y;
    const [left, right] = [middle - leastWidth / 2, middle + leastWidth / 2];
    const area: readonly Point[] = [
      { x: left, y: y(step.outside) },
      { x: right, y: y(step.outside) },
      { x: right, y: y(step.inside) },
      { x: left, y: y(step.inside) },
    ];
    return { kind: 'solid', area };
  });
}
