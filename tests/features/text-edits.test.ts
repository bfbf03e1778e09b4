import { expect, test } from 'vitest';
import { positionsIn } from '../../server/features/positions.ts';
import { textEdits, withoutStops } from '../../server/features/text-edits.ts';

const text = 'stack:\n  - spacer: centre\n    length: 62\nnotes: x';
const lineEnd = text.indexOf('\nnotes');

const editsOf = (inserted: string, at: number, snippets = true) =>
  textEdits(
    { title: '', changes: [{ span: { start: at, end: at }, text: inserted }], snippet: true },
    text,
    positionsIn(text),
    snippets,
  );

test('whole lines are inserted where the editor adds no indentation of its own', () => {
  const start = { line: 3, character: 0 };
  expect(editsOf('\n    inside: $0', lineEnd)).toEqual([
    { range: { start, end: start }, snippet: { kind: 'snippet', value: '    inside: $0\n' } },
  ]);
  expect(editsOf('\nwidth: $0', lineEnd)).toMatchObject([{ snippet: { value: 'width: $0\n' } }]);
});

test('further lines inside a line are written as the editor will indent them', () => {
  // The editor adds the four blanks of the line the snippet is inserted in.
  expect(editsOf('1\n    inside: $0', lineEnd)).toMatchObject([{ snippet: { value: '1\ninside: $0' } }]);
});

test('a further line that stands further left is sent as plain text', () => {
  expect(editsOf('1\nwidth: $0', lineEnd)).toMatchObject([{ newText: '1\nwidth: ' }]);
});

test('a client without snippets gets plain text', () => {
  expect(editsOf('\nwidth: $0', lineEnd, false)).toMatchObject([{ newText: '\nwidth: ' }]);
});

test.each([
  ['a $0 b', 'a  b'],
  [`\${1:left} and $2`, 'left and '],
  [`\${1|front,rear|}`, 'front'],
  ['costs \\$5', 'costs $5'],
  [`\${1:a\\}b}`, 'a}b'],
])('%s left alone is %s', (snippet, left) => {
  expect(withoutStops(snippet)).toBe(left);
});
