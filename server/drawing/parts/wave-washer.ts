import type { SectionPart } from '../../assembly/section-shape.ts';
import { line, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** A wave washer: its sheet seen as waves between its two faces. */
export function waveWasher(part: SectionPart, sheet: Sheet): readonly Shape[] {
  const step = part.steps[0];
  if (!step) return [];
  const waves = 5;
  return ([-1, 1] as const).flatMap((half): readonly Shape[] => {
    const at = (share: number): number => (step.inside + (step.outside - step.inside) * share) / 2;
    const area = [
      sheet.point(step.left, at(0), half),
      sheet.point(step.right, at(0), half),
      sheet.point(step.right, at(1), half),
      sheet.point(step.left, at(1), half),
    ];
    const points = Array.from({ length: waves + 1 }, (_, n) =>
      sheet.point(n % 2 === 0 ? step.left : step.right, at(n / waves), half),
    );
    return [{ kind: 'face', area }, line('outline', points)];
  });
}
