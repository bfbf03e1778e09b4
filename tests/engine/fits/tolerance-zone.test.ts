import { expect, test } from 'vitest';
import { fitClassesFor, parseFitClass, toleranceZone } from '../../../server/engine/fits/tolerance-zone.ts';
import { rowsOf } from '../../support/reference-rows.ts';

const zoneOf = (size: number, text: string) => {
  const fit = parseFitClass(text);
  if (!fit) throw new Error(`${text} is not read as a class`);
  return toleranceZone(size, fit);
};

/** Lower and upper deviation in µm, or the reason why there are none. */
const micrometres = (size: number, text: string): readonly [number, number] | string => {
  const zone = zoneOf(size, text);
  return 'error' in zone ? zone.error : [round(zone.lower * 1000), round(zone.upper * 1000)];
};

const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

for (const file of ['standards/iso286_limits.csv', 'standards/iso286_2_limits.csv']) {
  const rows = rowsOf(file);

  test(`every class in ${file} has the printed limits at both ends of its size step`, () => {
    const wrong = rows.flatMap((row) => {
      const wanted = [Number(row.lower_um), Number(row.upper_um)];
      const over = Number(row.size_over_mm);
      // Just over the lower end, and the upper end itself: the step is half open. N from grade 9 starts above 1 mm.
      return [over === 0 ? 1.01 : over + 0.001, Number(row.size_incl_mm)].flatMap((size) => {
        const got = micrometres(size, row.tolerance_class ?? '');
        return JSON.stringify(got) === JSON.stringify(wanted)
          ? []
          : [`${size} ${row.tolerance_class}: ${got}, printed ${wanted} (${row.source})`];
      });
    });
    expect(wrong).toEqual([]);
  });
}

test('the two tables of limits are read whole', () => {
  expect(rowsOf('standards/iso286_limits.csv')).toHaveLength(1620);
  expect(rowsOf('standards/iso286_2_limits.csv').length).toBeGreaterThan(1800);
});

// Textbook use of the fit system: 25 H7/p6 as in worked example fit-08 and the bearing seat of fit-06 and fit-07.
test('a bearing seat of 28 mm has the limits that bearing catalogues print', () => {
  expect(micrometres(28, 'N7')).toEqual([-28, -7]);
  expect(micrometres(28, 'P7')).toEqual([-35, -14]);
  expect(micrometres(28, 'M7')).toEqual([-21, 0]);
});

test('an odd grade keeps its half micrometre under JS and js, as ISO 286-1 gives it before the allowed rounding', () => {
  expect(micrometres(28, 'JS7')).toEqual([-10.5, 10.5]);
  expect(micrometres(12, 'js6')).toEqual([-5.5, 5.5]);
});

test('holes up to 3 mm take no correction', () => {
  // ISO 286-1: no Δ up to 3 mm, so N7 is the shaft n7 turned over.
  expect(micrometres(3, 'N7')).toEqual([-14, -4]);
  expect(micrometres(3, 'P7')).toEqual([-16, -6]);
});

test('N coarser than grade 8 ends at the nominal over 3 mm and is not used up to 1 mm', () => {
  expect(micrometres(10, 'N9')).toEqual([-36, 0]);
  expect(micrometres(1, 'N9')).toBe('ISO 286 gives no N9 at 1 mm');
});

test('K coarser than grade 8 is not defined over 3 mm, and is told apart from K up to 3 mm', () => {
  expect(micrometres(28, 'K9')).toBe('ISO 286 gives no K9 at 28 mm');
  expect(micrometres(3, 'K9')).toEqual([-25, 0]);
});

test('letters that begin at larger sizes say so below them', () => {
  // ISO 286-1: t from over 24 mm, v from over 14 mm, y from over 18 mm.
  expect(micrometres(24, 't6')).toBe('ISO 286 gives no t6 at 24 mm');
  expect(micrometres(24.01, 't6')).toEqual([41, 54]);
  expect(micrometres(14, 'V7')).toBe('ISO 286 gives no V7 at 14 mm');
  expect(micrometres(18, 'y6')).toBe('ISO 286 gives no y6 at 18 mm');
});

test('a size step ends with its own end', () => {
  // ISO 286-1: over 18 up to and including 30.
  expect(micrometres(30, 'H7')).toEqual([0, 21]);
  expect(micrometres(30.001, 'H7')).toEqual([0, 25]);
  expect(micrometres(18, 'H7')).toEqual([0, 18]);
});

test('outside the tables the reason is given with the size', () => {
  expect(micrometres(80.5, 'H7')).toBe(
    'the tables of tolerance classes here end at 80 mm, and 80.5 mm is larger',
  );
  expect(micrometres(0, 'H7')).toBe('a tolerance class needs a size above 0 mm, not 0 mm');
  expect(micrometres(Number.NaN, 'H7')).toBe('a tolerance class needs a size above 0 mm, not NaN mm');
  expect(micrometres(28, 'H12')).toBe('grades 4 to 11 are known here, and H12 is grade 12');
  expect(micrometres(28, 'H3')).toBe('grades 4 to 11 are known here, and H3 is grade 3');
  expect(micrometres(1, 'a9')).toBe('a9 is not used up to 1 mm');
});

test('a class is read from its letters and its number', () => {
  expect(parseFitClass('N7')).toEqual({ letters: 'N', grade: 7, kind: 'hole' });
  expect(parseFitClass(' js6 ')).toEqual({ letters: 'js', grade: 6, kind: 'shaft' });
  expect(parseFitClass('ZC8')).toEqual({ letters: 'ZC', grade: 8, kind: 'hole' });
});

test.each(['Js7', 'jS7', 'i7', 'L6', 'O7', 'Q7', 'w6', 'CD7', 'H', '7', 'H7/g6', '', 'h 6 x', 'H123'])(
  '%j is no tolerance class that is known here',
  (text) => {
    expect(parseFitClass(text)).toBeNull();
  },
);

test.each(['hole', 'shaft'] as const)(
  'every class offered for a %s has limits over the whole range',
  (kind) => {
    const sizes = [1.01, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80];
    const offered = fitClassesFor(kind);
    expect(new Set(offered).size).toBe(offered.length);
    const undefinedOnes = offered.flatMap((text) =>
      sizes.filter((size) => 'error' in zoneOf(size, text)).map((size) => `${text} at ${size}`),
    );
    expect(undefinedOnes).toEqual([]);
    expect(offered.every((text) => parseFitClass(text)?.kind === kind)).toBe(true);
  },
);

test('the classes of a wheel bearing are offered first', () => {
  expect(fitClassesFor('hole').slice(0, 3)).toEqual(['N7', 'M7', 'P7']);
  expect(fitClassesFor('shaft').slice(0, 2)).toEqual(['g6', 'h6']);
});
