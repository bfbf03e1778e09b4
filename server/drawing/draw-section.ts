import type { VariantAnalysis } from '../analysis/analyze.ts';
import { type Section, section } from '../assembly/section.ts';
import { describeSection } from './describe-section.ts';
import { drawPart } from './draw-part.ts';
import { type FaultMark, type LocatedMark, locateMarks, marksAt, stateOf } from './fault-mark.ts';
import { layOut } from './lay-out.ts';
import { bare, headAndFoot, listsHeight, paper, sheetOfPaper, toNextSheet } from './page.ts';
import { isThin } from './parts/thin-ring.ts';
import { type Group, group, type Scene } from './scene.ts';
import { type Sheet, scales, screenScales } from './sheet.ts';
import { sheetStyle } from './sheet-style.ts';
import { svg } from './svg.ts';

export interface SectionOptions {
  /** True: a file of its own with a style for paper, printed at scale on A4. False: classes only, for a page that styles them. */
  readonly standalone: boolean;
  /** Usable width of the sheet, mm; by default that of A4 across. The letters keep their size, the hub fills the rest. */
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
  /** Number of each fault as marked, and the parts it is marked on; none where it has no place in the drawing. */
  readonly marks: readonly { readonly number: number; readonly addresses: readonly string[] }[];
  readonly scene: Scene;
}

/** Draws the section of one variant as a technical drawing, its faults marked by their place in the list. */
export function drawSection(
  variant: VariantAnalysis,
  faults: readonly FaultMark[],
  options: SectionOptions,
): SectionDrawing {
  const cut = section(variant.assembly, options.asWritten?.assembly);
  const marks = locateMarks(faults, variant, cut);
  const width = options.width ?? paper.width;
  const lists = options.standalone ? listsHeight(marks, cut.assumed, width) : 0;
  const room = {
    width,
    height: options.standalone ? paper.height - headAndFoot : Number.POSITIVE_INFINITY,
    lists,
    fold: options.standalone ? toNextSheet : Number.POSITIVE_INFINITY,
    margin: paper.margin,
    scales: options.standalone ? scales : screenScales,
  };
  const laid = layOut(variant, cut, marks, room);
  const { scale } = laid.sheet;
  const title = titleOf(variant);
  const missing = [...cut.assumed, ...notToScale(cut, laid.sheet)];
  const description = describeSection({
    variant,
    section: cut,
    title,
    scale: options.standalone ? scale : null,
    faults,
    missing,
  });
  const parts = partGroups(cut, laid.sheet, marks);
  const scene = options.standalone ? sheetOfPaper(laid, parts, { title, marks, missing }) : bare(laid, parts);
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

/** Parts with a fault last, so that their heavy edges lie on top. */
function partGroups(cut: Section, on: Sheet, marks: readonly LocatedMark[]): readonly Group[] {
  const groups = cut.parts.map((part) => {
    const own = marksAt(marks, part.address);
    const faults = own.map(({ number, mark }) => `, fault ${number}: ${mark.message}`).join('');
    const label = `${part.address}${faults}`;
    return group('part', drawPart(part, cut.parts, on), {
      address: part.address,
      label,
      state: stateOf(own),
    });
  });
  return [...groups.filter(({ state }) => state === null), ...groups.filter(({ state }) => state !== null)];
}

function notToScale(cut: Section, on: Sheet): readonly string[] {
  return cut.parts
    .filter((part) => part.kind !== 'bearing' && part.kind !== 'wave-washer' && isThin(part, on))
    .map(({ address, left, right }) => {
      const thick = (right - left).toFixed(2);
      return `${address} is ${thick} mm thick and drawn wider so that it shows: not to scale`;
    });
}

function titleOf({ name, assembly }: VariantAnalysis): string {
  const hub = assembly.hub.values.hub?.value ?? 'Hub without a name';
  const revision = assembly.hub.values.revision?.value;
  return [hub, ...(revision ? [`revision ${revision}`] : []), ...(name === null ? [] : [name])].join(', ');
}
