import { besideKinds } from './beside-model.ts';
import { makeProblem, replaceFix } from './make-problem.ts';
import type { MendedText } from './mended-text.ts';
import { stackKinds } from './model.ts';
import type { Problem } from './problem.ts';
import { textLines } from './text-lines.ts';

const kinds: ReadonlySet<string> = new Set([...stackKinds, ...besideKinds]);

/** A look at the text that spares most of them the way line by line. */
const kindWithoutDash = new RegExp(`^[ \\t]*(?:${[...kinds].join('|')}):[ \\t]`, 'm');

/** `spacer: centre` in the column of the dashes above it, where no key can stand, lacks a dash of its own. */
export function missingDashes(mended: MendedText): Problem[] {
  const problems: Problem[] = [];
  if (!kindWithoutDash.test(mended.original)) return problems;
  // The columns that are open, outermost first: of the dashes of a list, or of keys.
  const open: { readonly at: number; readonly dash: boolean }[] = [];
  for (const { start, text, indent, idle, block } of textLines(mended.original)) {
    if (idle || block) continue;
    while (indent < (open.at(-1)?.at ?? -1)) open.pop();
    const dashes = /^(?:-[ \t]+)+/.exec(text.slice(indent))?.[0].length ?? 0;
    const top = open.at(-1);
    if (0 < dashes) {
      if (top?.at !== indent || !top.dash) open.push({ at: indent, dash: true });
      open.push({ at: indent + dashes, dash: false });
      continue;
    }
    const item = /^([\w-]+):[ \t]+[^#\r\n]*[^#\s]/.exec(text.slice(indent));
    const kind = item?.[1] ?? '';
    if (top?.at === indent && top.dash && kinds.has(kind)) {
      const at = start + indent;
      if (mended.mend(at, at, '- ')) problems.push(missing(kind, item?.[0] ?? kind, at));
      open.push({ at: indent + 2, dash: false });
    } else if (top?.at !== indent) open.push({ at: indent, dash: false });
  }
  return problems;
}

function missing(kind: string, item: string, at: number): Problem {
  return makeProblem(
    'yaml-syntax',
    `a dash is wanted before ${kind}: - ${item}`,
    { start: at, end: at + kind.length },
    { data: { slip: 'dash' }, fixes: [replaceFix('Put a dash before it', { start: at, end: at }, '- ')] },
  );
}
