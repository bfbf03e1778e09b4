import { expect, test } from 'vitest';
import { createWorkspace } from '../../server/workspace/workspace.ts';
import { hubWith, testFile } from '../support/spec-at-cursor.ts';
import { writer } from '../support/writer.ts';

const labels = (marked: string, around?: Record<string, string>, file?: string): readonly string[] =>
  writer(marked, file, around)
    .offered()
    .map(({ label }) => label);

const findingsOf = (text: string): readonly string[] => {
  const workspace = createWorkspace();
  workspace.open(testFile, text);
  return workspace.snapshot(testFile)?.findings.findings.map(({ message }) => message) ?? ['no spec'];
};

test('a first hub is written from suggestions alone and checks clean', () => {
  const hub = writer('');
  hub.take('hub');
  hub.take('Dunlin front');
  hub.enter();
  hub.take('position');
  hub.take('front');
  hub.enter();
  hub.take('width');
  hub.take('100 ±0.2');
  hub.enter();
  hub.take('stack');
  hub.take('end-cap');
  hub.take('14.03 ±0.02');
  for (const [kind, value] of [
    ['bearing', '6803-2RS'],
    ['spacer', '62.06 ±0.01'],
    ['bearing', '6803-2RS'],
  ] as const) {
    hub.enter();
    // The part that usually comes next is the first, although the editor has indented the line as a key.
    expect(hub.offered()[0]?.label).toBe(`- ${kind}`);
    hub.take(`- ${kind}`);
    hub.take(value);
  }
  hub.enter();
  hub.take('- end-cap');
  // 100 − 14.03 − 2 × 4.94 − 62.06 = 14.03: the last length is worked out.
  expect(hub.offered()[0]).toMatchObject({ label: '14.03 ±0.02', preselect: true });
  hub.take('14.03 ±0.02');
  expect(hub.text()).toBe(`hub: Dunlin front
position: front
width: 100 ±0.2
stack:
  - end-cap: left
    length: 14.03 ±0.02
  - bearing: left
    code: 6803-2RS
  - spacer: centre
    length: 62.06 ±0.01
  - bearing: right
    code: 6803-2RS
  - end-cap: right
    length: 14.03 ±0.02`);
  expect(findingsOf(hub.text())).toEqual([]);
});

test('typed with its dash, a part is offered just the same', () => {
  const hub = writer('stack:\n  - end-cap: left\n    length: 14.03 ±0.02\n  - ');
  expect(hub.offered()[0]?.label).toBe('bearing');
  hub.take('bearing');
  expect(hub.text().split('\n').slice(3)).toEqual(['  - bearing: left', '    code: ']);
});

test.each(['front', 'rear'])('the skeleton of a %s hub checks clean as it stands', (position) => {
  const hub = writer('');
  hub.take(`new ${position} hub`);
  expect(hub.text()).toContain('hub: Dunlin front');
  expect(findingsOf(hub.text())).toEqual([]);
});

test('the keys that are required come first, and those that are there do not come', () => {
  const offered = labels('hub: Dunlin\n$0');
  expect(offered.slice(0, 3)).toEqual(['position', 'width', 'stack']);
  expect(offered).not.toContain('hub');
});

test.each([
  ['keys of a part', hubWith(['    inside: 17.1\n', '    $0\n']), ['inside', 'material'], ['length', 'code']],
  [
    'keys of a seat, in braces',
    hubWith(['left: { bore: 26 N7,', 'left: { bore: 26 N7, $0,']),
    ['land', 'stop'],
    ['bore', 'seats'],
  ],
  ['words of a choice', hubWith(['position: front', 'position: $0']), ['front', 'rear'], ['100']],
  ['seats', hubWith(['seat: shell.right', 'seat: $0']), ['shell.left', 'shell.right'], []],
  ['materials', hubWith(['    inside: 17.1', '    material: $0']), ['steel', 'aluminium 7075-T6'], []],
  [
    'addresses in a variant',
    `${hubWith()}variants:\n  thru-12:\n    change:\n      $0`,
    ['end-cap.left', 'shell.left', 'axle'],
    [],
  ],
  ['parts to leave out', `${hubWith()}variants:\n  thru-12:\n    remove: [$0]`, ['end-cap.left'], ['axle']],
  ['names that are free', hubWith(['- bearing: right', '- bearing: $0']), ['right'], ['left']],
  [
    'classes of a bore',
    hubWith(['bore: 26 N7, depth: 5.1 ±0.02 }\n    right', 'bore: 26 $0, depth: 5.1 ±0.02 }\n    right']),
    ['26 N7', '26 M7'],
    ['26 h6'],
  ],
  ['classes of a shaft', hubWith(['17 h6', '17$0']), ['17 h6', '17 g6'], ['17 N7']],
  ['tolerances of a length', hubWith(['62.06 ±0.01', '62.06 $0']), ['62.06 ±0.02', '62.04..62.08'], []],
  [
    'the diameter of a ring for its seat',
    hubWith(['left: { bore: 26 N7', 'left: { bore: $0']),
    ['26 N7'],
    ['17 h6'],
  ],
] as const)('%s', (_, marked, offered, never) => {
  const all = labels(marked);
  expect(all).toEqual(expect.arrayContaining([...offered]));
  for (const label of never) expect(all).not.toContain(label);
});

test('bearing codes that fit the axle and the seat come first, with their sizes', () => {
  const items = writer(
    hubWith(['code: 6803-2RS\n    seat: shell.left', 'code: $0\n    seat: shell.left']),
  ).offered();
  expect(items[0]?.label).toBe('6803-2RS');
  // ISO 15, a 17 mm bore in a 26 mm seat: series 68 is 5 wide, 628 is 6 and 638 is 7.
  expect(items.find(({ label }) => label === '63803-2RS')?.detail).toBe('17 × 26 × 7 mm');
  expect(items.find(({ label }) => label === '62803-2RS')?.detail).toBe('17 × 26 × 6 mm');
});

test('nothing is suggested for what is written out, so that Enter is a new line', () => {
  expect(labels(hubWith(['position: front', 'position: fron$0']))).toContain('front');
  expect(labels(hubWith(['position: front', 'position: front$0']))).toEqual([]);
  expect(labels(hubWith(['14.03 ±0.02', '14.03 ±0.02$0']))).toEqual([]);
});

test('codes of another size are offered when they are typed, and say so', () => {
  const item = writer(hubWith(['code: 6803-2RS\n    seat: shell.left', 'code: 6902$0\n    seat: shell.left']))
    .offered()
    .find(({ label }) => label === '6902-2RS');
  // ISO 15, series 69 with bore code 02: 15 × 28 × 7.
  expect(item?.detail).toBe('15 × 28 × 7 mm, another size than here');
});

test('house codes of the workshop are offered', () => {
  const around = {
    'file:///saltmarsh/saltmarsh.workshop.yaml': 'bearings:\n  SM-17: { code: 6803-2RS C3 }\n',
  };
  expect(labels(hubWith(['code: 6803-2RS', 'code: $0']), around)).toContain('SM-17');
});

test('hub files are offered to a wheel', () => {
  const wheel = 'file:///saltmarsh/dunlin.wheel.yaml';
  expect(labels('wheel: Dunlin\nhub: $0', { [testFile]: hubWith() }, wheel)).toEqual([
    './dunlin-front.hub.yaml',
  ]);
});

test('an allowance is written in a comment, for what is found below it first', () => {
  const hub = writer(hubWith(['    code: 6803-2RS', '    # $0\n    code: 6893-2RS']));
  expect(hub.offered()[0]?.label).toBe('allow bearing-not-decoded');
  hub.take('allow bearing-not-decoded');
  expect(hub.text()).toContain('    # allow bearing-not-decoded because reason\n');
  expect(labels('# anything else $0')).toEqual([]);
});

test('a value right after its colon gets the space that belongs there', () => {
  const hub = writer('hub: Dunlin\nposition:$0\n');
  hub.take('front');
  expect(hub.text()).toBe('hub: Dunlin\nposition: front\n');
});

const block = 'stack:\n  - end-cap: left\n    length: ';
test.each([
  ['after a dash', 'stack:\n  - $0', block],
  ['without a dash', 'stack:\n  $0', block],
  ['half-typed', 'stack:\n  - end$0', block],
  ['in a list that is not indented', 'stack:\n- $0', 'stack:\n- end-cap: left\n  length: '],
  ['in braces', 'stack: [{ $0 }]', 'stack: [{ end-cap: left, length:  }]'],
])('the kind of a part brings its name and its first key, %s', (_, start, written) => {
  const hub = writer(start);
  hub.take('end-cap');
  expect(hub.text()).toBe(written);
});

test('a section opens further in, with the cursor in it', () => {
  const hub = writer('hub: Dunlin\n$0');
  hub.take('shell');
  hub.take('seats');
  hub.take('left');
  hub.take('bore');
  expect(hub.text()).toBe('hub: Dunlin\nshell:\n  seats:\n    left: { bore:  }');
});

test('something is answered at every place of a half-typed file', () => {
  const text = hubWith();
  for (let at = 0; at <= text.length; at += 3) {
    expect(() => writer(text.slice(0, at)).offered()).not.toThrow();
    expect(() => writer(`${text.slice(0, at)}$0${text.slice(at + 5)}`).offered()).not.toThrow();
  }
});
