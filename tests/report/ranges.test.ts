import fc from 'fast-check';
import { expect, test } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { rangesIn } from '../../server/report/ranges.ts';

test('ranges are those of the language server protocol, whatever ends the lines', () => {
  const piece = fc.constantFrom('a', 'Ø', '𝛿', ' ', '\n', '\r\n', '\r', 'end-cap: left');
  const text = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''));
  fc.assert(
    fc.property(text, fc.nat(200), fc.nat(20), (content, from, size) => {
      // A place between \r and \n is in no text editor; the protocol's own library moves it to the line's end.
      const start = Math.min(from, content.length);
      const end = Math.min(start + size, content.length);
      const split = (at: number) => content[at - 1] === '\r' && content[at] === '\n';
      fc.pre(!split(start) && !split(end));
      const document = TextDocument.create('file:///a', 'hub-spec', 1, content);
      const expected = { start: document.positionAt(start), end: document.positionAt(end) };
      expect(rangesIn(content)({ start, end })).toEqual(expected);
    }),
    { seed: 7, numRuns: 500 },
  );
});
