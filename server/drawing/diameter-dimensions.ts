import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { FilledSeat } from '../assembly/housings.ts';
import type { Section } from '../assembly/section.ts';
import { diameterText } from './dimension-text.ts';
import { type LocatedMark, marksAt, marksOn, stateOf } from './fault-mark.ts';
import { type Group, group, line, type Point, type Shape } from './scene.ts';
import type { Sheet } from './sheet.ts';
import { textSize, textWidth, writing } from './text-width.ts';

/** A diameter measured beside the section. */
export interface DiameterDimension {
  /** Name of the dimension: `bore:shell.left`. */
  readonly id: string;
  readonly address: string;
  readonly diameter: number;
  readonly text: string;
  /** Place along the axle its extension lines start from, mm of the hub. */
  readonly at: number;
}

/** From the end of the hub to the first column, and from one column to the next, mm. */
export const firstColumn = 10.5;
export const columnPitch = 6.5;
/** More columns than these would crowd the sheet; what is left goes to the labels. */
const mostColumns = 4;

/** Diameters to measure at each end: bore and outside of the cap, the nearest seat, the housing around it. */
export function sideDiameters(
  variant: VariantAnalysis,
  section: Section,
): { readonly left: readonly DiameterDimension[]; readonly right: readonly DiameterDimension[] } {
  return { left: atSide('left', variant, section), right: atSide('right', variant, section) };
}

function atSide(
  side: 'left' | 'right',
  variant: VariantAnalysis,
  section: Section,
): readonly DiameterDimension[] {
  const { line: parts, shell, freehub } = variant.assembly;
  const found: DiameterDimension[] = [];
  const partOf = (address: string) => section.parts.find((part) => part.address === address);
  const face = (address: string): number => partOf(address)?.[side] ?? 0;
  const cap = side === 'left' ? parts[0] : parts.at(-1);
  if (cap?.part.kind === 'end-cap') {
    for (const key of ['bore', 'outside'] as const) {
      const placed = cap.part.values[key];
      if (placed) {
        found.push({
          id: `${key}:${cap.address}`,
          address: cap.address,
          diameter: placed.value.nominal,
          text: diameterText(placed.value),
          at: face(cap.address),
        });
      }
    }
  }
  const housing = side === 'left' ? (shell ?? freehub) : (freehub ?? shell);
  if (housing && partOf(housing.housing.name)) {
    const seat = outermost(housing.seats, side);
    const bore = seat?.seat.values.bore;
    const { name, values } = housing.housing;
    if (seat && bore) {
      found.push({
        id: `bore:${seat.address}`,
        address: seat.address,
        diameter: bore.value.nominal,
        text: diameterText(bore.value),
        at: face(name),
      });
    }
    if (values.outside) {
      found.push({
        id: `outside:${name}`,
        address: name,
        diameter: values.outside.value.nominal,
        text: diameterText(values.outside.value),
        at: face(name),
      });
    }
    const flange = name === 'shell' ? housing.housing.flanges.find((one) => one.name === side) : undefined;
    const hole = partOf(name)?.spokeHoles[side === 'left' ? 0 : (partOf(name)?.spokeHoles.length ?? 1) - 1];
    if (flange?.values.circle && hole) {
      found.push({
        id: `circle:${flange.name}`,
        address: name,
        diameter: flange.values.circle.value.nominal,
        text: diameterText(flange.values.circle.value),
        at: hole.at + ((side === 'left' ? -1 : 1) * hole.thickness) / 2,
      });
    }
  }
  return found.slice(0, mostColumns).sort((a, b) => a.diameter - b.diameter);
}

/** The seat nearest to an end, if it is bored from that end. */
function outermost(seats: readonly FilledSeat[], side: 'left' | 'right'): FilledSeat | undefined {
  const own = seats.filter(({ from, contact }) => from === side && contact);
  return side === 'left' ? own[0] : own.at(-1);
}

/** Draws the columns of one side, the smallest diameter nearest to the hub so that no line crosses another. */
export function drawDiameters(
  list: readonly DiameterDimension[],
  side: 'left' | 'right',
  section: Section,
  sheet: Sheet,
  marks: readonly LocatedMark[],
): readonly Group[] {
  const out = side === 'left' ? -1 : 1;
  const ends = section.parts.map((part) => sheet.x(side === 'left' ? part.left : part.right));
  const edge = side === 'left' ? Math.min(...ends) : Math.max(...ends);
  return list.map((item, index) => {
    const x = edge + out * (firstColumn + index * columnPitch);
    const [top, bottom] = [sheet.point(0, item.diameter / 2, -1).y, sheet.point(0, item.diameter / 2, 1).y];
    const start = sheet.x(item.at) + out;
    const room = bottom - top - 6;
    const text = textWidth(item.text) <= room ? item.text : (item.text.split(' ')[0] ?? item.text);
    const extension = (y: number): readonly [Point, Point] => [
      { x: start, y },
      { x: x + out * 1.5, y },
    ];
    const extensions = [extension(top), extension(bottom)] as const;
    const longer = bottom - top < textWidth(text) + 1;
    const shapes: Shape[] = [
      ...extensions.flatMap((points) => (longer ? aroundText(points, x) : [line('dimension', points)])),
      line('dimension', [
        { x, y: top },
        { x, y: bottom },
      ]),
      { kind: 'arrow', tip: { x, y: top }, towards: 'up' },
      { kind: 'arrow', tip: { x, y: bottom }, towards: 'down' },
      writing(text, { x: x - 1, y: sheet.origin.y }, { upright: true, size: textSize }),
    ];
    const own = [
      ...marksOn(marks, item.id),
      ...(item.id.startsWith('bore:') ? [] : marksAt([], item.address)),
    ];
    for (const [at, { number }] of own.entries()) {
      shapes.push({
        kind: 'badge',
        centre: { x: x - 2.3, y: sheet.origin.y - textWidth(text) / 2 - 3.6 - at * 5.4 },
        number,
      });
    }
    return group('dimension', shapes, {
      address: item.address,
      state: stateOf(own),
      dimension: { from: { x, y: top }, to: { x, y: bottom }, extensions },
    });
  });
}

/** An extension line gives way to a text that is longer than its dimension; the text stands left of `x`. */
function aroundText([from, to]: readonly [Point, Point], x: number): readonly Shape[] {
  const [left, right] = from.x < to.x ? [from, to] : [to, from];
  return [
    line('dimension', [left, { x: Math.max(left.x, x - 4), y: left.y }]),
    line('dimension', [{ x: x - 0.2, y: right.y }, right]),
  ];
}
