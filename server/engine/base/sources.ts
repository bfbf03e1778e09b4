/** How much a source can bear: a table row from a standard bears more than a value from memory. */
export type SourceKind =
  | 'standard'
  | 'textbook'
  | 'catalogue'
  | 'paper'
  | 'common practice'
  | 'from memory'
  | 'estimate';

/**
 * The bibliography: every table row, formula and default limit names one of these ids.
 * A catalogue is cited for the numbers printed in it and appears nowhere else in the project.
 */
export const sources = {
  // Limits and fits
  'iso-286-1': {
    title: 'ISO 286-1:2010 (EN ISO 286-1:2011), tolerance grades and fundamental deviations',
    kind: 'standard',
  },
  'iso-286-2': {
    title: 'ISO 286-2:2010 (GB/T 1800.2-2020), tables of limit deviations for holes and shafts',
    kind: 'standard',
  },
  'iso-2768-1': {
    title: 'ISO 2768-1:1989, general tolerances for linear dimensions, table 1',
    kind: 'standard',
  },
  'din-471': { title: 'DIN 471, retaining rings for shafts, normal type', kind: 'standard' },
  'din-472': { title: 'DIN 472, retaining rings for bores, normal type', kind: 'standard' },

  // Bearing catalogues: fits, materials, mounting
  'nsk-e1102e': { title: 'NSK, Rolling Bearings, CAT. No. E1102e', kind: 'catalogue' },
  'ntn-2203e': { title: 'NTN, Ball and Roller Bearings, CAT. No. 2203/E', kind: 'catalogue' },
  'skf-2017': { title: 'SKF, Rolling bearings, 2017', kind: 'catalogue' },
  'skf-general': { title: 'SKF, General catalogue', kind: 'catalogue' },
  'schaeffler-hr1': { title: 'Schaeffler Group, HR1 Rolling bearings, June 2006', kind: 'catalogue' },
  'timken-taper': {
    title: 'Timken, Tapered Roller Bearing Catalog, fitting practice tables, footnote 1',
    kind: 'catalogue',
  },

  // Tolerance stacks and statistics
  'chase-allocation': {
    title:
      'K. W. Chase, Tolerance Allocation Methods for Designers (values from memory, they confirm each other)',
    kind: 'from memory',
  },
  'blackman-vigna': {
    title: 'D. Blackman, S. Vigna, Scrambled Linear Pseudorandom Number Generators, ACM TOMS 47 (2021)',
    kind: 'paper',
  },
  'steele-splitmix': {
    title: 'G. Steele, D. Lea, C. Flood, Fast Splittable Pseudorandom Number Generators, OOPSLA 2014',
    kind: 'paper',
  },
  'marsaglia-polar': {
    title:
      'G. Marsaglia, T. A. Bray, A Convenient Method for Generating Normal Variables, SIAM Review 6 (1964)',
    kind: 'paper',
  },

  // Facts without a document
  'common-practice': { title: 'common practice of the trade', kind: 'common practice' },
  'from-memory': { title: 'value from memory, not confirmed in a document', kind: 'from memory' },
  estimate: { title: 'estimate made for this tool', kind: 'estimate' },
} as const satisfies Record<string, { readonly title: string; readonly kind: SourceKind }>;

/** The id of one entry of the bibliography. */
export type SourceId = keyof typeof sources;
