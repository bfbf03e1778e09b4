import type { SourceId } from '../base/sources.ts';

/** Axial over the root of radial clearance, K = 2·√m0, mm^½, by bore code and series; one maker's deep grooves. */
export const grooveClearanceFactors: Readonly<
  Record<'160' | '60' | '62' | '63', Readonly<Record<string, number>>>
> = {
  '160': { '01': 0.8, '02': 0.8, '03': 0.8, '04': 0.9, '05': 0.9, '06': 0.96, '08': 0.96, '10': 1.01 },
  '60': { '01': 0.8, '02': 0.93, '03': 0.93, '04': 0.96, '05': 0.96, '06': 1.01, '08': 1.06, '10': 1.11 },
  '62': {
    '00': 0.93,
    '01': 0.93,
    '02': 0.93,
    '03': 0.99,
    '04': 1.06,
    '05': 1.06,
    '06': 1.07,
    '08': 1.29,
    '10': 1.33,
  },
  '63': {
    '00': 1.14,
    '01': 1.06,
    '02': 1.06,
    '03': 1.11,
    '04': 1.07,
    '05': 1.2,
    '06': 1.19,
    '08': 1.45,
    '10': 1.64,
  },
};

/** Where `grooveClearanceFactors` was read (Table 15.4). */
export const grooveClearanceFactorsSource: SourceId = 'nsk-e1102e';
