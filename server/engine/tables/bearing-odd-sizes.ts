import type { SourceId } from '../base/sources.ts';

/** One printed odd size: code, bore, outside, width (mm). */
export type OddSize = readonly [code: string, bore: number, outside: number, width: number];

/** Standard bearings made with another width, bore or outside, keyed without their closure. As printed, mm. */
export const modifiedSizes: readonly OddSize[] = [
  ['695W5', 5, 13, 5],
  ['686W4.5', 6, 13, 4.5],
  ['686W5', 6, 13, 5],
  ['688W5', 8, 16, 5],
  ['688W6', 8, 16, 6],
  ['608W6', 8, 22, 6],
  ['608/24', 8, 24, 7],
  ['608/26', 8, 26, 7],
  ['689W6', 9, 17, 6],
  ['619/11', 11, 22, 6],
  ['619/13', 13, 24, 6],
  ['Y17', 17, 32, 8],
  ['626/21', 6, 21, 6],
  ['6200/35', 10, 35, 11],
  ['6201/1/2', 12.7, 32, 10],
  ['6201/13', 13, 32, 10],
  ['6202/5/8', 15.875, 35, 11],
  ['6202/16', 16, 35, 11],
  ['6202/47', 15, 47, 11],
  ['6203/5/8', 15.875, 40, 12],
  ['6203/16', 16, 40, 12],
  ['6203/3/4', 19.05, 40, 12],
  ['6204/3/4', 19.05, 47, 12],
  ['6204/7/8', 22.225, 47, 14],
];

/** Where `modifiedSizes` was read. */
export const modifiedSizesSource: SourceId = 'zen-2012';

/** Cycle sizes whose code is its own dimensions, known from the trade and not from a maker's table, mm. */
export const cycleSizes: readonly OddSize[] = [
  ['15267', 15, 26, 7],
  ['15268', 15, 26, 8],
  ['17287', 17, 28, 7],
  ['18307', 18, 30, 7],
  ['24377', 24, 37, 7],
  ['163110', 16, 31, 10],
];

/** Where `cycleSizes` comes from. */
export const cycleSizesSource: SourceId = 'from-memory';

/** Sizes that have no ISO code, under the code of the maker who prints them, mm. */
export const makerSizes: readonly (readonly [...OddSize, source: SourceId])[] = [
  ['A-2015', 15, 20, 3.5, 'nmb-ball'],
  ['A-2115', 15, 21, 3.5, 'nmb-ball'],
  ['A-2216', 16, 22, 4, 'nmb-ball'],
  ['A-2418', 18, 24, 4, 'nmb-ball'],
  ['A-2520', 20, 25, 4, 'nmb-ball'],
  ['L-2010ZZ', 10, 20, 6, 'nmb-ball'],
  ['L-2010ZZY05', 10, 20, 5, 'nmb-ball'],
  ['L-1480', 8, 14, 3.5, 'nmb-ball'],
  ['ML6019', 6, 19, 8, 'koyo-ru'],
  ['ML7022', 7, 22, 8, 'koyo-ru'],
];
