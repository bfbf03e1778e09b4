import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Section } from '../assembly/section.ts';
import { faultDetails } from './detail.ts';
import { columnPitch, drawDiameters, firstColumn, sideDiameters } from './diameter-dimensions.ts';
import { drawDetails, ringDetails } from './draw-details.ts';
import { drawLengths } from './draw-lengths.ts';
import type { LocatedMark } from './fault-mark.ts';
import { drawLabels, partLabels } from './labels.ts';
import { lengthDimensions } from './length-dimensions.ts';
import { type Group, group, line } from './scene.ts';
import { type Sheet, scales, sheet } from './sheet.ts';

/** Everything around the section in its place; the section itself is drawn on `sheet`. */
export interface Laid {
  readonly sheet: Sheet;
  readonly groups: readonly Group[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * The largest scale at which the section with its dimensions and names fits the room, laid out at it. It is
 * made smaller to leave `lists` mm for the lists under it, but not below 1.5:1: then they go on a second sheet.
 */
export function layOut(
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
  room: { readonly width: number; readonly height: number; readonly lists: number },
): Laid {
  const size = extent(section);
  // A drawing too small to read is worse than one on a second sheet.
  const tries = [
    { height: room.height - room.lists, least: 1.5 },
    { height: room.height, least: 1 },
    { height: room.height * 2, least: 0 },
  ];
  for (const { height, least } of tries) {
    for (const scale of scales) {
      if (scale < least) continue;
      // Not worth laying out what cannot fit.
      if (room.width < (size.last - size.first) * scale || height < size.diameter * scale) continue;
      const laid = layOutAt(scale, variant, section, marks, room.width);
      if (laid.right - laid.left <= room.width + 0.01 && laid.bottom - laid.top <= height) return laid;
    }
  }
  const fallback = scales.find(
    (scale) => (size.last - size.first) * scale <= room.width / 2 && size.diameter * scale <= room.height,
  );
  return layOutAt(fallback ?? scales.at(-1) ?? 1, variant, section, marks, room.width);
}

/** Ends and largest diameter of what is drawn, mm of the hub. */
function extent({ parts, length }: Section): {
  readonly first: number;
  readonly last: number;
  readonly diameter: number;
} {
  let [first, last, diameter] = [0, length, 10];
  for (const part of parts) {
    first = Math.min(first, part.left);
    last = Math.max(last, part.right);
    for (const { outside } of [...part.steps, ...part.detached]) diameter = Math.max(diameter, outside);
    diameter = Math.max(diameter, part.bearing?.outer.outside ?? 0, part.splineTip ?? 0);
  }
  return { first, last, diameter };
}

function layOutAt(
  scale: number,
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
  width: number,
): Laid {
  const columns = sideDiameters(variant, section);
  const reach = (count: number): number => (count === 0 ? 6 : firstColumn + (count - 1) * columnPitch + 4);
  const { first, last, diameter } = extent(section);
  const [before, after] = [reach(columns.left.length), reach(columns.right.length)];
  const used = before + (last - first) * scale + after;
  const slack = Math.max(0, width - used) / 2;
  const on = sheet(scale, { x: slack + before - first * scale, y: 0 });
  const half = (diameter / 2) * scale;
  const right = Math.max(width, used);
  const bounds = [0, right] as const;
  const measured = new Set([...columns.left, ...columns.right].map(({ id }) => id));
  const labels = drawLabels(partLabels(variant, section, measured), on, -half, bounds, marks);
  const lengths = drawLengths(lengthDimensions(variant, section, marks), on, half + 3, bounds, marks);
  const details = faultDetails(variant, section, marks);
  const enlarged = drawDetails(details, 0, lengths.bottom + 3, right);
  const axis = line('centre', [
    { x: on.x(first) - 3.5, y: 0 },
    { x: on.x(last) + 3.5, y: 0 },
  ]);
  return {
    sheet: on,
    groups: [
      group('axis', [axis]),
      ...drawDiameters(columns.left, 'left', section, on, marks),
      ...drawDiameters(columns.right, 'right', section, on, marks),
      ...lengths.groups,
      ...labels.groups,
      ...ringDetails(details, on, section.length / 2),
      ...enlarged.groups,
    ],
    left: 0,
    right,
    top: labels.top,
    bottom: enlarged.bottom,
  };
}
