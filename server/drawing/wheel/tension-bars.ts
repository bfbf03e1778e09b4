import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import { type LocatedMark, marksAt, stateOf } from '../fault-mark.ts';
import { type Group, group, line, type Point, type Shape } from '../scene.ts';
import { writing } from '../text-width.ts';
import type { Block } from './block.ts';
import { badges } from './wheel-marks.ts';

type Side = WheelAnalysis['sides'][number]['side'];

/** Height of the bars of one side with its title and numbers, mm. */
const row = 31;
const tallest = 19;
/** From this width on the two sides stand beside each other, mm. */
const wide = 200;

/**
 * Readings as bars, one a spoke from the valve on: the mean as a wide line, the least mean and the most that is allowed dashed. A
 * spoke that strays too far is filled and has its reading above it. Null where nothing was read.
 */
export function tensionBars(
  wheel: WheelAnalysis,
  width: number,
  about: { readonly label: (address: string) => string; readonly marks: readonly LocatedMark[] },
): Block | null {
  const { measured, tension } = wheel;
  if (!measured || !tension) return null;
  const sides = (['left', 'right'] as const).filter((side) => measured.sides[side] !== null);
  const highest = Math.max(
    ...sides.flatMap((side) => [measured.sides[side]?.most ?? 0, tension.sides[side].most]),
    1,
  );
  const together = wide <= width && sides.length === 2;
  const each = together ? (width - 6) / 2 : width;
  const own = marksAt(about.marks, 'tension');
  const groups = sides.map((side, at): Group => {
    const corner = together ? { x: at * (each + 6), y: 0 } : { x: 0, y: at * row };
    const shapes = bars(wheel, side, each, corner, tallest / (highest * 1.08));
    return group(
      'part',
      at === 0 ? [...shapes, ...badges(own, { x: width - 5 * own.length, y: 2 })] : shapes,
      {
        address: `measured.${side}`,
        label: about.label(`measured.${side}`),
        state: stateOf(own),
      },
    );
  });
  return { width, height: together ? row : sides.length * row, groups };
}

function bars(
  wheel: WheelAnalysis,
  side: Side,
  width: number,
  { x, y: top }: Point,
  scale: number,
): readonly Shape[] {
  const read = wheel.measured?.sides[side];
  const limits = wheel.tension?.sides[side];
  if (!read || !limits) return [];
  const base = top + 5 + tallest + 2;
  const step = Math.min(12, (width - 2) / Math.max(read.readings.length, 1));
  const end = x + 1 + step * read.readings.length;
  const strays = new Set(read.outliers.map(({ at }) => at));
  const across = (role: 'outline' | 'hidden' | 'thin', value: number): Shape =>
    line(role, [
      { x: x + 1, y: base - value * scale },
      { x: end, y: base - value * scale },
    ]);
  const letter = side === 'left' ? 'L' : 'R';
  const n = (value: number): string => `${Number(value.toPrecision(3))}`;
  return [
    writing(
      `${letter}, N: mean ${n(read.mean)} (wide), ${n(read.least)} to ${n(read.most)}; limits ${n(limits.least)}, ${n(limits.most)} (dashed)`,
      { x: x + 1, y: top + 3 },
      { anchor: 'start', size: 3 },
    ),
    across('thin', 0),
    across('outline', read.mean),
    across('hidden', limits.most),
    across('hidden', limits.least),
    ...read.readings.flatMap((value, at): readonly Shape[] => {
      const left = x + 1 + at * step + step * 0.2;
      const right = left + step * 0.6;
      const y = base - Math.max(0, value) * scale;
      const area = [
        { x: left, y: base },
        { x: left, y },
        { x: right, y },
        { x: right, y: base },
      ];
      const middle = (left + right) / 2;
      const every = step < 4 ? 5 : 1;
      return [
        strays.has(at) ? { kind: 'solid', area } : line('thin', area, true),
        ...(strays.has(at) && 5 <= step ? [writing(n(value), { x: middle, y: y - 0.8 }, { size: 2.6 })] : []),
        ...(at % every === 0 ? [writing(`${at + 1}`, { x: middle, y: base + 3.2 }, { size: 2.8 })] : []),
      ];
    }),
  ];
}
