import type { SectionPart } from '../../assembly/section-shape.ts';
import { line, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** The balls of a cone with the cup around them. */
export function coneBall(part: SectionPart, sheet: Sheet): readonly Shape[] {
  const ball = part.coneBall;
  if (!ball) return [];
  const radius = (ball.diameter / 2) * sheet.scale;
  const inward = ball.inward === 'right' ? 1 : -1;
  return ([-1, 1] as const).flatMap((half): readonly Shape[] => {
    const centre = sheet.point(ball.at, ball.circle / 2, half);
    // The cup wraps the ball from outside and from the hub's inside.
    const cup = Array.from({ length: 9 }, (_, n) => {
      const turn = (-0.35 + (n / 8) * 2.1) as number;
      return {
        x: centre.x + inward * Math.sin(turn) * radius * 1.12,
        y: centre.y + half * Math.cos(turn) * radius * 1.12,
      };
    });
    return [{ kind: 'circle', role: 'outline', centre, radius }, line('outline', cup)];
  });
}
