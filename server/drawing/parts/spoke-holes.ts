import type { SectionPart } from '../../assembly/section-shape.ts';
import { line, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** The spoke hole each flange is cut through: its faces behind the hole, and its axis. */
export function spokeHoles(part: SectionPart, sheet: Sheet): readonly Shape[] {
  return part.spokeHoles.flatMap(({ at, thickness, circle, hole }) =>
    ([-1, 1] as const).flatMap((half): readonly Shape[] => {
      const [low, high] = [(circle - hole) / 2, (circle + hole) / 2];
      const [left, right] = [at - thickness / 2, at + thickness / 2];
      return [
        line('outline', [sheet.point(left, low, half), sheet.point(left, high, half)]),
        line('outline', [sheet.point(right, low, half), sheet.point(right, high, half)]),
        line('centre', [
          sheet.point(left - 1.5, circle / 2, half),
          sheet.point(right + 1.5, circle / 2, half),
        ]),
      ];
    }),
  );
}
