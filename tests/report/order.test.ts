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
  texts: readonly string[],
  options: { variant?: string; sets?: number; workshop?: string } = {},
) {
  const workspace = createWorkspace();
  workspace.setRoots(['/w']);
  if (options.workshop !== undefined) workspace.setFile('/w/house.workshop.yaml', options.workshop);
  const hubs = texts.map((text, i) => {
    const path = `${i}.hub.yaml`;
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
