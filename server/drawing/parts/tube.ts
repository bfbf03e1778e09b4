import type { SectionPart, Step } from '../../assembly/section-shape.ts';
import { type Hatching, hatch } from '../hatch.ts';
import { type LineRole, line, type Point, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** Parts turned from one piece: spacers, caps, the axle, housings. Cut above and below the axis. */
export function tube(part: SectionPart, sheet: Sheet, hatching: Hatching): readonly Shape[] {
  const solid = part.steps.every(({ inside }) => inside === 0);
  const runs = [part.steps, ...part.detached.map((step) => [step])].filter((steps) => 0 < steps.length);
  return runs.flatMap((steps) =>
    ([-1, 1] as const).flatMap((half): readonly Shape[] => {
      const area = outlineOf(steps, sheet, half);
      // A solid axle is not hatched along its length (ISO 128-50).
      const cut: Shape[] = solid ? [] : [hatch(area, hatching)];
      return [{ kind: 'face', area }, ...cut, ...edges(steps, sheet, half)];
    }),
  );
}

/** The closed outline of a run of steps on one side of the axis. */
export function outlineOf(steps: readonly Step[], sheet: Sheet, half: -1 | 1): readonly Point[] {
  const outer = steps.flatMap(({ left, right, outside }) => [
    sheet.point(left, outside / 2, half),
    sheet.point(right, outside / 2, half),
  ]);
  const inner = steps
    .flatMap(({ left, right, inside }) => [
      sheet.point(left, inside / 2, half),
      sheet.point(right, inside / 2, half),
    ])
    .reverse();
  return [...outer, ...inner].filter((at, index, all) => {
    const before = all[index - 1];
    return !before || before.x !== at.x || before.y !== at.y;
  });
}

/** Its edges: written ones wide, guessed ones dashed. */
function edges(steps: readonly Step[], sheet: Sheet, half: -1 | 1): readonly Shape[] {
  const first = steps[0];
  const last = steps.at(-1);
  if (!first || !last) return [];
  const face = (at: number, a: number, b: number): Shape =>
    line('outline', [sheet.point(at, a / 2, half), sheet.point(at, b / 2, half)]);
  const along = (step: Step, diameter: number, guessed: boolean | undefined): Shape => {
    const role: LineRole = guessed ? 'assumed' : 'outline';
    return line(role, [
      sheet.point(step.left, diameter / 2, half),
      sheet.point(step.right, diameter / 2, half),
    ]);
  };
  return [
    face(first.left, first.inside, first.outside),
    face(last.right, last.inside, last.outside),
    ...steps.flatMap((step, index): readonly Shape[] => {
      const next = steps[index + 1];
      return [
        along(step, step.outside, step.guessed?.outside),
        ...(0 < step.inside ? [along(step, step.inside, step.guessed?.inside)] : []),
        ...(next && next.outside !== step.outside ? [face(step.right, step.outside, next.outside)] : []),
        ...(next && next.inside !== step.inside ? [face(step.right, step.inside, next.inside)] : []),
      ];
    }),
  ];
}
