import { expect, test } from 'vitest';
import { orderList } from '../../server/report/order/order-list.ts';
import { orderCsv, orderMarkdown, orderText } from '../../server/report/order/order-print.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';

const hub = (name: string, codes: readonly [string, string], more = ''): string => `hub: ${name}
position: front
width: 100
stack:
  - end-cap: left
    length: 14
  - bearing: left
    ${codes[0]}
  - spacer: centre
    length: 60
  - shim: one
    length: 0.1
    count: 2
  - bearing: right
    ${codes[1]}
  - end-cap: right
    length: 14
${more}`;

/** The order for some hubs beside one workshop file. */
function orderOf(
  texts: readonly string[] | Readonly<Record<string, string>>,
  options: { variant?: string; sets?: number; workshop?: string; nearer?: string } = {},
) {
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  if (options.workshop !== undefined) workspace.setFile('/w/house.workshop.yaml', options.workshop);
  if (options.nearer !== undefined) workspace.setFile('/w/bench/bench.workshop.yaml', options.nearer);
  const named = Array.isArray(texts)
    ? texts.map((text, i) => [`${i}.hub.yaml`, text])
    : Object.entries(texts);
  const hubs = named.map(([path = '', text = '']) => {
    workspace.setFile(`/w/${path}`, text);
    const snapshot = workspace.snapshot(`/w/${path}`);
    if (!snapshot) throw new Error('no snapshot');
    return { path, snapshot };
  });
  return orderList(hubs, { variant: options.variant ?? null, sets: options.sets ?? 1 });
}

const shelf =
  'bearings: { DB-17: { code: 6803-2RS } }\nstock: { bearings: { DB-17: 2, 6803-2RS: 1, 6803-ZZ: 5 }, shims: [0.1] }\n';

test('one bearing under two spellings and a house code is one line, the shelf taken off once', () => {
  const order = orderOf(
    [
      hub('Dunlin', ['code: 6803-2RS', 'code: 61803-2RS1']),
      hub('Knot', ['house-code: DB-17', 'code: 6803-2RS']),
    ],
    { workshop: shelf },
  );
  const [bearing, ...others] = order.lines.filter(({ kind }) => kind === 'bearing');
  expect(others).toEqual([]);
  expect(bearing).toMatchObject({ size: '17 × 26 × 5', count: 4, stock: 3, order: 1 });
  expect(bearing?.sameSize).toEqual([expect.objectContaining({ count: 5 })]);
  expect(bearing?.uses.map(({ hub: name, count }) => [name, count])).toEqual([
    ['Dunlin', 2],
    ['Knot', 2],
  ]);
});

test('what the suffixes change is a line of its own of the same size', () => {
  const order = orderOf([hub('Dunlin', ['code: 6803-2RS', 'code: 6803-2RS C3'])]);
  const lines = order.lines.filter(({ kind }) => kind === 'bearing');
  expect(lines.map(({ count, matters, stock }) => [count, matters, stock])).toEqual([
    [1, expect.stringContaining('clearance N'), null],
    [1, expect.stringContaining('clearance C3'), null],
  ]);
});

test('sets multiply, shims count as often as they lie there', () => {
  const order = orderOf([hub('Dunlin', ['code: 6803-2RS', 'code: 6803-2RS'])], { sets: 10, workshop: shelf });
  expect(order.lines.map(({ kind, count, order: left }) => [kind, count, left])).toEqual([
    ['bearing', 20, 17],
    ['shim', 20, 20],
  ]);
  expect(order.lines[1]?.matters).toContain('on the shelf');
});

test('what cannot be read is named and never lost, a variant that is not there is said', () => {
  const order = orderOf([hub('Dunlin', ['code: 6803-2RS', 'code: QX9'])], { variant: 'wide' });
  expect(order.unknown).toEqual([{ file: '0.hub.yaml', part: 'bearing.right', why: expect.any(String) }]);
  expect(order.withoutVariant).toEqual(['0.hub.yaml']);
  expect(orderText(order)).toContain('not in the list: bearing.right of 0.hub.yaml');
});

test('a variant is counted with its own parts', () => {
  const text = hub(
    'Dunlin',
    ['code: 6803-2RS', 'code: 6803-2RS'],
    'variants:\n  sealed-less:\n    change:\n      bearing.left: { code: 6803 }\n',
  );
  const codes = orderOf([text], { variant: 'sealed-less' }).lines.map(({ code, count }) => [code, count]);
  expect(codes).toContainEqual(['61803', 1]);
});

test('commas, quotes and formulas stay values in a table for a machine', () => {
  const order = orderOf([hub('"=A1, wide"', ['code: 6803-2RS', 'code: 6803-2RS'])]);
  const rows = orderCsv(order).split('\r\n');
  expect(rows[1]).toContain('"\'=A1, wide 2"');
  expect(orderCsv(orderOf([hub('Say "x"', ['code: 6803', 'code: 6803'])]))).toContain('"Say ""x"" 2"');
  expect(orderMarkdown(orderOf([hub('a|b', ['code: 6803', 'code: 6803'])]))).toContain('a\\|b');
});

const plover = hub('Plover', ['code: 6803-2RS', 'code: 6803-2RS']);
const bearingsOf = (order: ReturnType<typeof orderOf>) =>
  order.lines.filter(({ kind }) => kind === 'bearing');

test('a shelf that hubs of two folders see is taken off once', () => {
  const order = orderOf(
    { 'a.hub.yaml': plover, 'bench/b.hub.yaml': plover },
    { workshop: 'stock: { bearings: { 6803-2RS: 2 } }\n', nearer: 'measuring: 0.02\n' },
  );
  // Four are needed and two are there, whoever looks at them.
  expect(bearingsOf(order)).toMatchObject([{ count: 4, stock: 2, order: 2 }]);
});

test('a nearer shelf hides the one above for its own hubs, and adds to it beside hubs of the other', () => {
  const options = {
    workshop: 'stock: { bearings: { 6803-2RS: 1 } }\n',
    nearer: 'stock: { bearings: { 6803-2RS: 2 } }\n',
  };
  expect(bearingsOf(orderOf({ 'bench/b.hub.yaml': plover }, options))).toMatchObject([{ stock: 2 }]);
  const both = orderOf({ 'a.hub.yaml': plover, 'bench/b.hub.yaml': plover }, options);
  expect(bearingsOf(both)).toMatchObject([{ count: 4, stock: 3, order: 1 }]);
});

test('a size that only the house has a name for is taken off the shelf by that name', () => {
  const text = hub('Knot', ['house-code: DB-9', 'house-code: DB-9']);
  const workshop = 'bearings: { DB-9: { size: 15x27x7 } }\nstock: { bearings: { DB-9: 5 } }\n';
  expect(bearingsOf(orderOf([text], { workshop }))).toMatchObject([
    { code: 'DB-9', size: '15 × 27 × 7', count: 2, stock: 5, order: 0 },
  ]);
});

/* TN9 is a moulded polyamide cage, P5 a tolerance class: makers' suffix tables, see the suffix tests. */
test('a cage and a tolerance class are kept apart, and so is their stock', () => {
  const order = orderOf([hub('Knot', ['code: 6803-2RS TN9', 'code: 6803-2RS P5'])], {
    workshop: 'stock: { bearings: { 6803-2RS: 9 } }\n',
  });
  expect(
    bearingsOf(order).map(({ count, stock, order: left, sameSize }) => [count, stock, left, sameSize]),
  ).toEqual([
    [1, 0, 1, [{ code: '6803-2RS', count: 9 }]],
    [1, 0, 1, [{ code: '6803-2RS', count: 9 }]],
  ]);
  const matters = bearingsOf(order).map((line) => line.matters);
  expect(matters).toEqual(
    expect.arrayContaining([expect.stringContaining('polyamide cage'), expect.stringContaining('class 5')]),
  );
});

test('shims as thick as each other with other diameters are two things', () => {
  const shim = (around: string) => plover.replace('length: 0.1', `length: 0.1\n    ${around}`);
  const order = orderOf([
    shim('inside: 15.1\n    outside: 19'),
    shim('inside: 17.1\n    outside: 21'),
    shim('inside: 17.1\n    outside: 21'),
  ]);
  const shims = order.lines.filter(({ kind }) => kind === 'shim');
  expect(shims.map(({ size, count }) => [size, count])).toEqual([
    ['0.1, 15.1 × 19', 2],
    ['0.1, 17.1 × 21', 4],
  ]);
});

/* 3/16 in is 4.7625 mm (25.4 mm to the inch). */
test('loose balls of cones are counted by their diameter', () => {
  const text = plover
    .replace('- bearing: left\n    code: 6803-2RS', '- cone: left\n    length: 11\n    balls: 10 × 3/16 in')
    .replace('- bearing: right\n    code: 6803-2RS', '- cone: right\n    length: 11\n    balls: 9 × 1/4 in');
  const balls = orderOf([text], { sets: 2 }).lines.filter(({ kind }) => kind === 'ball');
  expect(balls.map(({ size, count }) => [size, count])).toEqual([
    ['4.7625', 20],
    ['6.35', 18],
  ]);
});

test.each([
  ['hub: [broken\n', 'could not be read whole'],
  [plover.replace('- bearing: right', '- baering: right'), 'could not be read whole'],
  ['', 'no hub could be read'],
  ['hub: Bare\nposition: front\nwidth: 100\n', 'no stack is written'],
])('a hub that is not read whole is named in every print: %j', (text, why) => {
  const order = orderOf([plover, text]);
  expect(order.unread).toEqual([{ path: '1.hub.yaml', message: expect.stringContaining(why) }]);
  expect(bearingsOf(order)[0]?.count).toBeGreaterThanOrEqual(2);
  for (const print of [orderText(order), orderMarkdown(order)])
    expect(print).toContain('not all read: 1.hub.yaml');
});
