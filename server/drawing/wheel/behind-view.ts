import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import { plain } from '../../engine/base/figures.ts';
import { type LocatedMark, marksAt, stateOf } from '../fault-mark.ts';
import { type Group, group, line, type Point, type Shape } from '../scene.ts';
import { writing } from '../text-width.ts';
import type { Block } from './block.ts';
import { badges } from './wheel-marks.ts';

/** Half the width of the box that stands for the rim, mm; its section is not known. */
const rimHalf = 12;
const rimDepth = 10;

/**
 * The upper half of the wheel seen from behind, to scale: flanges, the line of each group of spokes, the holes of the rim, the
 * middle between the dropouts. Spokes of the left side are dashed as in the view from the side.
 */
export function behindView(
  wheel: WheelAnalysis,
  scale: number,
  about: { readonly label: (address: string) => string; readonly marks: readonly LocatedMark[] },
): Block {
  const radius = wheel.rim?.seatRadius ?? 300;
  const width = wheel.hub?.assembly.hub.values.width?.value.nominal ?? null;
  const offsets = wheel.sides.map(({ flange }) => flange.offset?.value ?? 0);
  const half = Math.max((width ?? 0) / 2, ...offsets, 30);
  const size = { width: 2 * half * scale + 24, height: (radius + rimDepth) * scale + 24 };
  const axis = (radius + rimDepth) * scale + 7;
  const on = (across: number, up: number): Point => ({
    x: size.width / 2 + across * scale,
    y: axis - up * scale,
  });
  return {
    ...size,
    groups: [
      group('axis', [
        line('centre', [on(0, radius + rimDepth + 5), { x: size.width / 2, y: axis + 6 }]),
        line('centre', [on(-half - 6, 0), on(half + 6, 0)]),
      ]),
      ...wheel.sides.map((side): Group => sideLines(side, on, about)),
      rimBox(wheel, radius, on, about),
      hubLines(wheel, width, on, about),
      group('dimension', dimensions(wheel, on, axis)),
      group('label', [
        writing('L', { x: on(-half, 0).x - 3, y: axis - 4 }, { strong: true }),
        writing('R', { x: on(half, 0).x + 3, y: axis - 4 }, { strong: true }),
      ]),
    ],
  };
}

type Place = (across: number, up: number) => Point;
type About = Parameters<typeof behindView>[2];

function sideLines(
  { side, groups }: WheelAnalysis['sides'][number],
  on: Place,
  { label, marks }: About,
): Group {
  const towards = side === 'left' ? -1 : 1;
  const own = marksAt(marks, `spokes.${side}`);
  const shapes = groups.map(({ line: run }) =>
    line(side === 'right' ? 'outline' : 'hidden', [
      on(towards * run.hubOffset, run.hubRadius),
      on(towards * run.rimOffset, run.rimRadius),
    ]),
  );
  const middle = groups[0]?.line;
  const at = middle
    ? on((towards * (middle.hubOffset + middle.rimOffset)) / 2, middle.rimRadius / 2)
    : on(0, 0);
  const row = badges(own, { x: at.x + (side === 'left' ? -5 - 5 * (own.length - 1) : 5), y: at.y });
  return group('part', [...shapes, ...row], {
    address: `spokes.${side}`,
    label: label(`spokes.${side}`),
    state: stateOf(own),
  });
}

function rimBox(wheel: WheelAnalysis, radius: number, on: Place, { label, marks }: About): Group {
  const own = marksAt(marks, 'rim');
  const holes = wheel.sides.map(
    ({ side, groups }): Shape => ({
      kind: 'dot',
      centre: on((side === 'left' ? -1 : 1) * (groups[0]?.line.rimOffset ?? 0), radius),
      radius: 0.7,
    }),
  );
  const box = [
    on(-rimHalf, radius),
    on(rimHalf, radius),
    on(rimHalf, radius + rimDepth),
    on(-rimHalf, radius + rimDepth),
  ];
  return group('part', [line('assumed', box, true), ...holes], {
    address: 'rim',
    label: label('rim'),
    state: stateOf(own),
  });
}

function hubLines(wheel: WheelAnalysis, width: number | null, on: Place, { label, marks }: About): Group {
  const own = marksAt(marks, 'hub');
  const flanges = wheel.sides.flatMap(({ side, flange, groups }): readonly Shape[] => {
    const across = (side === 'left' ? -1 : 1) * (flange.offset?.value ?? 0);
    const up = (groups[0]?.hubRadius ?? 20) + 3;
    const thick = (flange.thickness?.value ?? 0) / 2;
    return [
      line('outline', [
        on(across - thick, 0),
        on(across - thick, up),
        on(across + thick, up),
        on(across + thick, 0),
      ]),
    ];
  });
  const ends =
    width === null
      ? []
      : [-1, 1].map((end) => line('outline', [on((end * width) / 2, 10), on((end * width) / 2, -4)]));
  return group('part', [...flanges, ...ends, ...badges(own, on(0, 8))], {
    address: 'hub',
    label: label('hub'),
    state: stateOf(own),
  });
}

/** Distance of each flange from the middle, and of the rim's holes where they stand off it. */
function dimensions(wheel: WheelAnalysis, on: Place, axis: number): readonly Shape[] {
  const y = axis + 8;
  const middle = on(0, 0).x;
  const flanges = wheel.sides.flatMap(({ side, flange }): readonly Shape[] => {
    const offset = flange.offset?.value;
    if (offset === undefined) return [];
    const end = on((side === 'left' ? -1 : 1) * offset, 0).x;
    return [
      line('dimension', [
        { x: end, y: axis },
        { x: end, y: y + 1.5 },
      ]),
      line('dimension', [
        { x: middle, y },
        { x: end, y },
      ]),
      { kind: 'arrow', tip: { x: end, y }, towards: side },
      writing(
        plain(Math.round(offset * 100) / 100),
        { x: side === 'left' ? end - 1.5 : end + 1.5, y: y + 1.2 },
        { anchor: side === 'left' ? 'end' : 'start' },
      ),
    ];
  });
  const { left, right } = wheel.rim?.holeOffset ?? { left: 0, right: 0 };
  const top = on(0, (wheel.rim?.seatRadius ?? 0) + rimDepth).y - 3;
  const off = Math.abs((left - right) / 2);
  const rim =
    off < 0.005
      ? []
      : [
          writing(
            `holes ${plain(Math.round(off * 100) / 100)} to the ${right < left ? 'left' : 'right'}`,
            { x: middle, y: top },
            {},
          ),
        ];
  return [...flanges, ...rim];
}
