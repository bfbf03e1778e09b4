import { expect, test } from 'vitest';
import {
  rotatingOuterRingHousings,
  stationaryInnerRingAxles,
  usualness,
} from '../../../server/engine/fits/recommended-fits.ts';
import { parseFitClass } from '../../../server/engine/fits/tolerance-zone.ts';

const verdict = (size: number, text: string) => {
  const fit = parseFitClass(text);
  return fit ? usualness(size, fit)?.verdict : undefined;
};

test('the usual classes of a wheel are those of the bearing makers, each with two sources or more', () => {
  // NSK E1102e tables 9.2 and 9.4, NTN 2203/E table 7.2, SKF Rolling bearings 2017 p. 172-175, Schaeffler HR1 2006.
  expect(rotatingOuterRingHousings.map((line) => line.fit)).toEqual(['M7', 'N7', 'P7']);
  expect(stationaryInnerRingAxles.map((line) => line.fit)).toEqual(['g6', 'h6']);
  for (const line of [...rotatingOuterRingHousings, ...stationaryInnerRingAxles]) {
    expect(line.sources.length).toBeGreaterThan(1);
  }
});

test.each([12, 28, 42])(
  'a housing of %i mm is usual from M7 to P7, looser with H7 and tighter with S7',
  (size) => {
    expect(['M7', 'N7', 'P7', 'N6', 'M6'].map((text) => verdict(size, text))).toEqual(Array(5).fill('usual'));
    expect(['H7', 'J7', 'JS7', 'G7', 'F8'].map((text) => verdict(size, text))).toEqual(
      Array(5).fill('looser'),
    );
    expect(['R7', 'S7'].map((text) => verdict(size, text))).toEqual(Array(2).fill('tighter'));
  },
);

test.each([10, 15, 17])(
  'an axle of %i mm is usual with g6 and h6, looser with f7 and tighter with k6',
  (size) => {
    expect(['g6', 'h6', 'h5', 'g5'].map((text) => verdict(size, text))).toEqual(Array(4).fill('usual'));
    expect(['f7', 'e8'].map((text) => verdict(size, text))).toEqual(Array(2).fill('looser'));
    expect(['k6', 'm6', 'j6', 'js6'].map((text) => verdict(size, text))).toEqual(Array(4).fill('tighter'));
  },
);

test('the reason is given with the verdict', () => {
  const h7 = parseFitClass('H7');
  expect(h7 && usualness(28, h7)).toMatchObject({
    verdict: 'looser',
    usual: ['M7', 'N7', 'P7'],
    why: 'the outer ring turns under the load and creeps in a seat this loose',
  });
});

test('a class without limits at the size has no verdict', () => {
  expect(verdict(120, 'H7')).toBeUndefined();
  expect(verdict(10, 't6')).toBeUndefined();
});
