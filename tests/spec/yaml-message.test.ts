import { expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { readHub } from '../../server/spec/read-hub.ts';
import { yamlMessage } from '../../server/spec/yaml-message.ts';
import { parseOptions } from '../../server/spec/yaml-text.ts';

/** The error codes the yaml library documents (its docs, "Errors"), with our words for each. */
const golden: Readonly<Record<string, string>> = {
  ALIAS_PROPS: 'X: anchors and references (& and *) are not read; write the value out',
  BAD_ALIAS: 'X: anchors and references (& and *) are not read; write the value out',
  BAD_COLLECTION_TYPE: 'X promises another kind of value than follows; write the value alone',
  BAD_DIRECTIVE: 'X: lines that begin with % are not read; remove this one',
  BAD_DQ_ESCAPE: 'X is no character that \\ can write inside double quotes; use single quotes, or write \\\\',
  BAD_INDENT: 'X does not line up with the keys above it; keys of one section begin at the same column',
  BAD_PROP_ORDER: 'X stands before a mark that should come first; write the value alone',
  BAD_SCALAR_START: 'a value cannot begin with X; put it in quotes',
  BLOCK_AS_IMPLICIT_KEY:
    'a second colon stands in this line; put the value in quotes, or begin the key on a line of its own',
  BLOCK_IN_FLOW: 'X begins a list or text over several lines inside braces; write it outside of them',
  DUPLICATE_KEY: 'X stands twice here; remove or rename one',
  IMPOSSIBLE: 'X cannot be read here; write the line anew',
  KEY_OVER_1024_CHARS: 'this key is longer than 1024 characters; is a colon or a line break missing?',
  MISSING_CHAR: 'a character is missing before X',
  MULTILINE_IMPLICIT_KEY: 'X has no colon; a key is followed by a colon, a space and its value',
  MULTIPLE_ANCHORS: 'X: anchors and references (& and *) are not read; write the value out',
  MULTIPLE_DOCS: 'a second document begins here; one file holds one, and only the first is read',
  MULTIPLE_TAGS: 'X: types (!) are not read; write the value alone',
  NON_STRING_KEY: 'X is no word; a key is a word',
  RESOURCE_EXHAUSTION: 'the text is nested too deeply to be read',
  TAB_AS_INDENT: 'this line is indented with tabs; spaces are wanted before a key',
  TAG_RESOLVE_FAILED: 'X: types (!) are not read; write the value alone',
  UNEXPECTED_TOKEN: 'X is not expected here; remove it, or put the value in quotes',
};

test.each(Object.entries(golden))('%s is said in our words', (code, message) => {
  expect(yamlMessage({ code: code as 'BAD_INDENT', message: '' }, 'X')).toBe(message);
});

test.each([
  ['Missing closing "quote', 'this quote is not closed; close it on the same line'],
  [
    'Implicit map keys need to be followed by map values',
    'X has no value yet; a colon, a space and a value are wanted after it',
  ],
  [
    'Sequence item without - indicator',
    'X does not line up with the item above it; keys of an item begin under its first key',
  ],
  ['Expected flow map to end with }', 'the bracket opened here is not closed'],
  ['Missing , between flow collection items', 'a comma is wanted before X'],
])('a missing character is named: %s', (message, wanted) => {
  expect(yamlMessage({ code: 'MISSING_CHAR', message }, 'X')).toBe(wanted);
});

/** Texts that make the library report each code it can report of a text. */
const provoking: readonly string[] = [
  'a: &x *y\n',
  'a: *\n',
  'a: &x &y 1\n',
  '%FOO x\n---\na: 1\n',
  'a: "\\q"\n',
  'a:\n   b: 1\n  c: 2\n',
  'a: @b\n',
  'a: b: c\n',
  'a: { b: |\n x }\n',
  `${'k'.repeat(1100)}: 1\n`,
  'a: 1\nb\nc: 2\n',
  'a: 1\nb c\nd: 2\n',
  '? [a]\n: b\n',
  'a: !foo 1\n',
  'a: !x !y 1\n',
  'a: }\nb: 1\n',
  'a: 1\n\tb: 2\n',
  'a: "x" y\n',
  'a: {b: 1\nc: 2\n',
  'a: [1, , 2]\n',
  'a: [1 2: 3, {a b}]\n',
  'a: !!map [1]\n',
];

test.each(provoking)('no word of the parser reaches the user (%#)', (text) => {
  const { errors, warnings } = parseDocument(text, parseOptions);
  const raw = [...errors, ...warnings].map((e) => e.message);
  const said = readHub(text).problems.map((p) => p.message);
  expect(said.length).toBeGreaterThan(0);
  for (const message of said) {
    expect(raw).not.toContain(message);
    expect(message).not.toMatch(
      /implicit|mapping|sequence|scalar|flow|token|node|YAML|invalid|undefined|NaN|\[object|!$/i,
    );
  }
});
