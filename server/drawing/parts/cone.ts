import { cupWall } from '../../assembly/section-cups.ts';
import type { SectionPart } from '../../assembly/section-shape.ts';
import { type Hatching, hatch } from '../hatch.ts';
import { line, type Point, type Shape } from '../scene.ts';
import type { Sheet } from '../sheet.ts';

/** How many points a quarter of a race is drawn with. */
const arcPoints = 8;

/** A cone with its balls and the cup around them; their races are quarters about the ball. */
export function cone(part: SectionPart, sheet: Sheet, hatching: Hatching): readonly Shape[] {
  const ball = part.coneBall;
  const bore = part.steps[0]?.inside ?? 0;
  if (!ball) return [];
  const race = ball.diameter / 2;
  const middle = ball.circle / 2;
  const inward = ball.inward === 'right' ? 1 : -1;
  const [outerEnd, innerEnd] = inward === 1 ? [part.left, part.right] : [part.right, part.left];
  return ([-1, 1] as const).flatMap((half): readonly Shape[] => {
    const at = (along: number, radius: number): Point => sheet.point(along, radius, half);
    // From the shoulder of the cone down to its neck, outwards and towards the axis of the hub.
    const arc = (towards: -1 | 1): readonly Point[] =>
      Array.from({ length: arcPoints + 1 }, (_, n) => {
        const turn = (n / arcPoints) * (Math.PI / 2);
        return at(
          ball.at + towards * inward * race * Math.cos(turn),
          middle + towards * race * Math.sin(turn),
        );
      });
    const area = [
      at(outerEnd, bore / 2),
      at(outerEnd, middle),
      ...arc(-1),
      at(innerEnd, middle - race),
      at(innerEnd, bore / 2),
    ];
    const cupEnd = ball.at + inward * (race + cupWall);
    const cup = [
      ...arc(1),
      at(ball.at, middle + race + cupWall),
      at(cupEnd, middle + race + cupWall),
      at(cupEnd, middle),
    ];
    return [
      { kind: 'face', area },
      hatch(area, hatching),
      line('outline', [at(innerEnd, bore / 2), at(outerEnd, bore / 2), at(outerEnd, middle)]),
      line('assumed', [at(outerEnd, middle), ...arc(-1), at(innerEnd, middle - race)]),
      line('outline', [at(innerEnd, middle - race), at(innerEnd, bore / 2)]),
      hatch(cup, { rising: !hatching.rising, spacing: 1.2 }),
      line('assumed', cup, true),
      { kind: 'circle', role: 'outline', centre: at(ball.at, middle), radius: race * sheet.scale },
    ];
  });
}
