/** A place as editors count it: lines and UTF-16 characters from zero. */
export interface LineCharacter {
  readonly line: number;
  readonly character: number;
}

/** Offsets at which the lines of a text begin. A line ends at `\n`, `\r\n` or a lone `\r`, as editors have it. */
export function lineStarts(text: string): readonly number[] {
  const starts = [0];
  for (let at = 0; at < text.length; at++) {
    const c = text.charCodeAt(at);
    if (c === 13 && text.charCodeAt(at + 1) === 10) continue;
    if (c === 10 || c === 13) starts.push(at + 1);
  }
  return starts;
}

/** Line and character of an offset in a text of `length` characters; an offset outside it counts as its nearest end. */
export function lineCharacter(starts: readonly number[], length: number, offset: number): LineCharacter {
  const at = Math.min(Math.max(offset, 0), length);
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? 0) <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low, character: at - (starts[low] ?? 0) };
}
