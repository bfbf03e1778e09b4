import { expect, test } from 'vitest';
import { randomFrom, randomFromSeed, standardNormals } from '../../../server/engine/base/random.ts';

test('the generator gives the numbers of its authors’ own program', () => {
  // First ten outputs of the authors' C program from the state 1 2 3 4, as the Rust crate rand prints them.
  const next = randomFrom([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, next)).toEqual([
    641, 1573767, 3222811527, 3517856514, 836907274, 4247214768, 3867114732, 1355841295, 495546011, 621204420,
  ]);
});

test('the generator is still in step after a hundred thousand numbers', () => {
  // The test suite of PHP's random extension: output 102 401 from the same state, bytes fa3c872c, low byte first.
  const next = randomFrom([1, 2, 3, 4]);
  for (let i = 0; i < 102_400; i++) next();
  expect(next()).toBe(0x2c873cfa);
});

test('the same seed gives the same numbers, another seed gives others', () => {
  const draw = (seed: number) => Array.from({ length: 20 }, randomFromSeed(seed));
  expect(draw(7)).toEqual(draw(7));
  expect(new Set([...draw(7), ...draw(8), ...draw(0), ...draw(-1)]).size).toBe(80);
});

test('standard normals have the moments and the tails of the normal law', () => {
  const count = 200_000;
  const values = standardNormals(count, 3);
  let [sum, squares, cubes, fourths] = [0, 0, 0, 0];
  for (const z of values) {
    sum += z;
    squares += z * z;
    cubes += z ** 3;
    fourths += z ** 4;
  }
  // Standard errors of the sample moments of a normal law: 1, √2, √15, √96 over √n; four of them are allowed.
  const error = 4 / Math.sqrt(count);
  expect(Math.abs(sum / count)).toBeLessThan(error);
  expect(Math.abs(squares / count - 1)).toBeLessThan(error * Math.SQRT2);
  expect(Math.abs(cubes / count)).toBeLessThan(error * Math.sqrt(15));
  expect(Math.abs(fourths / count - 3)).toBeLessThan(error * Math.sqrt(96));
  // Standard normal table: 68.27 %, 95.45 % and 99.73 % within one, two and three standard deviations.
  for (const [z, within] of [
    [1, 0.6827],
    [2, 0.9545],
    [3, 0.9973],
  ] as const) {
    const share = values.filter((value) => Math.abs(value) <= z).length / count;
    expect(Math.abs(share - within)).toBeLessThan(4 * Math.sqrt((within * (1 - within)) / count) + 5e-5);
  }
});

test('columns of different seeds do not follow each other', () => {
  const count = 50_000;
  const [a, b] = [standardNormals(count, 1), standardNormals(count, 2)];
  let product = 0;
  for (let i = 0; i < count; i++) product += (a[i] ?? 0) * (b[i] ?? 0);
  expect(Math.abs(product / count)).toBeLessThan(4 / Math.sqrt(count));
});

test('as many normals come as are asked for, odd counts too', () => {
  expect(standardNormals(0, 1)).toHaveLength(0);
  expect(standardNormals(7, 1)).toHaveLength(7);
  expect([...standardNormals(7, 1)]).toEqual([...standardNormals(8, 1).slice(0, 7)]);
});
