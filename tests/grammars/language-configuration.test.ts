import { expect, test } from 'vitest';
import configuration from '../../grammars/language-configuration.json' with { type: 'json' };

const words = (text: string) =>
  text.match(new RegExp(configuration.wordPattern.pattern, `g${configuration.wordPattern.flags}`));
const matches = (pattern: string, line: string) => new RegExp(pattern).test(line);

test.each([
  ['6902-2RS', ['6902-2RS']],
  ['619/8-2Z', ['619/8-2Z']],
  ['26 N7', ['26', 'N7']],
  ['spacer.centre', ['spacer.centre']],
  ['end-', ['end-']],
  ['17x26x5', ['17x26x5']],
  ['62.05 ±0.02', ['62.05', '0.02']],
  ['61.98..62.02', ['61.98', '62.02']],
  ['62 +0.05/-0.02', ['62', '0.05', '0.02']],
  ['- bearing: left', ['bearing', 'left']],
  ['{ bore: 26 N7, depth: 5 }', ['bore', '26', 'N7', 'depth', '5']],
  ['12 N·m', ['12', 'N·m']],
  ['[washer.left,shim.left]', ['washer.left', 'shim.left']],
])('the words of "%s" are whole terms', (text, expected) => {
  expect(words(text)).toEqual(expected);
});

test.each([
  ['stack:', true],
  ['stack: # left to right', true],
  ['  - spacer:', true],
  ['notes: |', true],
  ['notes: >-', true],
  ['left: {', true],
  ['width: 100 ±0.1', false],
  ['width: 100 # note: wide', false],
  ['# stack:', false],
  ['left: { bore: 26 }', false],
])('Enter after "%s" indents: %s', (line, expected) => {
  expect(matches(configuration.indentationRules.increaseIndentPattern, line)).toBe(expected);
});

test.each([
  ['  - bearing: left', true],
  ['- end-cap: right', true],
  ['  - { shim: left }', false],
  ['  - 6902-2RS', false],
  ['    length: 14.03', false],
])('Enter after the first line of a part, "%s", moves under its name: %s', (line, expected) => {
  expect(configuration.onEnterRules.some((rule) => matches(rule.beforeText, line))).toBe(expected);
});
