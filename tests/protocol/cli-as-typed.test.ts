import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, withFiles } from '../support/command-line.ts';
import { fitShape, notDecodedShape } from '../support/json-shapes.ts';

/** Clearances of a fit, µm. */
const clearance = (...words: readonly string[]) =>
  fitShape.parse(hubwrightJson(['fit', ...words]).json).clearance;

test('a fit class that lost its quotes still belongs to its diameter', () => {
  // NSK, Rolling Bearings, Table 15.3, housing fits: N7 from 2 µm of clearance to 28 µm of interference.
  expect(clearance('26', 'N7', '6803-2RS').minUm).toBeCloseTo(-28, 6);
  expect(clearance('26', 'N7', '6803', '2RS', 'C3').maxUm).toBeCloseTo(2, 6);
  // Without a code there is nothing to hold it against.
  expect(hubwright(['fit', '26', 'N7']).exit).toBe(2);
  // R8 is the bearing of 1/2 in bore (12.7 mm) as well as a class of ISO 286.
  expect(hubwrightJson(['fit', '12.7', 'R8'])).toMatchObject({ exit: 0, json: { code: 'R8', on: 'bore' } });
});

test('a fit is held against a bearing of a size where the code is not known', () => {
  expect(clearance('26 N7', '17x26x5')).toEqual(clearance('26 N7', '6803-2RS'));
});

test('a fit class in the wrong case is asked after, and only there', () => {
  expect(hubwright(['fit', '26 n7', '6803']).out).toContain('perhaps meant     a seat: 26 N7');
  expect(hubwright(['fit', '17 H6', '6803']).out).toContain('perhaps meant     an axle: 17 h6');
  expect(hubwright(['fit', '28 N7', '6803']).out).not.toContain('perhaps meant');
});

test('a size in place of a code is told apart from a code, and its codes are named', () => {
  // ISO 15: dimension series 19, bore code 02 is 15 × 28 × 7.
  const { exit, json } = hubwrightJson(['bearing', '15', 'x', '28', 'x', '7']);
  expect(exit).toBe(1);
  const answer = notDecodedShape.parse(json);
  expect(answer.didYouMean).toContain('6902');
  expect(answer.error).toContain('hubwright identify 15x28x7');
});

test('a message does not name the code twice', () => {
  expect(hubwright(['bearing', '6893']).err).toMatch(/^6893 reads as/);
});

test('readings in another order are told, not answered', () => {
  const { exit, err } = hubwright(['identify', '26', '17', '5']);
  expect(exit).toBe(2);
  expect(err).toContain('bore, outside, width in this order');
});

test('explain takes a code in capitals, and draw says in words why it cannot write', async () => {
  expect(hubwright(['explain', 'WIDTH-OFF']).out).toMatch(/^# width-off\n/);
  const text = 'hub: Knot\nposition: front\nwidth: 100\nstack:\n  - end-cap: left\n    length: 100\n';
  await withFiles({ 'knot.hub.yaml': text }, (folder) => {
    const { exit, err } = hubwright(['draw', 'knot.hub.yaml', '-o', 'no/such/knot.svg'], folder);
    expect(exit).toBe(2);
    expect(err).toContain('no/such/knot.svg cannot be written: its folder is not there');
  });
});
