import type { YAMLMap } from 'yaml';
import { lineOf, newlineOf } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import type { Span, SpecPath } from './place.ts';
import { pairEnd } from './places.ts';
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
  if (kind) return `this ${kind}`;
  // A side alone does not tell which of the seats, flanges or cups it is.
  const name = String(path.at(-1));
  if (section === 'seat') return `seat ${String(path.at(-3))}.${name}`;
  return /^(?:left|right)$/.test(name) ? `${name} of ${String(path.at(-2))}` : name;
}

function insertFix(reader: Reader, { info, map, path }: Missing): Fix | null {
  const { yaml } = reader;
  const { text } = yaml;
  const first = map?.items[0];
  const last = map?.items.at(-1);
  if (!map || !first || !last) return null;
  const snippet = { title: `Add ${info.key}`, snippet: true, preferred: true } as const;
  if (map.flow) {
    const end = pairEnd(yaml, last);
    return { ...snippet, changes: [{ span: { start: end, end }, text: `, ${info.key}: $0` }] };
  }
  const at = lineOf(text, pairEnd(yaml, path.length === 0 ? last : first)).end;
  const key = nodeSpan(yaml, first.key)?.start ?? 0;
  const indent = ' '.repeat(path.length === 0 ? 0 : key - lineOf(text, key).start);
  const newline = newlineOf(text);
  const body = info.type === 'list' ? `${info.key}:${newline}${indent}  - $0` : `${info.key}: $0`;
  return { ...snippet, changes: [{ span: { start: at, end: at }, text: `${newline}${indent}${body}` }] };
}
