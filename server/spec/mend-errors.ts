import type { YAMLError } from 'yaml';
import { makeProblem, replaceFix } from './make-problem.ts';
import type { MendedText } from './mended-text.ts';
import type { Span } from './place.ts';
import type { Problem } from './problem.ts';
import { isKnownKey } from './schema/known-keys.ts';
import { openColumns, openQuote, type TextLine, textLines } from './text-lines.ts';
import { yamlMessage } from './yaml-message.ts';

/** What an error of the parser came from, mended for another try. */
export interface Mending {
  /** Null for what is only half-typed. */
  readonly problem: Problem | null;
  /** Where what is missing may only seem so; null where nothing was lost. */
  readonly broken: Span | null;
}

/** Slips mended in one round: a file with more is not one that somebody is writing. */
const most = 20;

/**
 * Looks for the slip behind each error, near its line, and mends the text the parser sees. Errors come in the order
 * of the text; one that shows no slip gives nothing and stays.
 */
export function mendErrors(mended: MendedText, errors: readonly YAMLError[]): Mending[] {
  const lines = textLines(mended.original);
  const done: Mending[] = [];
  const quotes = unclosedQuotes(mended, lines, errors);
  if (0 < quotes.length) return quotes;
  const brackets = unclosedBrackets(mended, lines);
  if (0 < brackets.length) return brackets;
  for (const error of errors.slice(0, 2 * most)) {
    if (most <= done.length) break;
    const at = mended.at(error.pos[0]);
    const index = lines.findLastIndex((line) => line.start <= at);
    const line = lines[index];
    if (!line) continue;
    const mending = mendOne(mended, lines, index, at, error);
    if (!mending) continue;
    done.push(mending);
    // After a bracket too many the parser gives up: what follows comes from it.
    if (mending.problem?.data['slip'] === 'bracket') break;
  }
  return done;
}

function mendOne(
  mended: MendedText,
  lines: readonly TextLine[],
  index: number,
  at: number,
  error: YAMLError,
): Mending | null {
  const line = lines[index];
  if (!line) return null;
  if (wordsOf(line) === null && /^[ \t]*-/.test(line.text)) {
    mended.blank(line);
    return { problem: null, broken: { start: line.start + line.indent, end: line.end } };
  }
  if (error.code === 'UNEXPECTED_TOKEN' && /[}\]]/.test(mended.original[at] ?? ''))
    return strayBracket(mended, at);
  if (error.code === 'UNEXPECTED_TOKEN' && !error.message.includes('at node end') && at < line.end) {
    return unexpected(mended, line, at, error);
  }
  if (
    error.code === 'MULTILINE_IMPLICIT_KEY' ||
    (error.code === 'MISSING_CHAR' && error.message.includes('map values'))
  ) {
    const words = wordsOf(line);
    if (words && !/:(?:\s|$)/.test(words.text)) return noColon(mended, line, words);
  }
  if (error.code === 'BLOCK_AS_IMPLICIT_KEY' || error.code === 'MULTILINE_IMPLICIT_KEY') {
    return secondColon(mended, line, at) ?? badIndent(mended, lines, index + 1);
  }
  if (error.code === 'BAD_INDENT' && !/Flow/.test(error.message)) return badIndent(mended, lines, index);
  if (error.code === 'MISSING_CHAR' && error.message.includes('- indicator'))
    return badIndent(mended, lines, index);
  return null;
}

/** Reported at the quote, which is read as if it were not there. */
function unclosedQuotes(
  mended: MendedText,
  lines: readonly TextLine[],
  errors: readonly YAMLError[],
): Mending[] {
  const certain = errors.some((e) => e.code === 'MISSING_CHAR' && e.message.includes('quote'));
  const first = mended.at(errors[0]?.pos[0] ?? 0);
  for (const [i, line] of lines.entries()) {
    if (line.idle || line.block) continue;
    const quote = openQuote(mended.text === mended.original ? line.text : overwritten(mended, line));
    if (quote < 0) continue;
    const next = lines[i + 1];
    if (!certain && (first < line.start || !next || !/^\s*(?:- +)?[\w.-]+:(?:\s|$)/.test(next.text)))
      continue;
    const at = line.start + quote;
    mended.overwrite(at, ' ');
    const sign = line.text[quote] ?? '"';
    const inFlow = /[{[][^}\]]*$/.test(line.text.slice(0, quote));
    const rest = line.text.replace(/[ \t]+#.*$/, '').trimEnd();
    const stop = inFlow ? rest.slice(quote).search(/\s*[,}\]]/) : -1;
    const end = stop < 0 ? line.start + rest.length : at + stop;
    const message = `the quote opened here is not closed; close it on the same line: ${mended.original.slice(at, end)}${sign}`;
    const problem = makeProblem(
      'yaml-syntax',
      message,
      { start: at, end: at + 1 },
      {
        data: { slip: 'quote' },
        fixes: [
          { title: 'Close the quote', changes: [{ span: { start: end, end }, text: sign }], preferred: true },
        ],
      },
    );
    return [{ problem, broken: { start: at, end } }];
  }
  return [];
}

function overwritten(mended: MendedText, line: TextLine): string {
  const text = mended.seen(line);
  return text.length === line.text.length ? text : line.text;
}

/** What stands where nothing can stand is passed over to the end of its line. */
function unexpected(mended: MendedText, line: TextLine, at: number, error: YAMLError): Mending | null {
  if (mended.seen({ start: at, end: line.end }).trim() === '') return null;
  const word = /^[^\s,}\]]*/.exec(mended.original.slice(at, line.end))?.[0] ?? '';
  mended.blank({ start: at, end: line.end });
  const span = { start: at, end: at + Math.max(1, word.length) };
  const problem = makeProblem('yaml-syntax', yamlMessage(error, word), span, {
    data: { yaml: error.code, slip: 'bracket' },
  });
  return { problem, broken: { start: at, end: line.end } };
}

/** A bracket left open before lines that are plainly a block of their own: it is closed at the end of its line. */
function unclosedBrackets(mended: MendedText, lines: readonly TextLine[]): Mending[] {
  const done: Mending[] = [];
  for (const [i, line] of lines.entries()) {
    if (line.idle || line.block || most <= done.length) continue;
    const open = bracketsLeft(mended.seen(line));
    const next = lines.find((l, j) => i < j && !l.idle);
    if (
      open.length === 0 ||
      open[0] === -1 ||
      (next && !/^[ \t]*(?:- |[\w.-]+:(?:\s|$))[^\r\n]*(?<!,\s*)$/.test(next.text))
    )
      continue;
    if (next && bracketsLeft(next.text)[0] === -1) continue;
    const end = line.start + line.text.replace(/(?:^|[ \t]+)#.*$/, '').trimEnd().length;
    const closing = open.map((at) => (line.text[at] === '{' ? '}' : ']')).toReversed();
    const text = ` ${closing.join(' ')}`;
    if (!mended.mend(end, end, text)) continue;
    const start = line.start + (open[0] ?? 0);
    const message = `the bracket opened here is not closed; ${closing.join(' ')} is wanted at its end`;
    const fixes = [
      {
        title: `Close it with ${closing.join(' ')}`,
        changes: [{ span: { start: end, end }, text }],
        preferred: true,
      },
    ];
    const problem = makeProblem(
      'yaml-syntax',
      message,
      { start, end: start + 1 },
      { fixes, data: { slip: 'open-bracket' } },
    );
    done.push({ problem, broken: null });
  }
  return done;
}

/** Where brackets stand in a line that it does not close; -1 alone where it closes one it did not open. */
function bracketsLeft(line: string): number[] {
  const open: number[] = [];
  let quote = '';
  for (let i = 0; i < line.length; i++) {
    const c = line[i] ?? '';
    if (quote !== '') {
      if (c === quote) quote = '';
    } else if ((c === '"' || c === "'") && /[\s[{,]/.test(line[i - 1] ?? ' ')) quote = c;
    else if (c === '#' && /\s/.test(line[i - 1] ?? ' ')) break;
    else if ((c === '{' || c === '[') && (0 < open.length || /^\s*$|[:\-?]\s+$/.test(line.slice(0, i))))
      open.push(i);
    else if ((c === '}' || c === ']') && open.pop() === undefined) return [-1];
  }
  return open;
}

function strayBracket(mended: MendedText, at: number): Mending {
  const sign = mended.original[at] ?? '}';
  mended.overwrite(at, ' ');
  const span = { start: at, end: at + 1 };
  const message = `${sign} closes a bracket that was not opened; remove it`;
  return {
    problem: makeProblem('yaml-syntax', message, span, {
      data: { slip: 'bracket' },
      fixes: [replaceFix(`Remove ${sign}`, span, '')],
    }),
    broken: span,
  };
}

/** `length 14` wants a colon; a word alone is a key being typed and is passed over. */
function noColon(
  mended: MendedText,
  line: TextLine,
  words: { readonly start: number; readonly text: string },
): Mending | null {
  const match = /^([\w.-]+)([ \t]+)(\S.*)$/.exec(words.text);
  const span = { start: words.start, end: words.start + words.text.length };
  if (match?.[1] && isKnownKey(match[1])) {
    const at = words.start + match[1].length;
    if (!mended.mend(at, at, ':')) return null;
    const message = `${match[1]} wants a colon after it: ${match[1]}: ${match[3] ?? ''}`;
    const fix = replaceFix('Put a colon after it', { start: at, end: at }, ':');
    return {
      problem: makeProblem('yaml-syntax', message, span, { data: { slip: 'colon' }, fixes: [fix] }),
      broken: null,
    };
  }
  const known = isKnownKey(words.text);
  if (known && !mended.mend(span.end, span.end, ':')) return null;
  if (!known) mended.blank({ start: words.start, end: line.end });
  const message = `${words.text} has no value yet; a colon, a space and a value are wanted after it`;
  return { problem: makeProblem('yaml-syntax', message, span, { data: { slip: 'no-value' } }), broken: span };
}

/** `notes: see: there`: the value is read whole. */
function secondColon(mended: MendedText, line: TextLine, at: number): Mending | null {
  const from = at - line.start;
  const colon = /:(?=[ \t]|$)/.exec(mended.seen(line).slice(from));
  if (!colon || from <= line.indent) return null;
  const place = at + colon.index;
  const end = line.start + line.text.replace(/[ \t]+#.*$/, '').trimEnd().length;
  if (end <= at) return null;
  mended.overwrite(place, '.');
  const value = mended.original.slice(at, end);
  const message =
    'a second colon stands in this line; put the value in quotes, or begin the key on a line of its own';
  const fix = replaceFix('Put the value in quotes', { start: at, end }, `'${value.replaceAll("'", "''")}'`);
  return {
    problem: makeProblem(
      'yaml-syntax',
      message,
      { start: place, end: place + 1 },
      { data: { slip: 'second-colon' }, fixes: [fix] },
    ),
    broken: { start: at, end },
  };
}

/** A line, with all that is as far in, moved to the nearest column that is open. */
function badIndent(mended: MendedText, lines: readonly TextLine[], from: number): Mending | null {
  const index = lines.findIndex((line, i) => from <= i && !line.idle && !line.block);
  const line = lines[index];
  if (!line || line.text.slice(0, line.indent).includes('\t')) return null;
  const isItem = line.text.startsWith('- ', line.indent);
  const open = openColumns(lines.slice(0, index), isItem);
  const wanted = open.toSorted((a, b) => Math.abs(a - line.indent) - Math.abs(b - line.indent) || b - a)[0];
  if (wanted === undefined || wanted === line.indent) return null;
  const changes = [];
  for (const each of lines.slice(index)) {
    if (each.idle) continue;
    if (
      each.indent < line.indent ||
      (each !== line && each.text.startsWith('- ', each.indent) && each.indent === line.indent && !isItem)
    )
      break;
    const span = { start: each.start, end: each.start + each.indent };
    const text = ' '.repeat(Math.max(0, each.indent + wanted - line.indent));
    if (mended.mend(span.start, span.end, text)) changes.push({ span, text });
  }
  if (changes.length === 0) return null;
  const words = wordsOf(line);
  const key = /^[^\s:]+/.exec(words?.text.replace(/^(?:- +)+/, '') ?? '')?.[0] ?? '';
  const message = `${key === '' ? 'this line' : key} is indented by ${line.indent}, wanted ${wanted} to line up with what is above it`;
  const start = line.start + line.indent;
  const fixes = [{ title: `Indent by ${wanted}`, changes, preferred: true }];
  const problem = makeProblem(
    'yaml-syntax',
    message,
    { start, end: start + Math.max(key.length, 1) },
    { data: { slip: 'indent' }, fixes },
  );
  return { problem, broken: null };
}

/** What a line says, without its indentation, dashes and comment. */
function wordsOf(line: TextLine): { readonly start: number; readonly text: string } | null {
  const head = /^[ \t]*(?:- +)*/.exec(line.text)?.[0].length ?? 0;
  const text = line.text
    .slice(head)
    .replace(/(?:^|[ \t]+)#.*$/, '')
    .trimEnd();
  return text === '' ? null : { start: line.start + head, text };
}
