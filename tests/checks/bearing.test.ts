import { expect, test } from 'vitest';
import { mending } from './apply.ts';
import { afterFix, codesIn, covered, finding, look, pageHub } from './look.ts';

const left = 'code: 6803-2RS';
const right = 'code: 6803-2RS\n    seat: shell.right';
const wet = 'duty: { water: rain }\n';
const workshop = {
  'saltmarsh.workshop.yaml':
    'workshop: Saltmarsh\nbearings:\n  DB-17: { code: 6803-2RS }\n  DB-99: { code: 6893-2RS }\n',
};

test('the sound hub is clean', () => {
  expect(codesIn(pageHub())).toEqual([]);
});

test('among the codes that may be meant, the one that fits seat and axle comes first', () => {
  // 6893 is one digit from 6803 and 6903; common practice: 6803 is 17 × 26 × 5, 6903 is 17 × 30 × 7 (ISO 15).
  const narrow = finding(pageHub([left, 'code: 6893-2RS']), 'bearing-not-decoded');
  expect(mending(narrow)[0]?.title).toMatch(
    /^Change to 6803-2RS \(17 × 26 × 5\), which fits seat shell\.left/,
  );
  const wide = pageHub(
    [left, 'code: 6893-2RS'],
    ['left: { bore: 26 N7, depth: 5.1', 'left: { bore: 30 N7, depth: 7.1'],
  );
  expect(mending(finding(wide, 'bearing-not-decoded'))[0]?.title).toMatch(
    /^Change to 6903-2RS \(17 × 30 × 7\)/,
  );
});

test('without a seat or an axle no code is said to fit', () => {
  const text = pageHub(
    [left, 'code: 6893-2RS'],
    ['    seat: shell.left\n', ''],
    ['axle: { diameter: 17 h6,', 'axle: {'],
  );
  const titles = mending(finding(text, 'bearing-not-decoded')).map(({ title }) => title);
  expect(titles.length).toBeGreaterThan(2);
  expect(titles.filter((title) => title.includes('which fits'))).toEqual([]);
});

test('a quoted code stays quoted when it is changed', () => {
  const mended = afterFix(pageHub([left, 'code: "6893-2RS"']), 'bearing-not-decoded');
  expect(mended.text).toContain('code: "6803-2RS"');
  expect(mended.codes).toEqual([]);
});

test('a code that names no bearing beside a size is told and no more: the size is taken', () => {
  const text = pageHub([left, 'code: QX-4\n    size: 17x26x5']);
  expect(finding(text, 'bearing-not-decoded').severity).toBe('information');
  expect(codesIn(text)).toEqual(['bearing-not-decoded']);
  // Digits that name no bearing are a slip all the same.
  const digits = pageHub([left, 'code: 6893-2RS\n    size: 17x26x5']);
  expect(finding(digits, 'bearing-not-decoded').severity).toBe('warning');
});

test('a size written as a code becomes a size', () => {
  const mended = afterFix(pageHub([left, 'code: 17x26x5']), 'bearing-not-decoded');
  expect(mended.text).toContain('    size: 17x26x5\n');
  expect(mended.codes).toEqual([]);
});

test('for a code of which nothing can be read, a whole sealed one is offered', () => {
  expect(afterFix(pageHub([left, 'code: 2RS']), 'bearing-not-decoded').text).toContain('code: 6803-2RS\n');
});

test('a code of the house stands for its bearing, written as code or as house-code', () => {
  expect(codesIn(pageHub([left, 'code: DB-17']), workshop)).toEqual([]);
  expect(codesIn(pageHub([left, 'house-code: DB-17']), workshop)).toEqual([]);
});

test('a code of the house that stands for no bearing is told where it is used', () => {
  const text = pageHub([left, 'house-code: DB-99']);
  const found = finding(text, 'bearing-not-decoded', workshop);
  expect(covered(text, found)).toBe('DB-99');
  expect(found.message).toContain('6893-2RS');
});

test('a house code nearly right is offered', () => {
  const found = finding(pageHub([left, 'code: DB-71']), 'bearing-not-decoded', workshop);
  expect(mending(found).map(({ title }) => title)).toContain('Change to DB-17, a code of the house');
});

test('a bearing whose code cannot be read yet is not said to have none', () => {
  expect(codesIn(pageHub([left, 'code:']))).not.toContain('bearing-unsized');
});

test('what rests on a doubtful size waits until the doubt is settled', () => {
  const doubtful = pageHub([left, `${left}\n    size: 17x30x7`]);
  expect(codesIn(doubtful)).toEqual(['code-and-size-disagree']);
  const allow = (code: string): string => `    # allow ${code} because it was measured twice\n`;
  const once = pageHub([left, `${left}\n${allow('code-and-size-disagree')}    size: 17x30x7`]);
  expect(codesIn(once)).toEqual(['sizes-differ']);
  // 30 mm does not go into a bore of 26, and 2 mm more of ring make the stack 2 mm longer: both were waiting.
  const twice = pageHub([
    left,
    `${left}\n${allow('code-and-size-disagree')}${allow('sizes-differ')}    size: 17x30x7`,
  ]);
  expect(codesIn(twice)).toEqual(expect.arrayContaining(['seat-bore-off', 'width-off']));
});

test('the code changes to that of the size, suffixes kept, when the size is what fits', () => {
  const text = pageHub(
    [left, 'code: 6803-2RS C3\n    size: 17 × 30 × 7'],
    ['left: { bore: 26 N7, depth: 5.1', 'left: { bore: 30 N7, depth: 7.1'],
  );
  const found = finding(text, 'code-and-size-disagree');
  expect(mending(found)[0]).toMatchObject({ preferred: true });
  expect(afterFix(text, 'code-and-size-disagree').text).toContain('code: 6903-2RS C3\n');
  // The other way round keeps the signs the size was written with.
  expect(afterFix(text, 'code-and-size-disagree', 1).text).toContain('size: 17 × 26 × 5\n');
});

test('a width on which makers differ is no disagreement', () => {
  // The closed 688 is 4 mm wide with some makers and 5 with others, in their catalogues.
  const seated = (size: string): string => pageHub([left, `code: 688-2RS\n    size: ${size}`]);
  for (const width of ['4', '5'])
    expect(codesIn(seated(`8x16x${width}`))).not.toContain('code-and-size-disagree');
  expect(codesIn(seated('8x16x6'))).toContain('code-and-size-disagree');
});

test('shields and missing cages are spoken of only where water is written', () => {
  expect(codesIn(pageHub([left, 'code: 6803-2Z']))).toEqual([]);
  expect(codesIn(`${pageHub([left, 'code: 6803-2Z'])}duty: { water: dry }\n`)).toEqual([]);
  expect(codesIn(`${pageHub([left, 'code: 6803-2Z'])}${wet}`)).toEqual(['shield-in-water']);
});

test('a V in water is one finding: the missing cage', () => {
  const text = `${pageHub([left, 'code: 6803V'])}${wet}`;
  expect(codesIn(text)).toEqual(['full-complement-in-water']);
  expect(afterFix(text, 'full-complement-in-water').text).toContain('code: 6803-2RS\n');
});

test('an ambiguous suffix is marked alone', () => {
  const text = pageHub([left, 'code: 6803V']);
  expect(covered(text, finding(text, 'suffix-ambiguous'))).toBe('V');
});

test('two sizes in two seats that are drawn for two are meant', () => {
  const text = pageHub(
    [right, 'code: 63803-2RS\n    seat: shell.right'],
    ['right: { bore: 26 N7, depth: 5.1', 'right: { bore: 26 N7, depth: 7.1'],
  );
  expect(codesIn(text)).not.toContain('sizes-differ');
});

test('seats of two bores are not compared', () => {
  const text = pageHub(
    [right, 'code: 6903-2RS\n    seat: shell.right'],
    ['right: { bore: 26 N7, depth: 5.1', 'right: { bore: 30 N7, depth: 7.1'],
  );
  expect(codesIn(text)).not.toContain('sizes-differ');
});

test('a bearing that a variant brings is mended in the variant', () => {
  const text = `${pageHub()}variants:\n  wet:\n    change:\n      bearing.left: { code: 6893-2RS }\n`;
  const found = finding(text, 'bearing-not-decoded');
  expect(text.slice(0, found.span.start)).toContain('variants:');
  expect(found.message).toContain('(in wet)');
  const { text: mended } = afterFix(text, 'bearing-not-decoded');
  expect(mended).toContain('bearing.left: { code: 6803-2RS }');
});

test('one fault in every variant is one finding without their names', () => {
  const text = `${pageHub([left, 'code: 6893-2RS'])}variants:\n  narrow:\n    change:\n      end-cap.left: { bore: 9.1 }\n`;
  const found = finding(text, 'bearing-not-decoded');
  expect(found.message).not.toContain('(in');
  expect(found.variants).toEqual([null, 'narrow']);
  expect(look(text).findings.broken).toEqual([]);
});

test('without seats, codes left and right that are one slip apart are told', () => {
  const four = (code: string): string =>
    pageHub([right, `code: ${code}\n    seat: shell.right`], ['    inside: 17.1\n', ''])
      .replace(/shell:\n(?: .*\n)+/, '')
      .replaceAll(/ {4}seat: .*\n/g, '');
  expect(codesIn(four('6903-2RS'))).toContain('sizes-differ');
  expect(afterFix(four('6903-2RS'), 'sizes-differ').codes).toEqual([]);
  // Nobody types 608 for 6803.
  expect(codesIn(four('608-2RS'))).not.toContain('sizes-differ');
});

test('a code one slip from the one that fits is the only finding', () => {
  // ISO 15: 6903 is 17 × 30 × 7, 6803 is 17 × 26 × 5; seat and axle are made for 26 and 17.
  expect(codesIn(pageHub([left, 'code: 6903-2RS']))).toEqual(['code-misread']);
  expect(codesIn(pageHub([left, 'code: 6903-2RS'], [left, 'code: 6903-2RS']))).toEqual([
    'code-misread',
    'code-misread',
  ]);
  const long = afterFix(pageHub([left, 'code: 61903-2RS C3']), 'code-misread');
  expect(long.text).toContain('code: 61803-2RS C3\n');
  expect(long.codes).toEqual([]);
});

test('of two bearings in seats that are alike, the one that does not fit is told, and nothing that rests on it', () => {
  // ISO 15: 698 is 8 × 19 × 6.
  const text = pageHub([left, 'code: 698-2RS']);
  expect(codesIn(text)).toEqual(['sizes-differ']);
  expect(afterFix(text, 'sizes-differ').codes).toEqual([]);
});

test('a shell drawn for other bearings than both codes is the business of seats and axle', () => {
  const text = pageHub([left, 'code: 6004-2RS'], [left, 'code: 6004-2RS']);
  expect(codesIn(text)).toEqual(expect.arrayContaining(['seat-bore-off', 'journal-off']));
  expect(codesIn(text)).not.toContain('code-misread');
});
