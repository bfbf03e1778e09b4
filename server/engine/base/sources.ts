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

  'fasteners-data': {
    title: 'Open fastener dimension data of a CAD workbench (DIN 471, DIN 472 tables), LGPL 2.1',
    kind: 'catalogue',
  },

  'iso-76': {
    title: 'ISO 76:2006 (GOST 18854-2013), static load ratings of rolling bearings',
    kind: 'standard',
  },
  'iso-281': {
    title: 'ISO 281:2007 (GOST 18855-2013), dynamic load ratings and rating life of rolling bearings',
    kind: 'standard',
  },
  'harris-analysis': {
    title:
      'T. A. Harris, Rolling Bearing Analysis: ball bearing geometry, contact stress, thrust load (Jones)',
    kind: 'textbook',
  },
  'timoshenko-goodier': {
    title: 'S. P. Timoshenko, J. N. Goodier, Theory of Elasticity: thick cylinders, rotating discs, contact',
    kind: 'textbook',
  },
  'skf-general-ru': {
    title: 'SKF, General catalogue (Russian edition), frictional moment and seals',
    kind: 'catalogue',
  },
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
  'abramowitz-stegun': {
    title: 'M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), chapters 7 and 26',
    kind: 'textbook',
  },
  'marsaglia-polar': {
    title:
      'G. Marsaglia, T. A. Bray, A Convenient Method for Generating Normal Variables, SIAM Review 6 (1964)',
    kind: 'paper',
  },

  // Bearings: dimensions, tolerances, clearance, designations
  'iso-15': {
    title:
      'ISO 15 general plan of boundary dimensions, read as GOST 3478-79 tables 1 to 7 and NSK CAT. No. E1102e Table 7.1',
    kind: 'standard',
  },
  'iso-492': {
    title: 'ISO 492:2002, read as GOST 520-2011 tables 1 to 8 and NSK CAT. No. E1102e Table 8.2',
    kind: 'standard',
  },
  'iso-5753-1': {
    title: 'ISO 5753-1, read as GOST 24810-2013 Table 2 and NSK CAT. No. E1102e Table 9.9',
    kind: 'standard',
  },
  'iso-582': {
    title: 'ISO 582 chamfer limits, read as NSK CAT. No. E1102e Tables 8.9.1 and 11.2',
    kind: 'standard',
  },
  'nke-2018': { title: 'NKE, General Catalogue 2018', kind: 'catalogue' },
  'zen-2012': { title: 'ZEN, Standard Catalogue V.10/12', kind: 'catalogue' },
  'nmb-ball': { title: 'NMB Minebea, ball bearing catalogue', kind: 'catalogue' },
  'cx-part-7': { title: 'CX, production programme, Part VII', kind: 'catalogue' },
  'fbj-ru': { title: 'FBJ, bearings catalogue (Russian edition)', kind: 'catalogue' },
  'koyo-ru': { title: 'KOYO, general catalogue, standard bearings (Russian edition)', kind: 'catalogue' },
  'koyo-203e': { title: 'KOYO, popular sizes, CAT. No. 203E-1 (1997)', kind: 'catalogue' },
  'balls-from-ratings': {
    title:
      'ball size and count worked back from the dynamic rating, static rating and f0 factor printed by one maker (NSK CAT. No. E1102e), which they give again within 1.4 %',
    kind: 'estimate',
  },

  // Materials
  'aluminium-typical': {
    title: 'Aluminum Association typical properties of 6061-T6, as printed on data sheets',
    kind: 'catalogue',
  },
  'stainless-304-sheet': { title: 'AISI type 304 data sheet, annealed bar', kind: 'catalogue' },
  'mechanics-course': {
    title: 'Multimedia Engineering Mechanics, appendix Material Properties (open course book, US units)',
    kind: 'textbook',
  },
  'mechanics-appendix': {
    title: 'Mechanics of materials, appendix C Material Properties (open course text)',
    kind: 'textbook',
  },
  'aerospace-course': {
    title: 'Introduction to Aerospace Structures and Materials, table 1 (open university course)',
    kind: 'textbook',
  },
  'design-class-tables': {
    title: 'Mechanical engineering design class, table of ferrous metals: 4130 normalised (open course page)',
    kind: 'textbook',
  },

  // Wheels
  'ford-wheel': {
    title:
      'M. Ford, Reinventing the Wheel: Stress Analysis, Stability, and Optimization of the Bicycle Wheel, PhD thesis, Northwestern University (2018)',
    kind: 'paper',
  },
  'brandt-wheel': {
    title: 'J. Brandt, The Bicycle Wheel (results as quoted in public threads)',
    kind: 'textbook',
  },
  'din-79012': { title: 'DIN 79012, cycle threads, as printed in two thread tables', kind: 'standard' },
  'jis-d-9301': {
    title: 'JIS D 9301:2019, bicycles for general use, as summarised by a national test institute',
    kind: 'standard',
  },

  // Facts without a document
  'common-practice': { title: 'common practice of the trade', kind: 'common practice' },
  'from-memory': { title: 'value from memory, not confirmed in a document', kind: 'from memory' },
  estimate: { title: 'estimate made for this tool', kind: 'estimate' },
} as const satisfies Record<string, { readonly title: string; readonly kind: SourceKind }>;

/** The id of one entry of the bibliography. */
export type SourceId = keyof typeof sources;
