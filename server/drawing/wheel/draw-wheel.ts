import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import { lacedSpokes } from '../../analysis/wheel/laced-spokes.ts';
import type { FaultMark } from '../fault-mark.ts';
import { heading, notes } from '../notes.ts';
import { headAndFoot, paper } from '../page.ts';
import { type Group, group, type Scene } from '../scene.ts';
import { sayScale, scales } from '../sheet.ts';
import { sheetStyle } from '../sheet-style.ts';
import { svg } from '../svg.ts';
import { boxOf, writing } from '../text-width.ts';
import { behindView } from './behind-view.ts';
import { type Block, blockAt } from './block.ts';
import { describeWheel, wheelPartWords } from './describe-wheel.ts';
import { lacingDetail } from './lacing-detail.ts';
import { sideView, sideViewSize } from './side-view.ts';
import { tensionBars } from './tension-bars.ts';
import { wheelMarks } from './wheel-marks.ts';

/** How a wheel is drawn. */
export interface WheelOptions {
  readonly title: string;
  /** Whether spokes pass behind at their last crossing, by side. */
  readonly interlaced: Readonly<Record<'left' | 'right', boolean>>;
  /** True: a file of its own that prints on A4 across. False: classes only, for a page that styles them. */
  readonly standalone: boolean;
  /** Usable width, mm; that of A4 across without it. */
  readonly width?: number;
  /** Only the lacing, in one row: for the build sheet. */
  readonly brief?: boolean;
}

export interface WheelDrawing {
  /** Null where neither side is known. */
  readonly svg: string | null;
  readonly description: string;
  /** What was assumed to draw it, a sentence each. */
  readonly assumed: readonly string[];
}

/** Between two views, mm. */
const gutter = 5;
/** From this width on all views stand beside each other; under the second, each below the other, mm. */
const wide = 240;
const narrow = 150;
/** Line above a view of the middle, mm. */
const captionHeight = 5;

/** Draws a wheel from the side, its middle from both sides, its upper half from behind, and the readings of its spokes. */
export function drawWheel(
  wheel: WheelAnalysis,
  faults: readonly FaultMark[],
  options: WheelOptions,
): WheelDrawing {
  const { title, interlaced, standalone } = options;
  const laced = lacedSpokes(wheel);
  const assumed = [
    ...(laced?.assumed ?? []),
    ...(laced ? ['the rim is drawn where its spokes end; its section is not to size'] : []),
  ];
  const description = describeWheel(title, wheel, faults, [...wheel.assumed, ...assumed]);
  if (!laced || laced.spokes.length === 0)
    return { svg: null, description: `${title}: nothing to draw yet.`, assumed: [] };
  const width = options.width ?? paper.width;
  const about = {
    interlaced,
    marks: wheelMarks(faults),
    label: (address: string) => wheelPartWords(wheel, address),
  };
  const bars = options.brief ? null : tensionBars(wheel, width, about);
  const radius = wheel.rim?.seatRadius ?? 300;
  const most = standalone
    ? paper.height - headAndFoot - (bars ? bars.height + gutter : 0)
    : Number.POSITIVE_INFINITY;
  const share = options.brief ? 0.39 : width < wide ? 0.68 : 0.52;
  const room = width < narrow ? width : Math.min(most, width * share);
  const scale = standalone
    ? (scales.find((one) => sideViewSize(radius, one) <= room) ?? 0.1)
    : (room - sideViewSize(radius, 0)) / (sideViewSize(radius, 1) - sideViewSize(radius, 0));
  const side = sideView(laced, scale, about);
  const behind = behindView(wheel, scale, about);
  const left = width - side.width - behind.width - 2 * gutter;
  const most3 = Math.min((side.height - gutter) / 2 - captionHeight, left);
  const stacked = width < wide;
  const rest = (width - side.width - 2 * gutter) / 2;
  const size = options.brief ? rest : stacked ? Math.min(78, (width - gutter) / 2) : most3;
  const details = (['left', 'right'] as const).map((name) =>
    lacingDetail(laced, name, size, interlaced[name]),
  );
  const laid = options.brief
    ? inRow([side, ...details])
    : stacked
      ? below(side, behind, details, width)
      : beside(side, behind, details, left);
  const bottom = bars ? laid.bottom + gutter + bars.height : laid.bottom;
  const groups = [...laid.groups, ...(bars ? blockAt(bars, 0, laid.bottom + gutter) : [])];
  const legend = group('note', [
    writing(
      [
        ...(standalone ? [`scale ${sayScale(scale)}, the middles larger`] : []),
        'wide lines: right',
        'dashed: left',
        'lengths in mm',
      ].join(' · '),
      options.brief ? { x: side.width + gutter, y: bottom - 1 } : { x: 0, y: bottom + 5 },
      { anchor: 'start', size: 3 },
    ),
  ]);
  const scene = standalone
    ? onPaper([...groups, legend], bottom + 7, { title, faults, assumed })
    : bare([...groups, legend], width, options.brief ? bottom : bottom + 7);
  const style = standalone ? sheetStyle : null;
  const frame = { title, description, printed: standalone, style, id: options.brief ? 'lacing' : 'hw' };
  return { svg: svg(scene, frame), description, assumed };
}

interface LaidOut {
  readonly groups: readonly Group[];
  readonly bottom: number;
}

function inRow(blocks: readonly Block[]): LaidOut {
  const bottom = Math.max(...blocks.map(({ height }) => height));
  let left = 0;
  const groups = blocks.flatMap((block) => {
    const placed = blockAt(block, left, (bottom - block.height) / 2);
    left += block.width + gutter;
    return placed;
  });
  return { groups, bottom };
}

function beside(side: Block, behind: Block, details: readonly Block[], left: number): LaidOut {
  const start = side.width + gutter;
  const across = details[0]?.width ?? 0;
  const high = details[0]?.height ?? 0;
  return {
    groups: [
      ...blockAt(side, 0, 0),
      ...details.flatMap((detail, at) =>
        blockAt(detail, start + Math.max(0, (left - across) / 2), at * (high + gutter)),
      ),
      ...blockAt(behind, start + left + gutter, Math.max(0, (side.height - behind.height) / 2)),
    ],
    bottom: Math.max(side.height, behind.height, 2 * high + gutter),
  };
}

/** The two whole views in a row where they fit, the two of the middle below. */
function below(side: Block, behind: Block, details: readonly Block[], width: number): LaidOut {
  const across = details[0]?.width ?? 0;
  const room = width - side.width - gutter;
  const fits = narrow <= width && behind.width <= room;
  const second = side.height + gutter;
  const third = second + (details[0]?.height ?? 0) + gutter;
  const spare = Math.max(0, width - 2 * across - gutter) / 2;
  return {
    groups: [
      ...blockAt(side, fits ? 0 : Math.max(0, (width - side.width) / 2), 0),
      ...details.flatMap((detail, at) => blockAt(detail, spare + at * (across + gutter), second)),
      ...blockAt(
        behind,
        fits ? side.width + gutter + (room - behind.width) / 2 : Math.max(0, (width - behind.width) / 2),
        fits ? 0 : third,
      ),
    ],
    bottom: fits ? third - gutter : third + behind.height,
  };
}

function bare(groups: readonly Group[], width: number, bottom: number): Scene {
  const texts = groups.flatMap(({ shapes }) => shapes.flatMap((shape) => boxOf(shape) ?? []));
  const left = Math.min(0, ...texts.map((box) => box.left)) - 2;
  const right = Math.max(width, ...texts.map((box) => box.right)) + 2;
  const top = Math.min(0, ...texts.map((box) => box.top)) - 2;
  return { view: [left, top, right - left, bottom - top + 2], groups };
}

function onPaper(
  groups: readonly Group[],
  bottom: number,
  about: {
    readonly title: string;
    readonly faults: readonly FaultMark[];
    readonly assumed: readonly string[];
  },
): Scene {
  const top = -paper.margin - 8;
  const sheet = paper.height + 2 * paper.margin;
  const list = [
    ...about.faults.map(({ severity, message }, at) => ({ number: at + 1, severity, text: message })),
    ...about.assumed.map((text) => ({ number: null, severity: null, text })),
  ];
  const tail = notes(list, 0, bottom + 3, paper.width, { at: top + sheet, margin: paper.margin });
  const height = Math.max(sheet, tail.bottom + paper.margin - top);
  return {
    view: [-paper.margin, top, paper.width + 2 * paper.margin, height],
    groups: [...groups, heading(about.title, 0, -8), ...tail.groups],
  };
}
