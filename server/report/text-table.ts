/** Lines of cells as columns of text, two blanks apart. A column named in `right` is set to the right. */
export function textTable(
  lines: readonly (readonly string[])[],
  options: { readonly indent?: number; readonly right?: readonly number[] } = {},
): readonly string[] {
  const { indent = 0, right = [] } = options;
  const widths: number[] = [];
  for (const line of lines) {
    line.forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, cell.length);
    });
  }
  return lines.map((line) => {
    const cells = line.map((cell, column) => {
      const width = widths[column] ?? 0;
      return right.includes(column) ? cell.padStart(width) : cell.padEnd(width);
    });
    return `${' '.repeat(indent)}${cells.join('  ')}`.trimEnd();
  });
}
