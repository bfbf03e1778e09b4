import { describe, expect, test } from 'vitest';
import type { ProblemCode } from '../../server/spec/problem.ts';
import { readHub } from '../../server/spec/read-hub.ts';
import { applyFix } from './apply.ts';

const plover = `hub: Plover front
position: front
width: 100 ±0.1
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - end-cap: right
    length: 14.03 ±0.02
shell:
  seats:
    left: { bore: 26 N7 }
`;
const stack = ['end-cap.left', 'bearing.left', 'end-cap.right'];

interface Case {
  readonly title: string;
  readonly from: string;
  readonly to: string;
  readonly code: ProblemCode;
  readonly marked: string;
  readonly message: string;
  /** What the preferred fix leaves of the problems, `left` written at its cursor stop; absent where no fix is preferred. */
  readonly left?: number;
  /** Parts that are still read. */
  readonly parts?: readonly string[];
}

const slips: readonly Case[] = [
  {
    title: 'no space after a colon',
    from: 'length: 14.03 ±0.02\n  - b',
    to: 'length:14.03 ±0.02\n  - b',
    code: 'yaml-syntax',
    marked: 'length:',
    message: 'length wants a space after its colon: length: 14.03 ±0.02',
    left: 0,
  },
  {
    title: 'no space after the first colon',
    from: 'hub: P',
    to: 'hub:P',
    code: 'yaml-syntax',
    marked: 'hub:',
    message: 'hub wants a space after its colon: hub: Plover front',
    left: 0,
  },
  {
    title: 'no space after the colon of an item',
    from: '- end-cap: left',
    to: '- end-cap:left',
    code: 'yaml-syntax',
    marked: 'end-cap:',
    message: 'end-cap wants a space after its colon: end-cap: left',
    left: 0,
  },
  {
    title: 'no space after a colon in braces',
    from: '{ bore: 26',
    to: '{ bore:26',
    code: 'yaml-syntax',
    marked: 'bore:',
    message: 'bore wants a space after its colon: bore: 26 N7',
    left: 0,
  },
  {
    title: 'an unclosed double quote',
    from: 'hub: P',
    to: 'hub: "P',
    code: 'yaml-syntax',
    marked: '"',
    message: 'the quote opened here is not closed; close it on the same line: "Plover front"',
    left: 0,
  },
  {
    title: 'an unclosed single quote',
    from: 'code: 6',
    to: "code: '6",
    code: 'yaml-syntax',
    marked: "'",
    message: "the quote opened here is not closed; close it on the same line: '6803-2RS'",
    left: 0,
  },
  {
    title: 'an unclosed quote in braces',
    from: 'bore: 26',
    to: 'bore: "26',
    code: 'yaml-syntax',
    marked: '"',
    message: 'the quote opened here is not closed; close it on the same line: "26 N7"',
    left: 0,
  },
  {
    title: 'no space after a dash',
    from: '- bearing',
    to: '-bearing',
    code: 'yaml-syntax',
    marked: '-bearing: left',
    message: 'the dash of an item wants a space after it: - bearing: left',
    left: 0,
  },
  {
    title: 'a tab before a key',
    from: '    code',
    to: '\tcode',
    code: 'tab-indentation',
    marked: '\t',
    message: 'this line is indented with tabs; spaces are wanted before a key',
    left: 0,
  },
  {
    title: 'a key without colon and value',
    from: 'position: front',
    to: 'position',
    code: 'yaml-syntax',
    marked: 'position',
    message: 'position has no value yet; a colon, a space and a value are wanted after it',
  },
  {
    title: 'a key without colon',
    from: 'position: front',
    to: 'position front',
    code: 'yaml-syntax',
    marked: 'position front',
    message: 'position wants a colon after it: position: front',
    left: 0,
  },
  {
    title: 'a word being typed',
    from: 'width:',
    to: 'not\nwidth:',
    code: 'yaml-syntax',
    marked: 'not',
    message: 'not has no value yet; a colon, a space and a value are wanted after it',
  },
  {
    title: 'a second colon in a line',
    from: 'hub: Plover front',
    to: 'hub: Plover: front',
    code: 'yaml-syntax',
    marked: ':',
    message:
      'a second colon stands in this line; put the value in quotes, or begin the key on a line of its own',
    left: 0,
  },
  {
    title: 'a key of an item too far in',
    from: '    code',
    to: '      code',
    code: 'yaml-syntax',
    marked: 'code',
    message: 'code is indented by 6, wanted 4 to line up with what is above it',
    left: 0,
  },
  {
    title: 'a key of an item not far enough in',
    from: '    code',
    to: '   code',
    code: 'yaml-syntax',
    marked: 'code',
    message: 'code is indented by 3, wanted 4 to line up with what is above it',
    left: 0,
  },
  {
    title: 'a key of an item under its dash',
    from: '    code',
    to: '  code',
    code: 'yaml-syntax',
    marked: 'code',
    message: 'code is indented by 2, wanted 4 to line up with what is above it',
    left: 0,
  },
  {
    title: 'a top-level key too far in',
    from: '\nwidth',
    to: '\n  width',
    code: 'yaml-syntax',
    marked: 'width',
    message: 'width is indented by 2, wanted 0 to line up with what is above it',
    left: 0,
  },
  {
    title: 'a brace left open',
    from: 'N7 }',
    to: 'N7',
    code: 'yaml-syntax',
    marked: '{',
    message: 'the bracket opened here is not closed; } is wanted at its end',
    left: 0,
  },
  {
    title: 'a brace left open above another line',
    from: 'N7 }',
    to: 'N7\n    right: { bore: 26 N7 }',
    code: 'yaml-syntax',
    marked: '{',
    message: 'the bracket opened here is not closed; } is wanted at its end',
    left: 0,
  },
  {
    title: 'a brace too many',
    from: 'N7 }',
    to: 'N7 }}',
    code: 'yaml-syntax',
    marked: '}',
    message: '} closes a bracket that was not opened; remove it',
    left: 0,
  },
  {
    title: 'a value that begins with a reserved sign',
    from: 'hub: P',
    to: 'hub: @P',
    code: 'yaml-syntax',
    marked: '@Plover',
    message: 'a value cannot begin with @; put it in quotes',
  },
  {
    title: 'text behind a quoted value',
    from: 'Plover front',
    to: '"Plover" front',
    code: 'yaml-syntax',
    marked: 'front',
    message: 'front stands behind a value that has ended; remove it, or put the whole value in quotes',
  },
  {
    title: 'a merge conflict',
    from: 'width: 100 ±0.1\n',
    to: '<<<<<<< ours\nwidth: 100 ±0.1\n=======\nwidth: 101 ±0.1\n>>>>>>> theirs\n',
    code: 'conflict-markers',
    marked: '<<<<<<< ours',
    message:
      'two versions of this file stand in it, left by a merge; the upper one is read: keep one and remove the markers',
  },
  {
    title: 'an anchor and a reference',
    from: 'left: { bore: 26 N7 }',
    to: 'left: &seat { bore: 26 N7 }\n    right: *seat',
    code: 'anchor-not-read',
    marked: '&seat',
    message: 'anchors and references (&, *, <<) are not read; write the value out where it is used',
  },
  {
    title: 'a merge key',
    from: '{ bore: 26 N7 }',
    to: '{ bore: 26 N7, <<: *seat }',
    code: 'anchor-not-read',
    marked: '<<',
    message: 'anchors and references (&, *, <<) are not read; write the value out where it is used',
  },
  {
    title: 'a misspelt key',
    from: 'length: 14.03 ±0.02\n  - b',
    to: 'lenght: 14.03 ±0.02\n  - b',
    code: 'unknown-key',
    marked: 'lenght',
    message: 'lenght is no key of an end-cap; nearest is length',
    left: 0,
  },
  {
    title: 'a key by a usual other name',
    from: 'width:',
    to: 'OLD:',
    code: 'unknown-key',
    marked: 'OLD',
    message: 'OLD is no key of the top level of a hub file; nearest is width',
    left: 0,
  },
  {
    title: 'a key nobody knows',
    from: 'width:',
    to: 'colour: red\nwidth:',
    code: 'unknown-key',
    marked: 'colour',
    message:
      'colour is no key of the top level of a hub file; it takes hub, revision, position, width, untoleranced, shell, freehub, axle …',
  },
  {
    title: 'a key of another section',
    from: '    code',
    to: '    face: 19.4\n    code',
    code: 'key-out-of-place',
    marked: 'face',
    message:
      'face belongs in an end-cap, not in a bearing; a bearing takes code, size, width, seat, journal, balls, groove, inner-outside …',
  },
  {
    title: 'a part without its dash',
    from: '  - bearing',
    to: '    bearing',
    code: 'key-out-of-place',
    marked: 'bearing',
    message: 'bearing begins a part of its own: a dash is wanted before it, as in - bearing: left',
    left: 0,
    parts: ['end-cap.left', 'end-cap.right'],
  },
  {
    title: 'a key that must be there',
    from: 'position: front\n',
    to: '',
    code: 'missing-key',
    marked: 'hub',
    message: 'position is missing in the file, such as position: front',
    left: 1,
  },
  {
    title: 'a length that must be there',
    from: '    length: 14.03 ±0.02\n  - b',
    to: '  - b',
    code: 'missing-key',
    marked: 'end-cap',
    message: 'length is missing in this end-cap, such as length: 14.03 ±0.02',
    left: 1,
  },
  {
    title: 'a misspelt kind',
    from: '- bearing',
    to: '- baering',
    code: 'unknown-kind',
    marked: 'baering',
    message: 'baering is no kind of part; nearest is bearing',
    left: 0,
  },
  {
    title: 'an address taken twice',
    from: 'end-cap: right',
    to: 'end-cap: left',
    code: 'duplicate-name',
    marked: 'left',
    message: 'end-cap.left stands twice; every part needs an address of its own, such as end-cap.right',
    left: 0,
    parts: ['end-cap.left', 'bearing.left', 'end-cap.left'],
  },
  {
    title: 'a key twice',
    from: 'width: 100 ±0.1\n',
    to: 'width: 100 ±0.1\nwidth: 100 ±0.2\n',
    code: 'duplicate-key',
    marked: 'width',
    message: 'width stands twice here; the first is read: remove or rename this one',
  },
  {
    title: 'a part without a name',
    from: '- bearing: left',
    to: '- bearing:',
    code: 'value-not-understood',
    marked: 'bearing',
    message: 'bearing has no name yet, such as bearing: left; its name is its address in the file',
    parts: ['end-cap.left', 'bearing.', 'end-cap.right'],
  },
  {
    title: 'a choice misspelt',
    from: 'position: front',
    to: 'position: frnt',
    code: 'value-not-understood',
    marked: 'frnt',
    message: 'position: frnt is not one of the values of position: front, rear; nearest is front',
    left: 0,
  },
  {
    title: 'a value where a section belongs',
    from: 'shell:\n  seats:\n    left: { bore: 26 N7 }',
    to: 'axle: 17',
    code: 'value-not-understood',
    marked: '17',
    message:
      'axle wants keys of its own, such as { diameter: 17 h6, material: aluminium 7075 }; here stands 17',
  },
  {
    title: 'a decimal comma',
    from: 'length: 14.03 ±0.02\n  - b',
    to: 'length: 14,03 ±0,02\n  - b',
    code: 'decimal-comma',
    marked: '14,03',
    message: 'length: 14,03 has a decimal comma; a point is wanted here: 14.03 ±0.02',
    left: 0,
  },
  {
    title: 'a decimal comma in braces',
    from: 'bore: 26 N7',
    to: 'bore: 26,01 +0,05/0, depth: 5',
    code: 'decimal-comma',
    marked: '26,01',
    message: 'bore: 26,01 has a decimal comma; a point is wanted here: 26.01 +0.05/0',
    left: 0,
  },
  {
    title: 'a length in another unit',
    from: 'width: 100 ±0.1',
    to: 'width: 10 cm',
    code: 'wrong-unit',
    marked: 'cm',
    message: 'width: 10 cm is 100 mm; lengths are written in mm or in',
    left: 0,
  },
  {
    title: 'a force without a unit',
    from: 'shell:',
    to: 'clamp: 5\nshell:',
    code: 'wrong-unit',
    marked: '5',
    message: 'clamp: 5 has no unit; a force is written with one, as in 5 kN, 1100 N or 110 kgf',
    left: 0,
  },
  {
    title: 'a class of the wrong letter',
    from: '26 N7',
    to: '26 n7',
    code: 'dimension-not-understood',
    marked: 'n7',
    message: "bore: n7 is a shaft's class; a bore takes a capital letter: N7",
    left: 0,
  },
  {
    title: 'a length that is none',
    from: 'width: 100 ±0.1',
    to: 'width: wide',
    code: 'dimension-not-understood',
    marked: 'wide',
    message: 'width: wide is not understood as a dimension; wanted is e.g. 14.03, 14.03 ±0.02 or 14 +0.05/0',
  },
  {
    title: 'a second document',
    from: 'shell:',
    to: '---\nshell:',
    code: 'more-than-one-document',
    marked: '---',
    message:
      'a second document begins here; one file holds one, and only the first is read: move this into a file of its own',
  },
  {
    title: 'an allowance without a reason',
    from: 'width:',
    to: '# allow width-off\nwidth:',
    code: 'allow-without-reason',
    marked: '# allow width-off',
    message:
      'the allowance of width-off gives no reason and silences nothing; write # allow width-off because …',
    left: 0,
  },
];

describe.each(slips)('$title', ({ from, to, code, marked, message, left, parts }) => {
  const text = plover.replace(from, to);
  const document = readHub(text);
  const [problem] = document.problems;

  test('is one finding at its place, and the rest is read', () => {
    expect(plover).toContain(from);
    expect(document.problems.map((p) => [p.code, p.message])).toEqual([[code, message]]);
    expect(text.slice(problem?.span.start, problem?.span.end)).toBe(marked);
    expect(document.hub?.stack.map((part) => part.address)).toEqual(parts ?? stack);
  });

  test('is mended by its fix, or has none to take without thinking', () => {
    const fix = problem?.fixes.find((f) => f.preferred);
    expect(fix !== undefined).toBe(left !== undefined);
    if (fix) expect(readHub(applyFix(text, fix, 'left')).problems).toHaveLength(left ?? 0);
  });
});

test('a slip in one part leaves its neighbours whole', () => {
  const text = plover
    .replace('    code: 6803-2RS', '    code 6803-2RS')
    .replace('14.03 ±0.02\n  - b', '14,03\n  - b');
  const document = readHub(text);
  expect(document.problems.map((p) => p.code)).toEqual(['decimal-comma', 'yaml-syntax']);
  expect(document.hub?.stack[1]?.values.code?.value).toBe('6803-2RS');
  expect(document.hub?.stack[2]?.values.length?.value.nominal).toBe(14.03);
});

test('the missing key is added where it belongs, with the cursor behind it', () => {
  const text = plover.replace('    length: 14.03 ±0.02\n  - b', '  - b');
  const [problem] = readHub(text).problems;
  const fix = problem?.fixes[0];
  expect(fix && applyFix(text, fix, '14')).toContain('  - end-cap: left\n    length: 14\n  - bearing');
});

test('either side of a conflict can be kept', () => {
  const text = plover.replace(
    'width: 100 ±0.1\n',
    '<<<<<<< a\nwidth: 100 ±0.1\n=======\nwidth: 101 ±0.1\n>>>>>>> b\n',
  );
  const fixes = readHub(text).problems[0]?.fixes ?? [];
  const sides = fixes.map((fix) => readHub(applyFix(text, fix)));
  expect(sides.map((side) => [side.problems.length, side.hub?.values.width?.value.nominal])).toEqual([
    [0, 100],
    [0, 101],
  ]);
});

test.each(['stack:', 'stack: []', 'stack:\n  - '])('%j has no parts yet', (stackText) => {
  const text = `hub: Knot\nposition: rear\nwidth: 142\n${stackText}\n`;
  const { problems } = readHub(text);
  expect(problems.map((p) => [p.code, text.slice(p.span.start, p.span.end)])).toEqual([
    ['missing-key', 'stack'],
  ]);
});

test.each(['constructor', '__proto__', 'toString'])('%s is a key like any other that is not known', (key) => {
  const text = `${plover}${key}: 1\naxle: { ${key}: 1 }\n`;
  const { problems } = readHub(text);
  expect(problems.map((p) => [p.code, text.slice(p.span.start, p.span.end)])).toEqual([
    ['unknown-key', key],
    ['unknown-key', key],
  ]);
});

test('a duplicate points at the first', () => {
  const text = plover.replace('end-cap: right', 'end-cap: left');
  const [problem] = readHub(text).problems;
  const related = problem?.related[0]?.span;
  expect(text.slice(0, related?.start).endsWith('- end-cap: ')).toBe(true);
  expect(text.indexOf('left')).toBe(related?.start);
});

test.each([
  ['', 'empty-file'],
  ['\n\n', 'empty-file'],
  ['# only a comment\n', 'empty-file'],
  ['\ufeff', 'empty-file'],
  ['hu', 'yaml-syntax'],
  ['- a\n', 'yaml-syntax'],
  ['x'.repeat(1_000_001), 'file-too-large'],
  ['['.repeat(1000), 'file-too-large'],
  ['- '.repeat(1000), 'file-too-large'],
])('a file that is no hub at all (%#) is one finding', (text, code) => {
  const document = readHub(text);
  expect(document.problems.map((p) => p.code)).toEqual([code]);
  expect(document.hub).toBeNull();
});

test('an empty file is begun by its fix', () => {
  const fix = readHub('').problems[0]?.fixes[0];
  expect(fix && readHub(applyFix('', fix, 'Knot rear')).problems).toEqual([]);
});

test('a bore that is missing is asked for at its seat by the address the seat has elsewhere', () => {
  const { problems } = readHub(
    'hub: A\nposition: front\nwidth: 100\nfreehub: { seats: { right: { depth: 2 } } }\nstack:\n  - { end-cap: left, length: 100 }\n',
  );
  expect(problems.map(({ message }) => message)).toEqual([
    'bore is missing in seat freehub.right, such as bore: 26 N7',
  ]);
});
