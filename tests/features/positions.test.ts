import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { positionsIn } from '../../server/features/positions.ts';

const texts = fc
  .array(fc.constantFrom('a', 'µ', '😀', '\n', '\r\n', '\r', ' '), { maxLength: 40 })
  .map((parts) => parts.join(''));

test('positions are those of the protocol: every line end, UTF-16 characters', () => {
  fc.assert(
    fc.property(texts, fc.nat(60), (text, offset) => {
      const document = TextDocument.create('x', '', 1, text);
      const inside = Math.min(offset, text.length);
      // Between \r and \n there is no position of its own.
      fc.pre(text.slice(inside - 1, inside + 1) !== '\r\n');
      expect(positionsIn(text).position(offset)).toEqual(document.positionAt(offset));
      expect(positionsIn(text).offset(document.positionAt(offset))).toBe(inside);
    }),
    { seed: 1, numRuns: 500 },
  );
});

test('a position beyond a line or the text is the nearest one there is', () => {
  const { offset } = positionsIn('ab\ncd');
  expect(offset({ line: 0, character: 9 })).toBe(2);
  expect(offset({ line: 9, character: 0 })).toBe(5);
});
