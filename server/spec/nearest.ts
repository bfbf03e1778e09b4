/**
 * The candidate nearest to a word: what was meant. Edits are insertions, deletions, replacements and swaps of
 * neighbours, blind to case; the first of equals wins. Null when none is near enough.
 *
 * @param limit edits at most; by default 2, and 1 for words of up to four letters
 */
export function nearestOf(word: string, candidates: Iterable<string>, limit?: number): string | null {
  const wanted = word.toLowerCase();
  if (wanted === '') return null;
  let best: string | null = null;
  let least = (limit ?? (wanted.length <= 4 ? 1 : 2)) + 1;
  for (const candidate of candidates) {
    const other = candidate.toLowerCase();
    if (least <= Math.abs(other.length - wanted.length)) continue;
    const edits = distance(wanted, other);
    if (edits < least) {
      least = edits;
      best = candidate;
    }
  }
  return best;
}

/** Optimal string alignment distance. */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let edits = Math.min((above[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (above[j - 1] ?? 0) + (same ? 0 : 1));
      if (1 < i && 1 < j && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        edits = Math.min(edits, (before[j - 2] ?? 0) + 1);
      }
      row.push(edits);
    }
    before = above;
    above = row;
  }
  return above[b.length] ?? 0;
}
