import type { BasicBearing } from './basic-number.ts';
import { isPlausibleSize } from './dimension-code.ts';
import { modifiedBearing } from './special-numbers.ts';

/**
 * The bearing with a changed bore or outside after a slash, printed or read from the number; null when the number
 * cannot be a bore.
 */
export function changedBearing(basic: BasicBearing, change: string): BasicBearing | null {
  const key = `${basic.key}/${change}`;
  const printed = modifiedBearing(key);
  if (printed) {
    const [, bore, outside, width] = printed;
    return changed(
      basic,
      key,
      bore,
      outside,
      width,
      'table',
      `${key} is one maker's modification of ${basic.key}.`,
    );
  }
  const [over, under] = change.split('/').map(Number);
  const bore = under ? ((over ?? 0) / under) * 25.4 : (over ?? 0);
  const width = basic.widthOpen ?? basic.widthClosed ?? 0;
  const near = basic.bore - 3 <= bore && bore <= basic.bore + 4 && bore !== basic.bore;
  if (!near || !isPlausibleSize(bore, basic.outside, width)) return null;
  const note = `${change} after the code is read as a changed bore of ${round(bore)} mm; no table lists it, measure the bearing.`;
  return changed(basic, key, round(bore), basic.outside, null, 'digits', note);
}

function changed(
  basic: BasicBearing,
  key: string,
  bore: number,
  outside: number,
  width: number | null,
  basis: 'table' | 'digits',
  note: string,
): BasicBearing {
  return {
    ...basic,
    key,
    trade: key,
    bore,
    outside,
    widthOpen: width ?? basic.widthOpen,
    widthClosed: width ?? basic.widthClosed,
    closedInDispute: null,
    basis,
    standardEquivalent: null,
    source: basis === 'table' ? 'zen-2012' : 'common-practice',
    notes: [...basic.notes, note],
  };
}

function round(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
