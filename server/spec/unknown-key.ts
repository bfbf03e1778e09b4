import { besideKinds } from './beside-model.ts';
import { lineOf } from './lines.ts';
import { makeProblem } from './make-problem.ts';
import { stackKinds } from './model.ts';
import { nearestOf } from './nearest.ts';
import type { SpecPath } from './place.ts';
import type { Fix } from './problem.ts';
import { sectionKeys, sectionsWith } from './schema/catalogue.ts';
import type { SectionId } from './schema/key-info.ts';
import type { Entry, Reader } from './section-reader.ts';
import { isBroken } from './yaml-text.ts';

/** What people write for a key, in order of likelihood. */
const aliases: Readonly<Record<string, readonly string[]>> = {
  od: ['outside'],
  outer: ['outside'],
  id: ['inside', 'bore'],
  inner: ['inside', 'bore'],
  dia: ['diameter', 'outside', 'bore'],
  diameter: ['outside', 'bore'],
  old: ['width'],
  oln: ['width'],
  len: ['length'],
  l: ['length'],
  w: ['width'],
  thickness: ['length', 'width'],
  width: ['length'],
  length: ['width'],
  name: ['hub', 'wheel'],
  designation: ['code'],
  model: ['code'],
  dimensions: ['size'],
  mat: ['material'],
  temp: ['temperature'],
  pcd: ['circle'],
  shaft: ['journal'],
  housing: ['seat'],
  chamfer: ['fillet'],
  radius: ['fillet'],
  preload: ['clamp', 'set', 'force'],
  parts: ['stack'],
  note: ['notes'],
  comment: ['notes'],
  rev: ['revision'],
  tolerance: ['untoleranced'],
  tightening: ['torque'],
};

/**
 * Reports a key that the section does not take: a slip, a key of another section, or a part without its dash.
 * Gives the key that was probably meant.
 */
export function unknownKey(
  reader: Reader,
  entry: Entry,
  entries: readonly Entry[],
  path: SpecPath,
  section: SectionId,
  also: SectionId | null,
): string | null {
  const { key, keySpan } = entry;
  if (key === '<<' || isBroken(reader.yaml, keySpan)) return null;
  if (key.trim() === '') {
    const message = 'a value stands here without its key; write the key before the colon';
    reader.problems.push(makeProblem('unknown-key', message, keySpan, { data: { key, section, path } }));
    return null;
  }
  const keys = [...sectionKeys(section), ...(also ? sectionKeys(also) : [])].map((info) => info.key);
  const free = keys.filter((k) => !keysIn(entries).has(k));
  const data = { key, section, path };
  const dash = missingDash(reader, entry, section);
  if (dash) {
    reader.problems.push(dash);
    return null;
  }
  const near = nearestKey(key, free) ?? nearestKey(key, keys);
  const rename = (to: string): Fix => ({
    title: `Rename ${key} to ${to}`,
    changes: [{ span: keySpan, text: to }],
    preferred: true,
  });
  const homes = sectionsWith(key).filter((home) => fileOf(home) === fileOf(section));
  if (homes.length !== 0 && !(near && aliasesOf(key).includes(near))) {
    const here = sectionName(section);
    const message = `${key} belongs in ${homeNames(homes)}, not in ${here}; ${here} takes ${listed(keys)}`;
    reader.problems.push(makeProblem('key-out-of-place', message, keySpan, { data: { ...data, homes } }));
    return null;
  }
  const hint = near ? `; nearest is ${near}` : ` of ${sectionName(section)}; it takes ${listed(keys)}`;
  const message = near ? `${key} is no key of ${sectionName(section)}${hint}` : `${key} is no key${hint}`;
  const fixes = near && free.includes(near) ? [rename(near)] : [];
  reader.problems.push(
    makeProblem('unknown-key', message, keySpan, {
      data: near ? { ...data, suggestion: near } : data,
      fixes,
    }),
  );
  return near;
}

const aliasesOf = (word: string): readonly string[] =>
  Object.hasOwn(aliases, word.toLowerCase()) ? (aliases[word.toLowerCase()] ?? []) : [];

/** The keys of each list of entries, worked out once: a section may hold thousands that are unknown. */
const known = new WeakMap<readonly Entry[], ReadonlySet<string>>();

function keysIn(entries: readonly Entry[]): ReadonlySet<string> {
  const keys = known.get(entries) ?? new Set(entries.map((entry) => entry.key));
  known.set(entries, keys);
  return keys;
}

/** The key meant by a word: a usual other name, or the nearest spelling; `from_centre` and `fromCentre` are `from-centre`. */
export function nearestKey(word: string, keys: readonly string[]): string | null {
  const alias = aliasesOf(word).find((key) => keys.includes(key));
  if (alias) return alias;
  const kebab = word
    .replace(/([a-z])([A-Z])/g, '$1-$2')
    .replace(/[_\s]+/g, '-')
    .toLowerCase();
  return keys.find((key) => key === kebab) ?? nearestOf(kebab, keys);
}

/** The kind of file a section belongs to. */
const fileOf = (section: SectionId): string => /^(?:workshop|wheel)\b/.exec(section)?.[0] ?? 'hub';

/** What a section is called in a message. */
export function sectionName(section: SectionId): string {
  const [group, kind] = section.split(':');
  if (section === 'hub' || section === 'wheel' || section === 'workshop')
    return `the top level of a ${section} file`;
  if (kind === undefined || group === 'housing') return withArticle(kind ?? section);
  return withArticle(kind.replace(/-(?=side$)/, ' '));
}

function withArticle(word: string): string {
  if (
    /^(?:shell|freehub|axle|clamp|duty|stack|stock|defaults|limits|rim|lacing|spokes|nipples|tension|rider)$/.test(
      word,
    )
  )
    return word;
  return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}

const homeNames = (homes: readonly SectionId[]): string => {
  const names = [...new Set(homes.map(sectionName))];
  return names.length <= 3 ? names.join(' or ') : `${names.slice(0, 2).join(', ')} and others`;
};

const listed = (keys: readonly string[]): string =>
  keys.length <= 8 ? keys.join(', ') : `${keys.slice(0, 8).join(', ')} …`;

/** `bearing: left` among the keys of another part: the dash before it was left out. */
function missingDash(reader: Reader, entry: Entry, section: SectionId) {
  const kinds: readonly string[] = section.startsWith('part:')
    ? stackKinds
    : section.startsWith('beside:')
      ? besideKinds
      : [];
  if (!kinds.includes(entry.key)) return null;
  const { text } = reader.yaml;
  const line = lineOf(text, entry.keySpan.start);
  const indent = text.slice(line.start, entry.keySpan.start);
  const fixes: Fix[] = [];
  if (/^ {2,}$/.test(indent)) {
    const span = { start: entry.keySpan.start - 2, end: entry.keySpan.start };
    fixes.push({ title: `Put a dash before ${entry.key}`, changes: [{ span, text: '- ' }], preferred: true });
  }
  const message = `${entry.key} begins a part of its own: a dash is wanted before it, as in - ${entry.key}: ${entry.written ?? 'left'}`;
  return makeProblem('key-out-of-place', message, entry.keySpan, {
    data: { key: entry.key, section },
    fixes,
  });
}
