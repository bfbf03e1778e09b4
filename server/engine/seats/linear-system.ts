/** Solves a small square system by Gaussian elimination with row exchange; null where it has no single answer. */
export function solveLinear(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | null {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (let column = 0; column < n; column++) {
    const best = pivotRow(rows, column);
    const pivot = rows[best] as number[];
    if (Math.abs(pivot[column] ?? 0) < 1e-300) return null;
    rows[best] = rows[column] as number[];
    rows[column] = pivot;
    for (let i = 0; i < n; i++) {
      const row = rows[i] as number[];
      const factor = i === column ? 0 : (row[column] as number) / (pivot[column] as number);
      for (let k = column; k <= n && factor !== 0; k++)
        row[k] = (row[k] as number) - factor * (pivot[k] as number);
    }
  }
  return rows.map((row, i) => (row[n] as number) / (row[i] as number));
}

function pivotRow(rows: readonly (readonly number[])[], column: number): number {
  let best = column;
  for (let i = column + 1; i < rows.length; i++) {
    if (Math.abs(rows[i]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = i;
  }
  return best;
}
