/** Lines of two texts that are not in the other, in their order: `-` stands in the first, `+` in the second. */
export function changedLines(from: string, to: string): readonly string[] {
  const [a, b] = [from.trimEnd().split('\n'), to.trimEnd().split('\n')];
  // The longest run of lines both have, from each pair of lines on.
  const common = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  const at = (i: number, j: number): number => common[i]?.[j] ?? 0;
  for (let i = a.length - 1; 0 <= i; i--) {
    for (let j = b.length - 1; 0 <= j; j--) {
      const row = common[i];
      if (row) row[j] = a[i] === b[j] ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const changed: string[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) [i, j] = [i + 1, j + 1];
    else if (i < a.length && (b.length <= j || at(i, j + 1) <= at(i + 1, j))) changed.push(`-${a[i++]}`);
    else changed.push(`+${b[j++]}`);
  }
  return changed;
}
