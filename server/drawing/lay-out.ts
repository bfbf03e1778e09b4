import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { Section } from '../assembly/section.ts';
import { faultDetails } from './detail.ts';
import { columnPitch, drawDiameters, firstColumn, sideDiameters } from './diameter-dimensions.ts';
import { detailHeight, drawDetails, ringDetails } from './draw-details.ts';
import { drawLengths } from './draw-lengths.ts';
import type { LocatedMark } from './fault-mark.ts';
import { drawLabels, partLabels } from './labels.ts';
import { lengthDimensions } from './length-dimensions.ts';
import { type Group, group, line } from './scene.ts';
import { type Sheet, sheet } from './sheet.ts';

/** Room on the sheet, mm. */
export interface Room {
  readonly width: number;
  readonly height: number;
  /** Height of the lists under the drawing. */
  readonly lists: number;
  /** From the top of the drawing to where the next sheet begins; infinite where nothing is printed. */
  readonly fold: number;
  readonly margin: number;
  /** Scales to choose from, largest first. */
  readonly scales: readonly number[];
}

/** Everything around the section in its place; the section itself is drawn on `sheet`. */
export interface Laid {
  readonly sheet: Sheet;
  readonly groups: readonly Group[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the dimensions end and what is enlarged begins, mm. */
  readonly lengthsEnd: number;
}

/**
 * The largest scale at which the section with its dimensions and names fits the room, laid out at it. It is
 * made smaller to leave `lists` mm for the lists under it, but not below 1.5:1: then they go on a second sheet.
 */
export function layOut(
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
  room: Room,
): Laid {
  const size = extent(section);
  const beside = besideSection(sideDiameters(variant, section));
  // A drawing too small to read is worse than one on a second sheet.
  const tries = [
    { height: room.height - room.lists, least: 1.5, whole: true },
    { height: room.height, least: 1.5, whole: false },
    { height: room.height, least: 1, whole: false },
    { height: room.height * 2, least: 0, whole: true },
  ];
  for (const { height, least, whole } of tries) {
    for (const scale of room.scales) {
      if (scale < least) continue;
      // Not worth laying out what cannot fit.
      const across = beside.before + (size.last - size.first) * scale + beside.after;
      if (room.width + 0.01 < across || height < size.diameter * scale) continue;
      const laid = layOutAt(scale, variant, section, marks, room);
      const bottom = whole ? laid.bottom : laid.lengthsEnd;
      if (laid.right - laid.left <= room.width + 0.01 && bottom - laid.top <= height) return laid;
    }
  }
  const fallback = room.scales.find(
    (scale) => (size.last - size.first) * scale <= room.width / 2 && size.diameter * scale <= room.height,
  );
  return layOutAt(fallback ?? room.scales.at(-1) ?? 1, variant, section, marks, room);
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

/** Room for the columns of diameters, mm. Texts stand to the left of their lines. */
function besideSection({ left, right }: ReturnType<typeof sideDiameters>): {
  readonly before: number;
  readonly after: number;
} {
  const reach = (count: number, beyond: number): number =>
    count === 0 ? 6 : firstColumn + (count - 1) * columnPitch + beyond;
  return { before: reach(left.length, 4), after: reach(right.length, 2) };
}

function layOutAt(
  scale: number,
  variant: VariantAnalysis,
  section: Section,
  marks: readonly LocatedMark[],
  room: Room,
): Laid {
  const { width } = room;
  const columns = sideDiameters(variant, section);
  const { first, last, diameter } = extent(section);
  const { before, after } = besideSection(columns);
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
  const fold = labels.top + room.fold;
  const overFold = fold - room.margin < lengths.bottom + 3 + detailHeight;
  const detailsTop = 0 < details.length && overFold ? fold + room.margin : lengths.bottom + 3;
  const enlarged = drawDetails(details, 0, detailsTop, right);
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
    lengthsEnd: lengths.bottom,
  };
}
