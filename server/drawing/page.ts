import type { LocatedMark } from './fault-mark.ts';
import { foot } from './foot.ts';
import type { Laid } from './lay-out.ts';
import { heading, type Note, notes } from './notes.ts';
import type { Group, Scene } from './scene.ts';
import { boxOf } from './text-width.ts';

/** Usable size of an A4 sheet lying across, and its margin, mm. */
export const paper = { width: 281, height: 194, margin: 8 };
/** From the edge of the sheet to the top of the drawing, under the title, mm. */
const head = paper.margin + 8;
/** From the top of the drawing to the next sheet, mm. */
export const toNextSheet = paper.height + 2 * paper.margin - head;
/** Height kept for the title and the line with the scale, mm. */
export const headAndFoot = 18;

/** The drawing cut to its own size, for a page that shows the title and the lists itself. */
export function bare(laid: Laid, parts: readonly Group[]): Scene {
  const { top, bottom } = laid;
  const below = foot(laid.sheet.scale, laid, bottom + 4, false);
  const groups = [...parts, ...laid.groups, ...below.groups];
  // In little room a text may reach over the edge: the drawing grows rather than cutting it off.
  const texts = groups.flatMap(({ shapes }) => shapes.flatMap((shape) => boxOf(shape) ?? []));
  const left = Math.min(laid.left, ...texts.map((box) => box.left)) - 2;
  const right = Math.max(laid.right, ...texts.map((box) => box.right)) + 2;
  return { view: [left, top - 2, right - left, below.bottom - top + 4], groups };
}

/** The drawing on paper, with its title, its faults and what was assumed. */
export function sheetOfPaper(
  laid: Laid,
  parts: readonly Group[],
  about: {
    readonly title: string;
    readonly marks: readonly LocatedMark[];
    readonly missing: readonly string[];
  },
): Scene {
  const { left, right, top, bottom } = laid;
  const below = foot(laid.sheet.scale, laid, bottom + 4, true);
  const title = heading(about.title, left, top - 8);
  const start = top - head;
  const sheet = paper.height + 2 * paper.margin;
  const sheets = Math.max(1, Math.ceil((below.bottom + paper.margin - start) / sheet));
  const fold = { at: start + sheets * sheet, margin: paper.margin };
  const tail = notes(listOf(about.marks, about.missing), left, below.bottom + 4, right - left, fold);
  // What does not fit one sheet goes on to the next, printed below it.
  const height = Math.max(sheet, tail.bottom + paper.margin - start);
  return {
    view: [left - paper.margin, start, right - left + 2 * paper.margin, height],
    groups: [...parts, ...laid.groups, ...below.groups, title, ...tail.groups],
  };
}

/** How high the lists under a drawing come out, mm. */
export function listsHeight(
  marks: readonly LocatedMark[],
  missing: readonly string[],
  width: number,
): number {
  const nowhere = { at: Number.POSITIVE_INFINITY, margin: 0 };
  return notes(listOf(marks, missing), 0, 0, width, nowhere).bottom + 4;
}

function listOf(marks: readonly LocatedMark[], missing: readonly string[]): readonly Note[] {
  return [
    ...marks.map(({ number, mark }) => ({ number, severity: mark.severity, text: mark.message })),
    ...missing.map((text) => ({ number: null, severity: null, text })),
  ];
}
