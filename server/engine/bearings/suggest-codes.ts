import { knownBearings } from './known-bearings.ts';

/** A code that may have been meant, with its size in words. */
export interface Suggestion {
  readonly code: string;
  readonly size: string;
}

const most = 5;
const furthest = 2;
/** A missing or an extra sign is a rarer slip than a changed one. */
const extra = 1.7;
/** Neighbours in the number row are hit for one another. */
const neighbour = 0.8;

/**
 * Codes close to a basic number that could not be read, most plausible first: fewest slips of the finger, then the
 * order in which hubs use the series. Bores from 3 to 40 mm.
 */
export function suggestCodes(basic: string): readonly Suggestion[] {
  const wanted = basic.toUpperCase().replace(/O/g, '0').replace(/[IL]/g, '1').replace(/[\s-]/g, '');
  if (wanted.length < 3 || wanted.length > 9) return [];
  const found: { code: string; size: string; cost: number; rank: number }[] = [];
  for (const { code, basic: known, bore, outside, width, rank } of knownBearings()) {
    if (/-2(RS|Z)$/.test(code) || bore < 3 || 40 < bore) continue;
    const size = `${bore} × ${outside} × ${width}`;
    const trade = slips(wanted, known.trade);
    // The long spelling counts only when it is the closer one, so that one bearing is offered once.
    const long = known.key === known.trade ? trade : slips(wanted, known.key);
    const cost = Math.min(trade, long);
    if (cost <= furthest) found.push({ code: long < trade ? known.key : known.trade, size, cost, rank });
  }
  found.sort((a, b) => a.cost - b.cost || a.rank - b.rank);
  return found.slice(0, most).map(({ code, size }) => ({ code, size }));
}

/** Slips of the finger between two codes: a changed sign or two swapped ones count 1; infinite when too many. */
function slips(a: string, b: string): number {
  if (Math.abs(a.length - b.length) * extra > furthest) return Number.POSITIVE_INFINITY;
  let before: number[] = [];
  let last: number[] = [];
  for (let j = 0; j <= b.length; j++) last.push(j * extra);
  for (let i = 1; i <= a.length; i++) {
    const row = [i * extra];
    let least = i * extra;
    for (let j = 1; j <= b.length; j++) {
      const one = a.charCodeAt(i - 1);
      const other = b.charCodeAt(j - 1);
      let cost = (last[j - 1] ?? 0) + (one === other ? 0 : change(one, other));
      cost = Math.min(cost, (last[j] ?? 0) + extra, (row[j - 1] ?? 0) + extra);
      if (i > 1 && j > 1 && one === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === other) {
        cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      }
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > furthest) return Number.POSITIVE_INFINITY;
    before = last;
    last = row;
  }
  return last[b.length] ?? Number.POSITIVE_INFINITY;
}

/** Digits stand beside each other in the number row; the 0 comes after the 9. */
function change(a: number, b: number): number {
  const isDigit = (sign: number): boolean => 48 <= sign && sign <= 57;
  if (!isDigit(a) || !isDigit(b)) return 1;
  const place = (sign: number): number => (sign === 48 ? 10 : sign - 48);
  return Math.abs(place(a) - place(b)) === 1 ? neighbour : 1;
}
