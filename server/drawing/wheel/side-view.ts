import type { LacedSpoke, LacedWheel } from '../../analysis/wheel/laced-spokes.ts';
import { seenFromRight, spokeCrossings } from '../../analysis/wheel/spoke-crossings.ts';
import { type LocatedMark, marksAt, stateOf } from '../fault-mark.ts';
import { type Group, group, line, type Point, type Shape } from '../scene.ts';
import { writing } from '../text-width.ts';
import type { Block } from './block.ts';
import { spokeStrokes } from './spoke-strokes.ts';
import { badges } from './wheel-marks.ts';

/** Room around the rim for the numbers of the spokes, mm. */
const ring = 8;
/** What is drawn of the rim outside the seats of the nipples, mm: not to size. */
const rimDepth = 10;

/** Room that the view takes for a rim of that radius, mm. */
export const sideViewSize = (radius: number, scale: number): number =>
  2 * ((radius + rimDepth) * scale + ring);

/**
 * The wheel seen from the right, the valve at the top: spokes of the right side in wide lines, those of the left side behind
 * them dashed and narrow. Numbers count from the valve, R and L by side.
 */
export function sideView(
  laced: LacedWheel,
  scale: number,
  about: {
    readonly interlaced: Readonly<Record<LacedSpoke['side'], boolean>>;
    readonly label: (address: string) => string;
    readonly marks: readonly LocatedMark[];
  },
): Block {
  const { spokes } = laced;
  const radius = Math.max(...spokes.map(({ rimRadius }) => rimRadius));
  const size = sideViewSize(radius, scale);
  const on = ({ x, y }: Point): Point => ({ x: size / 2 + x * scale, y: size / 2 + y * scale });
  const centre = on({ x: 0, y: 0 });
  const side = (name: LacedSpoke['side']): Group => {
    const own = spokes.filter((spoke) => spoke.side === name);
    const crossings = name === 'right' ? spokeCrossings(own, about.interlaced.right) : [];
    const role = name === 'right' ? 'outline' : 'hidden';
    const shapes = own.flatMap((spoke): readonly Shape[] => [
      ...spokeStrokes(spoke, crossings, 0.9 / scale).map((piece) => line(role, piece.map(on))),
      {
        kind: 'dot',
        centre: on(seenFromRight(spoke.rimTurn, spoke.rimRadius)),
        radius: name === 'right' ? 0.7 : 0.4,
      },
    ]);
    return group('part', shapes, {
      address: `spokes.${name}`,
      label: about.label(`spokes.${name}`),
      state: stateOf(marksAt(about.marks, `spokes.${name}`)),
    });
  };
  const numbers = spokes.map((spoke): Shape => {
    const { x, y } = on(seenFromRight(spoke.rimTurn, radius + rimDepth + 4 / scale));
    return writing(`${spoke.side === 'right' ? 'R' : 'L'}${spoke.number}`, { x, y: y + 1 }, { size: 2.8 });
  });
  return {
    width: size,
    height: size,
    groups: [
      side('left'),
      side('right'),
      hubCircles(spokes, centre, scale, about),
      rim(radius, centre, scale, about),
      group('label', [...numbers, ...valve(centre, radius * scale), ...rolling(size)]),
    ],
  };
}

type About = Parameters<typeof sideView>[2];

function rim(radius: number, centre: Point, scale: number, { label, marks }: About): Group {
  const own = marksAt(marks, 'rim');
  const shapes: readonly Shape[] = [
    { kind: 'circle', role: 'outline', centre, radius: radius * scale },
    { kind: 'circle', role: 'assumed', centre, radius: (radius + rimDepth) * scale },
    ...badges(own, { x: centre.x + radius * scale * 0.72, y: centre.y - radius * scale * 0.86 }),
  ];
  return group('part', shapes, { address: 'rim', label: label('rim'), state: stateOf(own) });
}

function hubCircles(
  spokes: readonly LacedSpoke[],
  centre: Point,
  scale: number,
  { label, marks }: About,
): Group {
  const radii = [...new Set(spokes.map(({ hubRadius }) => hubRadius))];
  const shapes = radii.map(
    (radius): Shape => ({ kind: 'circle', role: 'thin', centre, radius: radius * scale }),
  );
  const cross = [
    line('centre', [
      { x: centre.x - 4, y: centre.y },
      { x: centre.x + 4, y: centre.y },
    ]),
    line('centre', [
      { x: centre.x, y: centre.y - 4 },
      { x: centre.x, y: centre.y + 4 },
    ]),
  ];
  return group('part', [...shapes, ...cross], {
    address: 'hub',
    label: label('hub'),
    state: stateOf(marksAt(marks, 'hub')),
  });
}

/** The valve inside the rim, and its name. */
function valve({ x, y }: Point, radius: number): readonly Shape[] {
  const top = y - radius;
  return [
    {
      kind: 'solid',
      area: [
        { x: x - 0.8, y: top - 1 },
        { x: x + 0.8, y: top - 1 },
        { x: x + 0.8, y: top + 5 },
        { x: x - 0.8, y: top + 5 },
      ],
    },
    writing('valve', { x, y: top + 9 }, { size: 3 }),
  ];
}

/** Which way the wheel rolls: an arrow in the corner under the wheel. */
function rolling(size: number): readonly Shape[] {
  const y = size - 3;
  return [
    line('dimension', [
      { x: 0, y },
      { x: 14, y },
    ]),
    { kind: 'arrow', tip: { x: 14, y }, towards: 'right' },
    writing('rolls', { x: 0, y: y - 1.5 }, { size: 3, anchor: 'start' }),
  ];
}
