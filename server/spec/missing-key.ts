import type { YAMLMap } from 'yaml';
import { lineOf } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import type { Span, SpecPath } from './place.ts';
import type { Fix } from './problem.ts';
import type { KeyInfo, SectionId } from './schema/key-info.ts';
import type { Entry, Reader } from './section-reader.ts';
import { nodeSpan } from './yaml-text.ts';

interface Missing {
  readonly info: Pick<KeyInfo, 'key' | 'title' | 'description' | 'examples' | 'type'>;
  readonly entries: readonly Entry[];
  readonly map: YAMLMap<unknown, unknown> | null;
  readonly path: SpecPath;
  readonly section: SectionId;
  readonly head: Span | undefined;
}

/** Reports a key that must stand in a section, unless the section's own text is broken. */
export function missingKey(reader: Reader, missing: Missing): void {
  const { info, map, entries, path, section } = missing;
  const { yaml } = reader;
  if (entries.some((entry) => entry.key === '<<')) return;
  const inside = map ? nodeSpan(yaml, map) : null;
  const whole = path.length === 0 ? { start: 0, end: yaml.text.length } : inside;
  if (whole && yaml.broken.some((b) => b.start <= whole.end && whole.start <= b.end)) return;
  const first = entries[0];
  const span = missing.head ?? first?.keySpan ?? { start: 0, end: 0 };
  const example = info.examples[0] === undefined ? '' : `, such as ${info.key}: ${info.examples[0]}`;
  const where =
    path.length === 0
      ? 'the file'
      : String(path.at(-1) === undefined ? 'the section' : whereName(section, path));
  const message = `${info.key} is missing in ${where}${info.type === 'list' ? '' : example}`;
  const fix = insertFix(reader, missing);
  reader.problems.push(
    makeProblem('missing-key', message, span, {
      data: { key: info.key, section, path },
      fixes: fix ? [fix] : [],
    }),
  );
}

function whereName(section: SectionId, path: SpecPath): string {
  const kind = /^(?:part|beside):(.*)$/.exec(section)?.[1];
  return kind ? `this ${kind}` : String(path.at(-1));
}

function insertFix(reader: Reader, { info, map, entries, path }: Missing): Fix | null {
  const { text } = reader.yaml;
  const title = `Add ${info.key}`;
  const snippet = { title, snippet: true, preferred: true } as const;
  const value = info.type === 'list' ? '' : ' $0';
  const last = entries.at(-1);
  if (!last || !map) return null;
  if (map.flow) {
    const end = last.valueSpan?.end ?? last.keySpan.end;
    return { ...snippet, changes: [{ span: { start: end, end }, text: `, ${info.key}:${value || ' $0'}` }] };
  }
  const anchor = path.length === 0 ? last : (entries[0] ?? last);
  const line = lineOf(text, lineEndOf(reader, anchor));
  const column = anchor.keySpan.start - lineOf(text, anchor.keySpan.start).start;
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  const indent = ' '.repeat(column);
  const body = info.type === 'list' ? `${info.key}:${newline}${indent}  - $0` : `${info.key}:${value}`;
  return {
    ...snippet,
    changes: [{ span: { start: line.end, end: line.end }, text: `${newline}${indent}${body}` }],
  };
}

/** Where the entry's last line with text ends. */
function lineEndOf(reader: Reader, entry: Entry): number {
  const end = entry.valueSpan?.end ?? entry.keySpan.end;
  const text = reader.yaml.text.slice(entry.keySpan.start, Math.max(end, entry.keySpan.end));
  return entry.keySpan.start + text.trimEnd().length;
}
