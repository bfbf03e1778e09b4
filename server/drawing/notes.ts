import { type Group, group, type Shape } from './scene.ts';
import { lineHeight, textWidth, writing } from './text-width.ts';

export interface Note {
  /** The number it is marked with in the drawing; null for what was assumed. */
  readonly number: number | null;
  readonly severity: 'error' | 'warning' | 'information' | 'hint' | null;
  readonly text: string;
}

/** Where one sheet of paper ends and the next begins, mm; nothing is written across it. */
export interface Fold {
  readonly at: number;
  readonly margin: number;
}

/** The title over a drawing. */
export function heading(title: string, left: number, top: number): Group {
  return group('note', [writing(title, { x: left, y: top + 5 }, { anchor: 'start', size: 5, strong: true })]);
}

/** Faults by their numbers, then what was assumed in two columns. */
export function notes(
  list: readonly Note[],
  left: number,
  top: number,
  width: number,
  fold: Fold,
): { readonly groups: readonly Group[]; readonly bottom: number } {
  const groups: Group[] = [];
  const faults = list.filter(({ number }) => number !== null);
  // A list that fits one sheet is not torn apart.
  let y = clearOf(
    fold,
    top,
    faults.reduce((sum, { text }) => sum + wrap(text, width - 8).length + 0.2, 0),
  );
  for (const { number, severity, text } of faults) {
    if (number === null) continue;
    const lines = wrap(text, width - 8);
    y = clearOf(fold, y, lines.length);
    const state = severity === 'error' ? 'fault' : severity === 'warning' ? 'warning' : 'note';
    const shapes: Shape[] = [
      { kind: 'badge', centre: { x: left + 2.4, y: y + 2 }, number },
      ...lines.map((part, at) =>
        writing(part, { x: left + 7, y: y + 3.3 + at * lineHeight }, { anchor: 'start' }),
      ),
    ];
    groups.push(group('note', shapes, { state }));
    y += lines.length * lineHeight + 0.8;
  }
  const assumed = list.filter(({ number }) => number === null).map(({ text }) => text);
  if (assumed.length === 0) return { groups, bottom: y };
  const column = (width - 6) / 2;
  const wrapped = assumed.map((text) => wrap(text, column));
  const total = wrapped.reduce((sum, lines) => sum + lines.length, 0);
  let half = 0;
  for (const lines of wrapped) if (half < total / 2) half += lines.length;
  y = clearOf(fold, y + 2, 1 + half);
  groups.push(
    group('note', [
      writing('Assumed in order to draw:', { x: left, y: y + 3.3 }, { anchor: 'start', strong: true }),
    ]),
  );
  y += lineHeight;
  let side = 0;
  let here = y;
  let rows = 0;
  let bottom = y;
  for (const lines of wrapped) {
    if (side === 0 && half <= rows) {
      side = 1;
      here = y;
    }
    here = clearOf(fold, here, lines.length);
    const x = left + side * (column + 6);
    const texts = lines.map((part, at) =>
      writing(part, { x, y: here + 3.3 + at * lineHeight }, { anchor: 'start' }),
    );
    groups.push(group('note', texts));
    rows += lines.length;
    here += lines.length * lineHeight;
    bottom = Math.max(bottom, here);
  }
  return { groups, bottom };
}

/** The place itself, or the top of the next sheet where the lines would run over the fold. */
function clearOf({ at, margin }: Fold, y: number, lines: number): number {
  return y < at + margin && at - margin < y + lines * lineHeight ? at + margin : y;
}

/** Breaks a sentence at spaces so that no line is wider than asked. */
export function wrap(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current !== '' && width < textWidth(longer)) {
      lines.push(current);
      current = word;
    } else {
      current = longer;
    }
  }
  return current === '' ? lines : [...lines, current];
}
