import { expect, test } from 'vitest';
import {
  iso286DeviationSteps,
  shaftLowerDeviations,
  shaftLowerDeviationsJ,
  shaftLowerDeviationsK,
  shaftUpperDeviations,
} from '../../../server/engine/tables/iso286-deviations.ts';
import { iso286GradeSteps, iso286Grades } from '../../../server/engine/tables/iso286-grades.ts';
import { rowsOf } from '../../support/reference-rows.ts';

test('every tolerance grade has the printed width', () => {
  const rows = rowsOf('standards/iso286_it_grades.csv');
  expect(rows).toHaveLength(9 * 7);
  for (const row of rows) {
    const step = iso286GradeSteps.indexOf(Number(row.size_incl_mm));
    expect(iso286Grades[Number(row.grade?.slice(2))]?.[step], JSON.stringify(row)).toBe(Number(row.value_um));
  }
});

test('the correction of a grade is its width less the width of the grade before, as the printed Δ table says', () => {
  for (const row of rowsOf('standards/iso286_delta.csv')) {
    const grade = Number(row.grade?.slice(2));
    const step = iso286GradeSteps.indexOf(Number(row.size_incl_mm));
    const before = iso286Grades[grade - 1]?.[step];
    // The table prints no correction up to 3 mm; grade 2, which grade 3 would need, is not kept.
    if (row.size_over_mm === '0' || before === undefined) continue;
    expect((iso286Grades[grade]?.[step] ?? 0) - before, JSON.stringify(row)).toBe(Number(row.delta_um));
  }
});

test('every fundamental deviation of a shaft agrees with a second reading of the standard', () => {
  const rows = rowsOf('standards/iso286_shaft_deviations.csv');
  expect(rows).toHaveLength(27 * 11);
  const tables: Record<string, readonly (number | null)[] | undefined> = {
    ...shaftUpperDeviations,
    ...shaftLowerDeviations,
    'j5-6': shaftLowerDeviationsJ[6],
    j7: shaftLowerDeviationsJ[7],
    j8: shaftLowerDeviationsJ[8],
    'k4-7': shaftLowerDeviationsK,
    k: iso286DeviationSteps.map(() => 0),
  };
  for (const row of rows) {
    const step = iso286DeviationSteps.indexOf(Number(row.size_incl_mm));
    const wanted = row.value_um === '' ? null : Number(row.value_um);
    expect(tables[row.letters ?? '']?.[step], JSON.stringify(row)).toBe(wanted);
  }
});
