import type { SourceId } from '../base/sources.ts';

/** A tolerance class of ISO 492 that the tables hold. */
export type Iso492Class = 'Normal' | '6' | '5' | '4';

/** One size range: over, up to and including (mm), lower and upper deviation (µm). */
export type DeviationRow = readonly [over: number, upTo: number, lower: number, upper: number];

/** One size range: over, up to and including (mm), largest value (µm). */
export type LimitRow = readonly [over: number, upTo: number, most: number];

/** Deviation of the mean bore diameter by bore, µm. */
export const meanBoreDeviation: Readonly<Record<Iso492Class, readonly DeviationRow[]>> = {
  Normal: [
    [0.6, 2.5, -8, 0],
    [2.5, 10, -8, 0],
    [10, 18, -8, 0],
    [18, 30, -10, 0],
    [30, 50, -12, 0],
    [50, 80, -15, 0],
  ],
  '6': [
    [0.6, 2.5, -7, 0],
    [2.5, 10, -7, 0],
    [10, 18, -7, 0],
    [18, 30, -8, 0],
    [30, 50, -10, 0],
    [50, 80, -12, 0],
  ],
  '5': [
    [0.6, 2.5, -5, 0],
    [2.5, 10, -5, 0],
    [10, 18, -5, 0],
    [18, 30, -6, 0],
    [30, 50, -8, 0],
    [50, 80, -9, 0],
  ],
  '4': [
    [0.6, 2.5, -4, 0],
    [2.5, 10, -4, 0],
    [10, 18, -4, 0],
    [18, 30, -5, 0],
    [30, 50, -6, 0],
    [50, 80, -7, 0],
  ],
};

/** Deviation of the mean outside diameter by outside diameter, µm. */
export const meanOutsideDeviation: Readonly<Record<Iso492Class, readonly DeviationRow[]>> = {
  Normal: [
    [2.5, 6, -8, 0],
    [6, 18, -8, 0],
    [18, 30, -9, 0],
    [30, 50, -11, 0],
    [50, 80, -13, 0],
    [80, 120, -15, 0],
  ],
  '6': [
    [2.5, 6, -7, 0],
    [6, 18, -7, 0],
    [18, 30, -8, 0],
    [30, 50, -9, 0],
    [50, 80, -11, 0],
    [80, 120, -13, 0],
  ],
  '5': [
    [2.5, 6, -5, 0],
    [6, 18, -5, 0],
    [18, 30, -6, 0],
    [30, 50, -7, 0],
    [50, 80, -9, 0],
    [80, 120, -10, 0],
  ],
  '4': [
    [2.5, 6, -4, 0],
    [6, 18, -4, 0],
    [18, 30, -5, 0],
    [30, 50, -6, 0],
    [50, 80, -7, 0],
    [80, 120, -8, 0],
  ],
};

/** Deviation of one ring width by bore, single bearing; it holds for both rings, µm. */
export const ringWidthDeviation: Readonly<Record<Iso492Class, readonly DeviationRow[]>> = {
  Normal: [
    [0.6, 2.5, -40, 0],
    [2.5, 10, -120, 0],
    [10, 18, -120, 0],
    [18, 30, -120, 0],
    [30, 50, -120, 0],
    [50, 80, -150, 0],
  ],
  '6': [
    [0.6, 2.5, -40, 0],
    [2.5, 10, -120, 0],
    [10, 18, -120, 0],
    [18, 30, -120, 0],
    [30, 50, -120, 0],
    [50, 80, -150, 0],
  ],
  '5': [
    [0.6, 2.5, -40, 0],
    [2.5, 10, -40, 0],
    [10, 18, -80, 0],
    [18, 30, -120, 0],
    [30, 50, -120, 0],
    [50, 80, -150, 0],
  ],
  '4': [
    [0.6, 2.5, -40, 0],
    [2.5, 10, -40, 0],
    [10, 18, -80, 0],
    [18, 30, -120, 0],
    [30, 50, -120, 0],
    [50, 80, -150, 0],
  ],
};

/** Deviation of one ring width by bore, rings made for matched bearings, µm. */
export const pairedRingWidthDeviation: Readonly<Record<Iso492Class, readonly DeviationRow[]>> = {
  Normal: [
    [2.5, 10, -250, 0],
    [10, 18, -250, 0],
    [18, 30, -250, 0],
    [30, 50, -250, 0],
    [50, 80, -380, 0],
  ],
  '6': [
    [2.5, 10, -250, 0],
    [10, 18, -250, 0],
    [18, 30, -250, 0],
    [30, 50, -250, 0],
    [50, 80, -380, 0],
  ],
  '5': [
    [0.6, 2.5, -250, 0],
    [2.5, 10, -250, 0],
    [10, 18, -250, 0],
    [18, 30, -250, 0],
    [30, 50, -250, 0],
    [50, 80, -250, 0],
  ],
  '4': [
    [0.6, 2.5, -250, 0],
    [2.5, 10, -250, 0],
    [10, 18, -250, 0],
    [18, 30, -250, 0],
    [30, 50, -250, 0],
    [50, 80, -250, 0],
  ],
};

/** Largest variation of the inner ring width by bore, µm. */
export const innerWidthVariation: Readonly<Record<Iso492Class, readonly LimitRow[]>> = {
  Normal: [
    [0.6, 2.5, 12],
    [2.5, 10, 15],
    [10, 18, 20],
    [18, 30, 20],
    [30, 50, 20],
    [50, 80, 25],
  ],
  '6': [
    [0.6, 2.5, 12],
    [2.5, 10, 15],
    [10, 18, 20],
    [18, 30, 20],
    [30, 50, 20],
    [50, 80, 25],
  ],
  '5': [
    [0.6, 2.5, 5],
    [2.5, 10, 5],
    [10, 18, 5],
    [18, 30, 5],
    [30, 50, 5],
    [50, 80, 6],
  ],
  '4': [
    [0.6, 2.5, 2.5],
    [2.5, 10, 2.5],
    [10, 18, 2.5],
    [18, 30, 2.5],
    [30, 50, 3],
    [50, 80, 4],
  ],
};

/** Largest radial runout of the assembled inner ring by bore, µm. */
export const innerRunout: Readonly<Record<Iso492Class, readonly LimitRow[]>> = {
  Normal: [
    [0.6, 2.5, 10],
    [2.5, 10, 10],
    [10, 18, 10],
    [18, 30, 13],
    [30, 50, 15],
    [50, 80, 20],
  ],
  '6': [
    [0.6, 2.5, 5],
    [2.5, 10, 6],
    [10, 18, 7],
    [18, 30, 8],
    [30, 50, 10],
    [50, 80, 10],
  ],
  '5': [
    [0.6, 2.5, 4],
    [2.5, 10, 4],
    [10, 18, 4],
    [18, 30, 4],
    [30, 50, 5],
    [50, 80, 5],
  ],
  '4': [
    [0.6, 2.5, 2.5],
    [2.5, 10, 2.5],
    [10, 18, 2.5],
    [18, 30, 3],
    [30, 50, 4],
    [50, 80, 4],
  ],
};

/** Largest radial runout of the assembled outer ring by outside diameter, µm. */
export const outerRunout: Readonly<Record<Iso492Class, readonly LimitRow[]>> = {
  Normal: [
    [2.5, 6, 15],
    [6, 18, 15],
    [18, 30, 15],
    [30, 50, 20],
    [50, 80, 25],
    [80, 120, 35],
  ],
  '6': [
    [2.5, 6, 8],
    [6, 18, 8],
    [18, 30, 9],
    [30, 50, 10],
    [50, 80, 13],
    [80, 120, 18],
  ],
  '5': [
    [2.5, 6, 5],
    [6, 18, 5],
    [18, 30, 6],
    [30, 50, 7],
    [50, 80, 8],
    [80, 120, 10],
  ],
  '4': [
    [2.5, 6, 3],
    [6, 18, 3],
    [18, 30, 4],
    [30, 50, 5],
    [50, 80, 5],
    [80, 120, 6],
  ],
};

/** Where the tables of this file were read. */
export const iso492Source: SourceId = 'iso-492';
