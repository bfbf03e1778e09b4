/** The value below which a share of the values lies. */
export function quantile(values, share) {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const [low, high] = [sorted[Math.floor(at)], sorted[Math.ceil(at)]];
  return low + (high - low) * (at - Math.floor(at));
}

export const median = (values) => quantile(values, 0.5);
export const rounded = (value, digits = 2) => (value === null ? null : Number(value.toFixed(digits)));

/** Median, 95th percentile and worst of some times. */
export function summary(values) {
  return {
    median: rounded(median(values)),
    p95: rounded(quantile(values, 0.95)),
    worst: rounded(Math.max(...values)),
    count: values.length,
  };
}

/** Rows of cells as aligned lines; all columns but the first to the right. */
export function table(rows) {
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => (column === 0 ? cell.padEnd(widths[column]) : cell.padStart(widths[column])))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
