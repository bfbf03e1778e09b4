import type { SourceId } from '../base/sources.ts';

/** A series of bearing numbers: the digits in front of the bore code and the dimension series they stand for. */
export interface BearingSeries {
  /** Digits as written, '69' or '619'. */
  readonly prefix: string;
  /** The spelling used in normalised codes, '619'. */
  readonly iso: string;
  /** The spelling stamped most often (common practice), '69'. */
  readonly trade: string;
  /** ISO 15 dimension series. */
  readonly dimension: string;
  readonly kind: 'deep-groove' | 'angular-contact' | 'double-row-angular-contact';
  /** True when this spelling only stands in front of a slash, as in 610/6. */
  readonly slashOnly?: true;
  /** True when the number is an older spelling of the series in `iso`. */
  readonly older?: true;
}

const deep = 'deep-groove';
const angular = 'angular-contact';
const double = 'double-row-angular-contact';

/**
 * The series this tool reads. The width digit is left out in short spellings: 69 is 6(1)9, 60 is 6(1)0, 62 is 6(0)2;
 * 160 stands for dimension series 00. Series 52 and 53 are an inch-market spelling of 32 and 33.
 */
export const bearingSeries: readonly BearingSeries[] = [
  { prefix: '60', iso: '60', trade: '60', dimension: '10', kind: deep },
  { prefix: '610', iso: '60', trade: '60', dimension: '10', kind: deep, slashOnly: true, older: true },
  { prefix: '62', iso: '62', trade: '62', dimension: '02', kind: deep },
  { prefix: '63', iso: '63', trade: '63', dimension: '03', kind: deep },
  { prefix: '64', iso: '64', trade: '64', dimension: '04', kind: deep },
  { prefix: '67', iso: '617', trade: '67', dimension: '17', kind: deep },
  { prefix: '617', iso: '617', trade: '67', dimension: '17', kind: deep },
  { prefix: '68', iso: '618', trade: '68', dimension: '18', kind: deep },
  { prefix: '618', iso: '618', trade: '68', dimension: '18', kind: deep },
  { prefix: '69', iso: '619', trade: '69', dimension: '19', kind: deep },
  { prefix: '619', iso: '619', trade: '69', dimension: '19', kind: deep },
  { prefix: '160', iso: '160', trade: '160', dimension: '00', kind: deep },
  { prefix: '622', iso: '622', trade: '622', dimension: '22', kind: deep },
  { prefix: '623', iso: '623', trade: '623', dimension: '23', kind: deep },
  { prefix: '627', iso: '627', trade: '627', dimension: '27', kind: deep },
  { prefix: '628', iso: '628', trade: '628', dimension: '28', kind: deep },
  { prefix: '629', iso: '629', trade: '629', dimension: '29', kind: deep },
  { prefix: '630', iso: '630', trade: '630', dimension: '30', kind: deep },
  { prefix: '637', iso: '637', trade: '637', dimension: '37', kind: deep },
  { prefix: '638', iso: '638', trade: '638', dimension: '38', kind: deep },
  { prefix: '639', iso: '639', trade: '639', dimension: '39', kind: deep },
  { prefix: '70', iso: '70', trade: '70', dimension: '10', kind: angular },
  { prefix: '72', iso: '72', trade: '72', dimension: '02', kind: angular },
  { prefix: '73', iso: '73', trade: '73', dimension: '03', kind: angular },
  { prefix: '78', iso: '718', trade: '78', dimension: '18', kind: angular },
  { prefix: '718', iso: '718', trade: '78', dimension: '18', kind: angular },
  { prefix: '79', iso: '719', trade: '79', dimension: '19', kind: angular },
  { prefix: '719', iso: '719', trade: '79', dimension: '19', kind: angular },
  { prefix: '30', iso: '30', trade: '30', dimension: '30', kind: double },
  { prefix: '32', iso: '32', trade: '32', dimension: '32', kind: double },
  { prefix: '33', iso: '33', trade: '33', dimension: '33', kind: double },
  { prefix: '38', iso: '38', trade: '38', dimension: '38', kind: double },
  { prefix: '52', iso: '32', trade: '32', dimension: '32', kind: double, older: true },
  { prefix: '53', iso: '33', trade: '33', dimension: '33', kind: double, older: true },
];

/** Bore by bore code: 00 to 03, mm; from 04 on the bore is five times the code. */
export const smallBoreCodes: readonly number[] = [10, 12, 15, 17];

/** Where the designation rules of this file were read. */
export const bearingSeriesSource: SourceId = 'nsk-e1102e';

/**
 * Small sizes whose closed version makers print in two widths: basic number, narrow and wide (mm).
 * Series 67: seals narrow, shields wide in the one catalogue read. Others: three-digit spelling wide (688 closed is
 * 5 wide), slash spelling narrow in one catalogue and wide in another (618/8 closed is 4 or 5 wide).
 */
export const closedWidthsInDispute: readonly (readonly [basic: string, narrow: number, wide: number])[] = [
  ['617/3', 2, 2.5],
  ['617/4', 2, 2.5],
  ['617/5', 2, 2.5],
  ['617/6', 2.5, 3],
  ['617/7', 2.5, 3],
  ['617/8', 2.5, 3.5],
  ['617/9', 3, 4.5],
  ['618/7', 3.5, 5],
  ['618/8', 4, 5],
  ['618/9', 4, 5],
  ['619/3', 3, 4],
];
