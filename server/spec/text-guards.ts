import { makeProblem } from './make-problem.ts';
import type { Problem } from './problem.ts';

/** Beyond these a text is not read: a hub of a thousand parts stays far below them. */
const most = { bytes: 1_000_000, lines: 30_000, nodes: 100_000, brackets: 64, indent: 400 };

/** Refuses a text that would take the parser seconds; a look at each character, no parsing. */
export function textTooLarge(text: string): Problem | null {
  if (most.bytes < text.length) {
    const size = `${(text.length / 1e6).toFixed(1)} MB`;
    return refusal(`the file is ${size} long; files up to 1 MB are read`, 0);
  }
  let lines = 1;
  let nodes = 0;
  let open = 0;
  let indent = 0;
  let marks = 0;
  let lineStart = true;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || c === 13) {
      lines++;
      lineStart = true;
      indent = 0;
      marks = 0;
      continue;
    }
    if (lineStart) {
      if (c === 32 || c === 9) indent++;
      else if ((c === 45 || c === 63 || c === 58) && /\s/.test(text[i + 1] ?? ' ')) marks++;
      else lineStart = false;
      if (most.indent < indent || most.brackets < marks)
        return refusal('the text is nested too deeply to be read', i);
    }
    if (c === 91 || c === 123) open++;
    else if ((c === 93 || c === 125) && 0 < open) open--;
    else if (c === 44 || c === 58) nodes++;
    if (most.brackets < open)
      return refusal('brackets are nested more than 64 deep; nothing of the file is read', i);
  }
  if (most.lines < lines)
    return refusal(`the file has ${lines} lines; files up to ${most.lines} lines are read`, 0);
  if (most.nodes < nodes)
    return refusal(`the file has more than ${most.nodes} values; nothing of it is read`, 0);
  return null;
}

const refusal = (message: string, at: number): Problem =>
  makeProblem('file-too-large', message, { start: at, end: at + 1 });
