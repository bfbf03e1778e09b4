import { type Body, opposite, spanOf, type Tube } from '../../service/body.ts';
import type { PressedOut, Step, Support } from '../../service/step.ts';

/** A tool at its place: the driver, a support, or what pulls. */
export interface Tool {
  readonly letter: 'D' | 'S' | 'P';
  readonly tube: Tube;
}

/** How long tools are drawn, mm: only their diameters matter. */
const driver = 12;
const block = 7;

/** The tools of a step where they touch the parts; `away` is how far the moving parts stand from their place, mm. */
export function toolsOf(step: Step, bodies: readonly Body[], away: number): readonly Tool[] {
  if (step.kind === 'press-in') {
    return step.pressed.flatMap((one): readonly Tool[] => {
      const body = bodies.find(({ address }) => address === one.bearing);
      if (!body) return [];
      const { left, right } = spanOf(body.tubes);
      const face = (step.towards === 'right' ? left : right) + away;
      const tube = {
        inside: one.driver.inside.nominal,
        outside: one.driver.outside.nominal,
        ...(step.towards === 'right'
          ? { left: face - driver, right: face }
          : { left: face, right: face + driver }),
      };
      return [{ letter: 'D', tube }, ...one.support.flatMap((support) => supportOf(support, bodies))];
    });
  }
  if (step.kind === 'press-out') {
    return step.pressed.flatMap((one): readonly Tool[] => [
      ...reached(one.bearing, step.towards, bodies, one.reach),
      ...(one.support ? supportOf(one.support, bodies) : []),
    ]);
  }
  return [];
}

/** What moves a bearing out: a drift from behind, or an extractor that grips its inner ring; nothing where a part does. */
function reached(
  bearing: string,
  towards: Step['towards'],
  bodies: readonly Body[],
  reach: PressedOut['reach'],
): readonly Tool[] {
  const body = bodies.find(({ address }) => address === bearing);
  const rings = body?.part.bearing;
  if (!body || !rings || reach.by === 'part' || reach.by === 'none') return [];
  const { inner, outer } = rings;
  const { left, right } = spanOf(body.tubes);
  const pulls = reach.by === 'extractor';
  const side = pulls ? towards : opposite(towards);
  const place =
    side === 'right' ? { left: right, right: right + driver } : { left: left - driver, right: left };
  if (pulls) return [{ letter: 'P', tube: { ...place, inside: inner.inside * 0.4, outside: inner.inside } }];
  const ring = reach.by === 'outer-ring' ? outer : inner;
  const bare = Math.min(2 * reach.bare, ring.outside - ring.inside);
  const tube =
    reach.by === 'outer-ring'
      ? { inside: outer.outside - bare, outside: outer.outside }
      : { inside: inner.inside, outside: inner.inside + bare };
  return [{ letter: 'D', tube: { ...place, ...tube } }];
}

function supportOf(support: Support, bodies: readonly Body[]): readonly Tool[] {
  const body = bodies.find(({ address }) => address === support.part);
  if (!body) return [];
  const { left, right } = spanOf(body.tubes);
  const face = support.side === 'left' ? left : right;
  const outside = support.outside ?? support.inside + 8;
  return [
    {
      letter: 'S',
      tube: {
        inside: support.inside,
        outside,
        ...(support.side === 'left'
          ? { left: face - block, right: face }
          : { left: face, right: face + block }),
      },
    },
  ];
}
