import type { LacedSpoke, LacedWheel } from '../../analysis/wheel/laced-spokes.ts';
import { seenFromRight, spokeCrossings } from '../../analysis/wheel/spoke-crossings.ts';
import { group, line, type Point, type Shape } from '../scene.ts';
import { writing } from '../text-width.ts';
import type { Block } from './block.ts';
import { spokeStrokes } from './spoke-strokes.ts';

/**
 * The middle of the wheel seen from one side, large enough to see which spoke passes over which: a broken line passes behind.
 * A filled dot is a head that looks at the reader, an open one a head that looks inwards. The valve is above.
 */
export function lacingDetail(
  laced: LacedWheel,
  side: LacedSpoke['side'],
  size: number,
  interlaced: boolean,
): Block {
  const own = laced.spokes.filter((spoke) => spoke.side === side);
  const crossings = spokeCrossings(own, interlaced);
  const hub = Math.max(...own.map(({ hubRadius }) => hubRadius), 1);
  const furthest = Math.max(...crossings.map(({ x, y }) => Math.hypot(x, y)), hub * 1.4);
  const within = furthest * 1.22;
  const scale = (size / 2 - 5) / within;
  const mirrored = side === 'left' ? -1 : 1;
  const head = 5;
  const on = ({ x, y }: Point): Point => ({
    x: size / 2 + mirrored * x * scale,
    y: head + size / 2 + y * scale,
  });
  const centre = on({ x: 0, y: 0 });
  const lines = own.flatMap((spoke): readonly Shape[] =>
    spokeStrokes(spoke, crossings, 1.1 / scale, within).map((piece) => line('outline', piece.map(on))),
  );
  const heads = own.map((spoke): Shape => {
    const at = on(seenFromRight(spoke.hubTurn, spoke.hubRadius));
    return spoke.head === 'head-in'
      ? { kind: 'circle', role: 'thin', centre: at, radius: 0.8 }
      : { kind: 'dot', centre: at, radius: 0.9 };
  });
  const numbers = own.map((spoke): Shape => {
    const [last] = spokeStrokes(spoke, [], 0, within).slice(-1);
    const { x, y } = on(last?.[1] ?? { x: 0, y: 0 });
    const out = Math.hypot(x - centre.x, y - centre.y) || 1;
    const away = (out + 2.6) / out;
    return writing(
      `${spoke.number}`,
      { x: centre.x + (x - centre.x) * away, y: centre.y + (y - centre.y) * away + 1 },
      { size: 2.8 },
    );
  });
  const letter = side === 'left' ? 'L' : 'R';
  return {
    width: size,
    height: size + head,
    groups: [
      group(
        'detail',
        [
          ...lines,
          ...heads,
          { kind: 'circle', role: 'centre', centre, radius: hub * scale },
          ...numbers,
          writing(
            size < 66
              ? `${letter}: seen from the ${side}`
              : `${letter}: ${side} side seen from the ${side}, valve above`,
            { x: size / 2, y: 3 },
            { size: 3 },
          ),
        ],
        { address: `spokes.${side}` },
      ),
    ],
  };
}
