import { expect, test } from 'vitest';
import { documentSymbols } from '../../server/features/document-symbols.ts';
import { hubWith, specAtCursor } from '../support/spec-at-cursor.ts';

type Symbols = ReturnType<typeof documentSymbols>;
const outline = (symbols: Symbols | undefined, depth = 0): string =>
  (symbols ?? [])
    .map(
      ({ name, detail, children }) =>
        `${'  '.repeat(depth)}${name} | ${detail}\n${outline(children, depth + 1)}`,
    )
    .join('');

test('parts, seats and variants are a tree with their sizes', () => {
  const { snapshot } = specAtCursor(`${hubWith()}variants:\n  thru-12:\n    width: 110 ±0.2\n`);
  expect(outline(documentSymbols(snapshot))).toBe(
    `Dunlin front | front, 100 ±0.2
shell | 62.05 ±0.01
  shell.left | 26 N7
  shell.right | 26 N7
axle | 17 h6
stack | 5 parts
  end-cap.left | 14.03 ±0.02
  bearing.left | 6803-2RS  17 × 26 × 5
  spacer.centre | 62.06 ±0.01
  bearing.right | 6803-2RS  17 × 26 × 5
  end-cap.right | 14.03 ±0.02
variants | 
  thru-12 | 110 ±0.2
`,
  );
});

test('every name lies in its range, in half-typed files too', () => {
  const text = hubWith();
  for (let end = 0; end <= text.length; end += 7) {
    const { snapshot } = specAtCursor(text.slice(0, end));
    const walk = (symbols: Symbols): void => {
      for (const { range, selectionRange, children, name } of symbols) {
        expect(name).not.toBe('');
        expect(before(range.start, selectionRange.start) && before(selectionRange.end, range.end)).toBe(true);
        walk(children ?? []);
      }
    };
    walk(documentSymbols(snapshot));
  }
});

type Position = Symbols[number]['range']['start'];
const before = (a: Position, b: Position): boolean =>
  a.line < b.line || (a.line === b.line && a.character <= b.character);
