import type { VariantAnalysis } from '../analysis/analyze.ts';
import { section } from '../assembly/section.ts';
import { drawPart } from './draw-part.ts';
import { type Group, group, line, type Shape } from './scene.ts';
import { sheet } from './sheet.ts';
import { svg } from './svg.ts';

/**
 * The section without dimensions, the parts numbered in a row above it as `addresses` has them from 1 on: a picture to
 * find one's way by, beside a table with the sizes. `width` and the height it must keep to in mm.
 */
export function drawNumbered(
  variant: VariantAnalysis,
  asWritten: VariantAnalysis | undefined,
  addresses: readonly string[],
  room: { readonly width: number; readonly height: number },
): string {
  const cut = section(variant.assembly, asWritten?.assembly);
  const steps = cut.parts.flatMap((part) => [...part.steps, ...part.detached]);
  const left = Math.min(...cut.parts.map((part) => part.left), 0);
  const right = Math.max(...cut.parts.map((part) => part.right), 1);
  const radius = Math.max(...steps.map(({ outside }) => outside), 20) / 2;
  const scale = Math.min((room.width - 4) / (right - left), (room.height - rowHeight - 3) / (2 * radius), 2);
  const on = sheet(scale, {
    x: 2 - left * scale + (room.width - 4 - (right - left) * scale) / 2,
    y: rowHeight + radius * scale,
  });
  const parts = cut.parts.map(
    (part): Group =>
      group('part', drawPart(part, cut.parts, on), { address: part.address, label: part.address }),
  );
  const named = addresses.flatMap((address, index) => {
    const part = cut.parts.find((one) => one.address === address);
    if (!part) return [];
    const outside = part.bearing?.outer.outside ?? Math.max(...part.steps.map((step) => step.outside), 0);
    return [
      {
        number: index + 1,
        at: on.x((part.left + part.right) / 2),
        foot: on.origin.y - (outside / 2) * scale,
      },
    ];
  });
  const axis = line('centre', [
    { x: on.x(left) - 2, y: on.origin.y },
    { x: on.x(right) + 2, y: on.origin.y },
  ]);
  const title = 'Section with the parts numbered';
  return svg(
    {
      view: [0, 0, room.width, rowHeight + 2 * radius * scale + 2],
      groups: [...parts, group('axis', [axis]), group('label', numbers(named, room.width))],
    },
    {
      title,
      description: addresses.map((address, i) => `${i + 1} ${address}`).join(', '),
      printed: false,
      style: null,
      id: 'numbered',
    },
  );
}

/** Room for the row of numbers, mm. */
const rowHeight = 9;
/** Numbers nearer than this run into each other, mm. */
const apart = 6;

/** The numbers in one row, moved apart where they would touch, each with a line to the middle of its part. */
function numbers(
  named: readonly { readonly number: number; readonly at: number; readonly foot: number }[],
  width: number,
): readonly Shape[] {
  const sorted = named.toSorted((a, b) => a.at - b.at);
  const places: number[] = [];
  for (const { at } of sorted) places.push(Math.max(at, (places.at(-1) ?? -apart) + apart, 3));
  // What was pushed over the right edge pushes the others back.
  let limit = width - 3;
  for (let i = places.length - 1; 0 <= i; i--) {
    places[i] = Math.min(places[i] as number, limit);
    limit = (places[i] as number) - apart;
  }
  return sorted.flatMap(({ number, at, foot }, index): readonly Shape[] => {
    const x = places[index] as number;
    return [
      line('leader', [
        { x, y: 5.2 },
        { x: at, y: foot + 1 },
      ]),
      { kind: 'dot', centre: { x: at, y: foot + 1 }, radius: 0.45 },
      { kind: 'badge', centre: { x, y: 3 }, number },
    ];
  });
}
