import { lineOf, nextLine } from './lines.ts';
import { makeProblem, replaceFix } from './make-problem.ts';
import type { MendedText } from './mended-text.ts';
import { missingDashes } from './missing-dash.ts';
import type { Fix, Problem, TextChange } from './problem.ts';
import { isKnownKey } from './schema/known-keys.ts';
import { openColumns, openQuote, type TextLine, textLines } from './text-lines.ts';
import { yamlMessage } from './yaml-message.ts';

/**
 * What can be seen in a text before it is parsed, mended for the parser and reported in our words: the parser would
 * take each for something else, far away or not at all.
 */
export function mendText(mended: MendedText): Problem[] {
  const text = mended.original;
  const problems: Problem[] = [];
  if (/\r(?!\n)/.test(text)) mended.translate((t) => t.replace(/\r(?!\n)/g, '\n'));
  if (/[\u00a0\u2000-\u200b\u202f\u3000]/.test(text)) {
    mended.translate((t) => t.replace(/[\u00a0\u2000-\u200b\u202f\u3000]/g, ' '));
  }
  if (/^\ufeff?%/.test(text)) problems.push(directive(mended));
  if (text.includes('<<<<<<<')) problems.push(...conflictMarkers(mended));
  if (/^(?:---|\.\.\.)/m.test(text)) problems.push(...secondDocument(mended));
  if (text.includes('\t')) problems.push(...tabs(mended));
  if (text.includes('?')) questionMarks(mended);
  problems.push(...missingDashes(mended));
  if (/^[ \t]*(?:- +)*-[A-Za-z]/m.test(text)) problems.push(...dashes(mended));
  if (/(?:^|[{,[\s])[a-zA-Z][\w-]*:(?=[^\s:/\\,}\]])/.test(text)) problems.push(...colons(mended));
  return problems;
}

/** `%YAML 1.2` and the like before the first key: blanked, with its `---`. */
function directive(mended: MendedText): Problem {
  const text = mended.original;
  let end = 0;
  for (const line of textLines(text)) {
    if (!line.idle && !/^\ufeff?[%]|^---[ \t]*$/.test(line.text)) break;
    if (!line.idle) end = line.end;
  }
  const start = text.indexOf('%');
  mended.blank({ start, end });
  const line = lineOf(text, start);
  const message = yamlMessage({ code: 'BAD_DIRECTIVE', message: '' }, text.slice(start, line.end).trim());
  return makeProblem('yaml-syntax', message, { start, end: line.end }, { data: { yaml: 'BAD_DIRECTIVE' } });
}

interface Conflict {
  readonly marks: readonly TextLine[];
  readonly ours: readonly TextLine[];
  readonly theirs: readonly TextLine[];
}

/** One finding for all conflicts of a file; our side is read. */
function conflictMarkers(mended: MendedText): Problem[] {
  const conflicts: Conflict[] = [];
  let current: {
    marks: TextLine[];
    ours: TextLine[];
    theirs: TextLine[];
    side: 'ours' | 'base' | 'theirs';
  } | null = null;
  for (const line of textLines(mended.original)) {
    if (/^<{7}(?:\s|$)/.test(line.text)) {
      current = { marks: [line], ours: [], theirs: [], side: 'ours' };
      conflicts.push(current);
    } else if (!current) continue;
    else if (/^\|{7}(?:\s|$)/.test(line.text)) mark(current, line, 'base');
    else if (/^={7}(?:\s|$)/.test(line.text)) mark(current, line, 'theirs');
    else if (/^>{7}(?:\s|$)/.test(line.text)) {
      current.marks.push(line);
      current = null;
    } else if (current.side === 'ours') current.ours.push(line);
    else if (current.side === 'theirs') current.theirs.push(line);
    else current.marks.push(line);
  }
  const first = conflicts[0]?.marks[0];
  if (!first) return [];
  for (const { marks, theirs } of conflicts) for (const line of [...marks, ...theirs]) mended.blank(line);
  const without = (lines: (c: Conflict) => readonly TextLine[]): TextChange[] =>
    conflicts
      .flatMap((c) => [...c.marks, ...lines(c)])
      .toSorted((a, b) => a.start - b.start)
      .map((line) => ({ span: { start: line.start, end: nextLine(mended.original, line.start) }, text: '' }));
  const fixes: Fix[] = [
    { title: 'Keep the upper side', changes: without((c) => c.theirs) },
    { title: 'Keep the lower side', changes: without((c) => c.ours) },
  ];
  const many = conflicts.length === 1 ? '' : ` in ${conflicts.length} places`;
  const message = `two versions of this file stand in it, left by a merge${many}; the upper one is read: keep one and remove the markers`;
  return [makeProblem('conflict-markers', message, first, { data: { conflicts: conflicts.length }, fixes })];
}

function mark(conflict: { marks: TextLine[]; side: string }, line: TextLine, side: 'base' | 'theirs'): void {
  conflict.marks.push(line);
  conflict.side = side;
}

/** Only the first document of a file is read. */
function secondDocument(mended: MendedText): Problem[] {
  let begun = false;
  let ended = false;
  for (const line of textLines(mended.original)) {
    const marker = /^\ufeff?---(?=\s|$)/.test(line.text);
    if (marker && !begun) {
      begun = /^\ufeff?---\s+[^#\s]/.test(line.text);
      continue;
    }
    if (/^\.\.\.(?=\s|$)/.test(line.text)) ended = true;
    else if (marker || (ended && !line.idle)) {
      const rest = mended.original.slice(marker ? line.end : line.start);
      mended.blank({ start: line.start, end: mended.original.length });
      if (!/^[ \t]*[^#\s]/m.test(rest)) return [];
      const message =
        'a second document begins here; one file holds one, and only the first is read: move this into a file of its own';
      const end = line.start + (marker ? 3 : line.text.length);
      return [makeProblem('more-than-one-document', message, { start: line.start, end })];
    }
    if (!line.idle && !line.text.startsWith('%')) begun = true;
  }
  return [];
}

/** Tabs before a key become the blanks that line it up with what is open above. */
function tabs(mended: MendedText): Problem[] {
  const { original } = mended;
  const lines = textLines(original);
  const seen: TextLine[] = [];
  const changes: TextChange[] = [];
  for (const line of lines) {
    let { indent } = line;
    const blanks = line.text.slice(0, indent);
    if (!line.idle && !line.block && blanks.includes('\t')) {
      const last = seen.findLast((l) => !l.idle && !l.block);
      const opens =
        last?.text
          .replace(/[ \t]+#.*$/, '')
          .trimEnd()
          .endsWith(':') ?? false;
      const widths = [2, 4, 8].map((width) => expanded(blanks, width));
      const list = line.text[indent] === '-';
      const open = openColumns(seen, list);
      const deeper = (open.at(-1) ?? 0) + (opens && !list ? 2 : 0);
      const fits = (c: number) => (opens ? (open.at(-1) ?? 0) < c : false) || open.includes(c);
      indent = widths.find(fits) ?? (opens ? deeper : (open.at(-1) ?? 0));
      const span = { start: line.start, end: line.start + line.indent };
      changes.push({ span, text: ' '.repeat(indent) });
      mended.mend(span.start, span.end, ' '.repeat(indent));
    }
    if (!line.idle && line.block && blanks.includes('\t')) {
      const span = { start: line.start, end: line.start + line.indent };
      const text = ' '.repeat(expanded(blanks, 2));
      changes.push({ span, text });
      mended.mend(span.start, span.end, text);
    }
    seen.push({ ...line, indent, text: ' '.repeat(indent) + line.text.slice(line.indent) });
    for (let i = line.indent; i < line.text.length; i++) {
      if (line.text[i] === '\t' && !line.block) mended.overwrite(line.start + i, ' ');
    }
  }
  const first = changes[0];
  if (!first) return [];
  const many = changes.length === 1 ? 'this line is' : `${changes.length} lines are`;
  const message = `${many} indented with tabs; spaces are wanted before a key`;
  const fixes = [{ title: 'Indent with spaces', changes, preferred: true }];
  return [makeProblem('tab-indentation', message, first.span, { data: { lines: changes.length }, fixes })];
}

function expanded(blanks: string, width: number): number {
  let column = 0;
  for (const c of blanks) column += c === '\t' ? width - (column % width) : 1;
  return column;
}

/** `length: ?` is a value nobody knows yet: it is read as none, where YAML would begin another key. */
function questionMarks(mended: MendedText): void {
  for (const match of mended.original.matchAll(/:[ \t]+(\?+)(?=[ \t]*(?:[,}\r\n]|[ \t]#|$))/g)) {
    mended.blank({
      start: match.index + match[0].length - (match[1]?.length ?? 0),
      end: match.index + match[0].length,
    });
  }
}

/** `-bearing: left`: without a blank after its dash an item is part of the text before it. */
function dashes(mended: MendedText): Problem[] {
  const problems: Problem[] = [];
  let above: TextLine | null = null;
  for (const line of textLines(mended.original)) {
    const match = line.idle || line.block ? null : /^([ \t]*(?:- +)*-)([A-Za-z][^\r\n]*)$/.exec(line.text);
    const listAbove = above !== null && /:[ \t]*(?:#.*)?$|^[ \t]*-/.test(above.text);
    if (match?.[1] !== undefined && (listAbove || (above?.indent ?? 0) > line.indent)) {
      const at = line.start + match[1].length;
      if (mended.mend(at, at, ' ')) {
        const message = `the dash of an item wants a space after it: - ${(match[2] ?? '').trim()}`;
        const fixes = [
          {
            title: 'Put a space after the dash',
            changes: [{ span: { start: at, end: at }, text: ' ' }],
            preferred: true,
          },
        ];
        problems.push(
          makeProblem(
            'yaml-syntax',
            message,
            { start: at - 1, end: line.end },
            { fixes, data: { slip: 'dash' } },
          ),
        );
      }
    }
    if (!line.idle && !line.block) above = line;
  }
  return problems;
}

/** `length:14`: without a blank after its colon a key is part of a text. Only words that are keys here are mended. */
function colons(mended: MendedText): Problem[] {
  const problems: Problem[] = [];
  for (const line of textLines(mended.original)) {
    if (line.idle || line.block) continue;
    const comment = /(?:^|[ \t])#/.exec(line.text)?.index ?? line.text.length;
    const quote = openQuote(line.text);
    for (const match of line.text.matchAll(
      /(^[ \t]*(?:- +)*|[{,[][ \t]*)([a-zA-Z][\w.-]*):(?=[^\s:/\\,}\]])/g,
    )) {
      const word = match[2] ?? '';
      const colon = match.index + match[0].length;
      if (comment < colon || (0 <= quote && quote < colon) || !isKnownKey(word)) continue;
      if (/^["']/.test(line.text.slice(colon)) && /[{,[]/.test(match[1] ?? '')) continue;
      const at = line.start + colon;
      if (!mended.mend(at, at, ' ')) continue;
      const span = { start: at - 1 - word.length, end: at };
      const message = `${word} wants a space after its colon: ${word}: ${/^[^,}\]#]*/.exec(line.text.slice(colon))?.[0].trim() ?? ''}`;
      const fix = replaceFix('Put a space after the colon', { start: at, end: at }, ' ');
      problems.push(
        makeProblem('yaml-syntax', message, span, { fixes: [fix], data: { slip: 'colon', key: word } }),
      );
    }
  }
  return problems;
}
