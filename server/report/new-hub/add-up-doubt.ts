import { length } from '../../engine/base/figures.ts';

/** A calliper over the end caps and a handful of lengths read apart may differ by this much, mm: common practice. */
const within = 0.5;

/** Whether the parts that were read come to the width that was read; a sentence where they do not. Lengths in mm. */
export function addUpDoubt(width: number | null, parts: readonly (number | null)[]): readonly string[] {
  const known = parts.filter((part) => part !== null);
  if (width === null || known.length < parts.length) return [];
  const sum = known.reduce((total, part) => total + part, 0);
  const short = width - sum;
  if (Math.abs(short) <= within) return [];
  const why =
    0 < short
      ? 'a part that was not asked for, such as a washer, stands between them, or a length was read short'
      : 'an end cap was read with the part of it that goes into the bearing, or a length was read long';
  return [
    `the parts add up to ${length(sum)} mm, over the end caps ${length(width)} mm were read, ${length(Math.abs(short))} mm ${0 < short ? 'more' : 'less'}: ${why}`,
  ];
}
