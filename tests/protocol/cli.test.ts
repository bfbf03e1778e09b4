import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, projectFolder, withFiles } from '../support/command-line.ts';
import {
  bearingShape,
  checkShape,
  fitShape,
  identifyShape,
  notDecodedShape,
  stackShape,
} from '../support/json-shapes.ts';

const samples = 'client/samples';

test('check ends with 1 at or above --fail-on, with 0 below it', () => {
  const exit = (...given: readonly string[]) => hubwright(['check', ...given]).exit;
  expect(exit(`${samples}/dunlin-front.hub.yaml`)).toBe(0);
  expect(exit(`${samples}/faulty-front.hub.yaml`)).toBe(1);
  expect(exit(`${samples}/faulty-front.hub.yaml`, '--fail-on', 'never')).toBe(0);
  expect(exit(`${samples}/faulty-front.hub.yaml`, '--fail-on=hint')).toBe(1);
});

test('a warning alone ends with 1 only when asked to', async () => {
  const text = readFileSync(join(projectFolder, samples, 'dunlin-front.hub.yaml'), 'utf8');
  // A spacer wider than the inner ring reaches the seal: common practice, a warning.
  await withFiles({ 'dunlin.hub.yaml': text.replace('outside: 19.5', 'outside: 22.4') }, (folder) => {
    const exit = (grade: string) => hubwright(['check', '.', '--fail-on', grade], folder).exit;
    expect([exit('error'), exit('warning'), exit('information')]).toEqual([0, 1, 1]);
  });
});

test('check prints places that can be opened, messages and the fix, and no promise', () => {
  const { out, err } = hubwright(['check', samples]);
  expect(err).toBe('');
  expect(out).toMatch(/^client\/samples\/faulty-front\.hub\.yaml:\d+:\d+ {2}error {2}end-caps-swapped$/m);
  expect(out).toMatch(/^ {4}fix: \S/m);
  expect(out).not.toMatch(/\bsafe\b|fit to ride/);
  expect(hubwright(['check', `${samples}/dunlin-front.hub.yaml`]).out).toContain(
    'nothing found. That is not a verdict',
  );
});

test('check --json and --format json print the documented shape', () => {
  const { json, out } = hubwrightJson(['check', samples]);
  expect(checkShape.parse(json).files).toHaveLength(19);
  expect(hubwright(['check', samples, '--format', 'json']).out).toBe(out);
});

test('an allowed finding is kept apart with its reason', async () => {
  const text = readFileSync(join(projectFolder, samples, 'dunlin-front.hub.yaml'), 'utf8');
  const allowed = text.replace(
    '    outside: 19.5',
    '    # allow spacer-rubs because a felt washer sits here\n    outside: 22.4',
  );
  await withFiles({ 'dunlin.hub.yaml': allowed }, (folder) => {
    const { exit, json } = hubwrightJson(['check', '.', '--fail-on', 'hint'], folder);
    expect(exit).toBe(0);
    const [file] = checkShape.parse(json).files;
    expect(file?.findings).toEqual([]);
    expect(file?.allowed).toMatchObject([{ code: 'spacer-rubs', reason: 'a felt washer sits here' }]);
    expect(hubwright(['check', '.'], folder).out).toContain('because a felt washer sits here');
  });
});

test('stack gives the documented shape for every sample, as drawn and as measured', () => {
  for (const name of [
    'curlew-family',
    'dunlin-front',
    'faulty-front',
    'knot-front',
    'plover-rear',
    'turnstone-worn',
  ]) {
    const { json } = hubwrightJson(['stack', `${samples}/${name}.hub.yaml`]);
    expect(stackShape.parse(json).variants[0]?.name).toBeNull();
  }
});

test('the sum, mean, corners and shares of a stack are those of its dimensions', () => {
  const { json } = hubwrightJson(['stack', `${samples}/dunlin-front.hub.yaml`]);
  const width = stackShape.parse(json).variants[0]?.width;
  // Worked by hand: two caps 14.03 ±0.02, a spacer 62.06 ±0.01, two rings 5 0/−0.12 (ISO 492:2002, class
  // Normal, ring width, bore over 10 up to 18 mm, as in NSK CAT. No. E1102e Table 8.2).
  const halves = [0.02, 0.06, 0.01, 0.06, 0.02];
  const squares = halves.reduce((sum, half) => sum + half * half, 0);
  expect(width?.nominal).toBeCloseTo(2 * 14.03 + 62.06 + 2 * 5, 6);
  expect(width?.mean).toBeCloseTo(100.12 - 2 * 0.06, 6);
  expect(width?.worst?.[0]).toBeCloseTo(100 - 0.17, 6);
  expect(width?.worst?.[1]).toBeCloseTo(100 + 0.17, 6);
  expect(width?.rss?.[0]).toBeCloseTo(100 - Math.sqrt(squares), 6);
  expect(width?.rss?.[1]).toBeCloseTo(100 + Math.sqrt(squares), 6);
  expect(width?.limits).toEqual([99.8, 100.2]);
  expect(width?.contributions.map(({ address }) => address)).toEqual([
    'end-cap.left',
    'bearing.left',
    'spacer.centre',
    'bearing.right',
    'end-cap.right',
  ]);
  width?.contributions.forEach(({ share }, at) => {
    expect(share).toBeCloseTo((halves[at] ?? 0) ** 2 / squares, 5);
  });
});

test('the running gap of a freehub is worked out from stop to stop', () => {
  const { json } = hubwrightJson(['stack', `${samples}/plover-rear.hub.yaml`]);
  const gap = stackShape.parse(json).variants[0]?.gaps.find(({ role }) => role === 'running');
  // By hand: ring 7, spacer 1.2, ring 7, less the depths 7.1 and 7.3; each ring 0.06 under on average (ISO 492).
  expect(gap?.nominal).toBeCloseTo(7 + 1.2 + 7 - 7.1 - 7.3, 6);
  expect(gap?.mean).toBeCloseTo(0.8 - 0.12, 6);
  expect(gap?.wanted?.[0]).toBeCloseTo(0.5, 9);
  expect(gap?.wanted?.[1]).toBeCloseTo(0.9, 9);
});

test('measured values give a second result beside the drawn one', () => {
  const { json } = hubwrightJson(['stack', `${samples}/turnstone-worn.hub.yaml`]);
  const { width, pairs } = stackShape.parse(json).variants[0] ?? {};
  expect(width?.mean).toBeCloseTo(100, 6);
  // The readings of the file: 14.02 + 4.96 + 62.06 + 4.97 + 14.03.
  expect(width?.measured?.mean).toBeCloseTo(100.04, 6);
  expect(pairs?.[0]?.measured).toMatchObject({ inner: 62.06, outer: 62.05, delta: 0.01 });
});

test('bearing decodes one code of every series, as published', () => {
  // NSK, Rolling Bearings, CAT. No. E1102e, and the ISO 15 plan: bore, outside, width.
  const published: readonly (readonly [string, number, number, number])[] = [
    ['6802', 15, 24, 5],
    ['6902-2RS', 15, 28, 7],
    ['16002', 15, 32, 8],
    ['6001', 12, 28, 8],
    ['6200', 10, 30, 9],
    ['6300', 10, 35, 11],
    ['62200-2RS', 10, 30, 14],
    ['62300-2RS', 10, 35, 17],
    ['63002-2RS', 15, 32, 13],
    ['63800', 10, 19, 7],
    ['608', 8, 22, 7],
    ['628', 8, 24, 8],
    ['629', 9, 26, 8],
    ['638', 8, 28, 9],
    ['MR105ZZ', 5, 10, 4],
  ];
  for (const [code, bore, outside, width] of published) {
    const { exit, json } = hubwrightJson(['bearing', code]);
    expect({ exit, ...bearingShape.parse(json) }).toMatchObject({ exit: 0, code, bore, outside, width });
  }
});

test('a code that is no bearing ends with 1 and with codes near it', () => {
  const { exit, json } = hubwrightJson(['bearing', '6893-2RS']);
  expect(exit).toBe(1);
  expect(notDecodedShape.parse(json).didYouMean).toContain('6803-2RS');
  const text = hubwright(['bearing', '6893-2RS']);
  expect([text.exit, text.out]).toEqual([1, '']);
  expect(text.err).toContain('6803-2RS');
});

test('identify reads three numbers or one size, and names the traps near 15 × 26 × 7', () => {
  const spread = hubwrightJson(['identify', '15.02', '25.9', '6.95']);
  expect(spread.exit).toBe(0);
  expect(identifyShape.parse(spread.json).candidates[0]).toMatchObject({ bore: 15, outside: 26, width: 7 });
  const { candidates, nearMisses } = identifyShape.parse(hubwrightJson(['identify', '15x26x7']).json);
  expect(candidates[0]).toMatchObject({ bore: 15, outside: 26, width: 7, within: true });
  // 15 × 24 × 5 and 15 × 28 × 7 are rows of the ISO 15 plan (series 18 and 19).
  const sizes = nearMisses.map(({ bore, outside, width }) => [bore, outside, width]);
  expect(sizes).toContainEqual([15, 24, 5]);
  expect(sizes).toContainEqual([15, 28, 7]);
  expect(nearMisses.every(({ trap }) => trap !== null && trap !== '')).toBe(true);
  expect(identifyShape.parse(hubwrightJson(['identify', '15.02 25.9 6.95']).json)).toEqual(spread.json);
  expect(hubwright(['identify', '3', '200', '100']).exit).toBe(1);
});

test('a finer uncertainty rules out what callipers would let pass', () => {
  const within = (uncertainty: string) =>
    identifyShape.parse(hubwrightJson(['identify', '15.04', '28', '7', '--uncertainty', uncertainty]).json)
      .candidates.length;
  expect(within('0.05')).toBeGreaterThan(0);
  expect(within('0.01')).toBe(0);
});

test('fit gives the interference that makers print for N7 and P7', () => {
  // NSK, Rolling Bearings, Table 15.3, housing fits, outside over 18 up to 30 mm, bearing class Normal:
  // N7 from 2 µm of clearance to 28 µm of interference, P7 from 5 to 35 µm of interference.
  const limits = (fit: string) => fitShape.parse(hubwrightJson(['fit', fit, '6803-2RS']).json).clearance;
  expect(limits('26 N7').minUm).toBeCloseTo(-28, 6);
  expect(limits('26 N7').maxUm).toBeCloseTo(2, 6);
  expect(limits('P7').minUm).toBeCloseTo(-35, 6);
  expect(limits('P7').maxUm).toBeCloseTo(-5, 6);
});

test('fit says when seat and ring are two sizes, and what it cannot read', () => {
  const other = hubwrightJson(['fit', '28 N7', '6803-2RS']);
  expect([other.exit, fitShape.parse(other.json).sameSize]).toEqual([1, false]);
  const unread = hubwrightJson(['fit', 'loose', '6803-2RS']);
  expect(unread.exit).toBe(1);
  expect(unread.json).toMatchObject({ code: '6803-2RS', error: expect.stringContaining('loose') });
  expect(hubwrightJson(['fit', '26 N7', '6893']).exit).toBe(1);
});

test('draw writes an SVG file, of a variant too', async () => {
  await withFiles({}, (folder) => {
    const file = join(projectFolder, samples, 'curlew-family.hub.yaml');
    expect(hubwright(['draw', file, '-o', 'curlew.svg'], folder)).toMatchObject({ exit: 0, err: '' });
    expect(readFileSync(join(folder, 'curlew.svg'), 'utf8')).toMatch(
      /^(<\?xml[^>]*>\s*)?<svg[\s\S]*<\/svg>\s*$/,
    );
    expect(hubwright(['draw', file, '-o', 'wide.svg', '--variant', 'wide-110'], folder).exit).toBe(0);
    expect(readFileSync(join(folder, 'wide.svg'), 'utf8')).toContain('110');
    const unknown = hubwright(['draw', file, '-o', 'x.svg', '--variant', 'wide-111'], folder);
    expect([unknown.exit, unknown.out]).toEqual([2, '']);
    expect(unknown.err).toContain('thru-15, quick-release, wide-110');
    expect(hubwright(['draw', file, '-o', 'x.yaml'], folder).exit).toBe(2);
  });
});

test('explain prints the page of a code, and the list without one', () => {
  expect(hubwright(['explain', 'width-off']).out).toMatch(/^# width-off\n/);
  const list = hubwrightJson(['explain']);
  const { codes } = list.json as { codes: readonly { code: string }[] };
  // At least thirty checks are asked for.
  expect(codes.length).toBeGreaterThanOrEqual(30);
  for (const { code } of codes.slice(0, 5))
    expect(hubwrightJson(['explain', code]).json).toMatchObject({ code });
  const near = hubwrightJson(['explain', 'width-of']);
  expect(near).toMatchObject({ exit: 2, json: { didYouMean: ['width-off'] } });
});
