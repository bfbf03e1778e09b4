import type { VariantAnalysis } from '../analysis/analyze.ts';
import { type Section, section } from '../assembly/section.ts';
import { describeSection } from './describe-section.ts';
import { columnPitch, drawDiameters, firstColumn, sideDiameters } from './diameter-dimensions.ts';
import { drawLengths } from './draw-lengths.ts';
import { drawPart } from './draw-part.ts';
import { type FaultMark, type LocatedMark, locateMarks, marksAt, stateOf } from './fault-mark.ts';
import { foot } from './foot.ts';
import { drawLabels, partLabels } from './labels.ts';
import { lengthDimensions } from './length-dimensions.ts';
import { notes } from './notes.ts';
import { isThin } from './parts/thin-ring.ts';
import { type Group, group, line, type Scene } from './scene.ts';
import { type Sheet, scales, sheet } from './sheet.ts';
import { sheetStyle } from './sheet-style.ts';
import { svg } from './svg.ts';

export interface SectionOptions {
  /** True: a file of its own with a style for paper, printed at scale on A4. False: classes only, for a page that styles them. */
  readonly standalone: boolean;
  /** Usable width of the sheet, mm; by default that of A4 across. */
  readonly width?: number;
  /** The hub as written, where `variant` is another: its flanges are measured there. */
  readonly asWritten?: VariantAnalysis;
}

export interface SectionDrawing {
  readonly svg: string;
  readonly title: string;
  /** The same for a reader who does not see it: parts left to right with their sizes, loops, faults. */
  readonly description: string;
  /** What was assumed in order to draw, a sentence each. */
  readonly missing: readonly string[];
  /** mm on the sheet for each mm of the hub. */
  readonly scale: number;
  /** Number of each fault as marked, and the parts it is marked on; empty where it has no place in the drawing. */
  readonly marks: readonly { readonly number: number; readonly addresses: readonly string[] }[];
  readonly scene: Scene;
}

/** Usable size of an A4 sheet lying across, mm. */
const paper = { width: 277, height: 190, margin: 10 };

/** Draws the section of one variant as a technical drawing, its faults marked by their place in the list. */
export function drawSection(
  variant: VariantAnalysis,
  faults: readonly FaultMark[],
  options: SectionOptions,
): SectionDrawing {
  const cut = section(variant.assembly, options.asWritten?.assembly);
  const marks = locateMarks(faults, variant, cut);
  const width = options.width ?? paper.width;
  const scale = scaleFor(variant, cut, width, marks);
  const laid = layOut(variant, cut, scale, width, marks);
  const title = titleOf(variant);
  const missing = [...cut.assumed, ...notToScale(cut, laid.sheet)];
  const description = describeSection({ variant, section: cut, title, scale, faults, missing });
  const scene = finish(laid, { title, scale, faults, missing, standalone: options.standalone, width });
  const frame = {
    title,
    description,
    printed: options.standalone,
    style: options.standalone ? sheetStyle : null,
  };
  return {
    svg: svg(scene, frame),
    title,
    description,
    missing,
    scale,
    marks: marks.map(({ number, addresses }) => ({ number, addresses: [...addresses] })),
    scene,
  };
}

interface Laid {
  readonly sheet: Sheet;
  readonly groups: readonly Group[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The largest scale at which the section with its dimensions and names fits the sheet. */
function scaleFor(
  variant: VariantAnalysis,
  cut: Section,
  width: number,
  marks: readonly LocatedMark[],
): number {
  const fits = (scale: number): boolean => {
    const { left, right, top, bottom } = layOut(variant, cut, scale, width, marks);
    return right - left <= width + 0.01 && bottom - top <= paper.height - 18;
  };
  return scales.find(fits) ?? scales.at(-1) ?? 1;
}

function layOut(
  variant: VariantAnalysis,
  cut: Section,
  scale: number,
  width: number,
  marks: readonly LocatedMark[],
): Laid {
  const columns = sideDiameters(variant, cut);
  const reach = (count: number): number => (count === 0 ? 6 : firstColumn + (count - 1) * columnPitch + 4);
  const first = Math.min(0, ...cut.parts.map((part) => part.left));
  const last = Math.max(cut.length, ...cut.parts.map((part) => part.right));
  const [before, after] = [reach(columns.left.length), reach(columns.right.length)];
  const used = before + (last - first) * scale + after;
  const slack = Math.max(0, width - used) / 2;
  const on = sheet(scale, { x: slack + before - first * scale, y: 0 });
  const radius = Math.max(
    ...cut.parts.flatMap((part) => [...part.steps, ...part.detached].map(({ outside }) => outside)),
    ...cut.parts.map((part) => Math.max(part.bearing?.outer.outside ?? 0, part.splineTip ?? 0)),
  );
  const half = (radius / 2) * scale;
  const bounds = [0, Math.max(width, used)] as const;
  const measured = new Set([...columns.left, ...columns.right].map(({ id }) => id));
  const labels = drawLabels(partLabels(variant, cut, measured), on, -half, bounds, marks);
  const lengths = drawLengths(lengthDimensions(variant, cut), on, half + 3, bounds, marks);
  const axis = line('centre', [
    { x: on.x(first) - 5, y: 0 },
    { x: on.x(last) + 5, y: 0 },
  ]);
  return {
    sheet: on,
    groups: [
      ...partGroups(cut, on, marks),
      group('axis', [axis]),
      ...drawDiameters(columns.left, 'left', cut, on, marks),
      ...drawDiameters(columns.right, 'right', cut, on, marks),
      ...lengths.groups,
      ...labels.groups,
    ],
    left: 0,
    right: Math.max(width, used),
    top: labels.top,
    bottom: lengths.bottom,
  };
}

/** Parts with a fault last, so that their heavy edges lie on top. */
function partGroups(cut: Section, on: Sheet, marks: readonly LocatedMark[]): readonly Group[] {
  const groups = cut.parts.map((part) =>
    group('part', drawPart(part, cut.parts, on), {
      address: part.address,
      label: part.address,
      state: stateOf(marksAt(marks, part.address)),
    }),
  );
  return [...groups.filter(({ state }) => state === null), ...groups.filter(({ state }) => state !== null)];
}

function notToScale(cut: Section, on: Sheet): readonly string[] {
  const thin = cut.parts.filter(
    (part) => part.kind !== 'bearing' && part.kind !== 'wave-washer' && isThin(part, on),
  );
  return thin.map(
    ({ address, left, right }) =>
      `${address} is ${(right - left).toFixed(2)} mm thick and drawn wider so that it shows: not to scale`,
  );
}

function titleOf({ name, assembly }: VariantAnalysis): string {
  const hub = assembly.hub.values.hub?.value ?? 'Hub without a name';
  const revision = assembly.hub.values.revision?.value;
  return [hub, ...(revision ? [`revision ${revision}`] : []), ...(name === null ? [] : [name])].join(', ');
}

function finish(
  laid: Laid,
  about: {
    title: string;
    scale: number;
    faults: readonly FaultMark[];
    missing: readonly string[];
    standalone: boolean;
    width: number;
  },
): Scene {
  const { left, right, top, bottom } = laid;
  const below = foot(about.scale, left, bottom + 4);
  if (!about.standalone) {
    return {
      view: [left - 2, top - 2, right - left + 4, below.bottom - top + 4],
      groups: [...laid.groups, ...below.groups],
    };
  }
  const head = notes([], about.title, left, top - 9, right - left);
  const tail = notes(
    [
      ...about.faults.map(({ message }, index) => ({ number: index + 1, text: message })),
      ...about.missing.map((text) => ({ number: null, text })),
    ],
    null,
    left,
    below.bottom + 4,
    right - left,
  );
  const width = about.width + 2 * paper.margin;
  const content = tail.bottom - (top - 16);
  // What does not fit across one A4 sheet goes on two of them, one above the other.
  const sheetHeight = paper.height + 2 * paper.margin;
  const height =
    content <= paper.height + 2 ? sheetHeight : Math.max(2 * sheetHeight, content + 2 * paper.margin);
  const groups = [...laid.groups, ...below.groups, ...head.groups, ...tail.groups];
  return { view: [left - paper.margin, top - 16 - paper.margin + 2, width, height], groups };
}
