import { type Group, group, type Shape } from './scene.ts';
import { lineHeight, textWidth, writing } from './text-width.ts';

export interface Note {
  /** The number it is marked with in the drawing. */
  readonly number: number | null;
  readonly severity: 'error' | 'warning' | 'information' | 'hint' | null;
  readonly text: string;
}

/** A title, or the faults and assumptions of a sheet in two columns, faults first. */
export function notes(
  list: readonly Note[],
  title: string | null,
  left: number,
  top: number,
  width: number,
): { readonly groups: readonly Group[]; readonly bottom: number } {
  const groups: Group[] = [];
  if (title !== null) {
    groups.push(
      group('note', [writing(title, { x: left, y: top + 5 }, { anchor: 'start', size: 5, strong: true })]),
    );
    return { groups, bottom: top + 7 };
  }
  let y = top;
  const faults = list.filter(({ number }) => number !== null);
  for (const { number, severity, text } of faults) {
    const lines = wrap(text, width - 8);
    const shapes: Shape[] = [
      { kind: 'badge', centre: { x: left + 2.4, y: y + 2 }, number: number ?? 0 },
      ...lines.map((part, at) =>
        writing(part, { x: left + 7, y: y + 3.3 + at * lineHeight }, { anchor: 'start' }),
      ),
    ];
    groups.push(
      group('note', shapes, {
        state: severity === 'error' ? 'fault' : severity === 'warning' ? 'warning' : 'note',
      }),
    );
    y += lines.length * lineHeight + 0.8;
  }
  const assumed = list.filter(({ number }) => number === null);
  if (assumed.length === 0) return { groups, bottom: y };
  y += 2;
  groups.push(
    group('note', [
      writing('Assumed in order to draw:', { x: left, y: y + 3.3 }, { anchor: 'start', strong: true }),
    ]),
  );
  y += lineHeight;
  const column = (width - 6) / 2;
  const wrapped = assumed.map(({ text }) => wrap(text, column));
  const total = wrapped.reduce((sum, lines) => sum + lines.length, 0);
  let [row, side] = [0, 0];
  let tallest = 0;
  for (const lines of wrapped) {
    if (side === 0 && total / 2 <= row) [row, side] = [0, 1];
    const x = left + side * (column + 6);
    const start = y + row * lineHeight;
    groups.push(
      group(
        'note',
        lines.map((part, at) => writing(part, { x, y: start + 3.3 + at * lineHeight }, { anchor: 'start' })),
      ),
    );
    row += lines.length;
    tallest = Math.max(tallest, row);
  }
  return { groups, bottom: y + tallest * lineHeight };
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
