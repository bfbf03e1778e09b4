import { fitClassesFor, parseFitClass, toleranceZone } from '../engine/fits/tolerance-zone.ts';
import { materials } from '../engine/tables/materials.ts';
import type { Cursor } from '../spec/cursor.ts';
import { sectionKeys } from '../spec/schema/catalogue.ts';
import type { KeyInfo } from '../spec/schema/key-info.ts';
import { folderOf, isInside, relativeTo } from '../workspace/location.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { codeSuggestions, sizeSuggestions } from './complete-codes.ts';
import { diameterNominals, lengthSuggestions, widthSuggestions } from './complete-lengths.ts';
import { nameFrom } from './complete-skeleton.ts';
import type { Suggestion } from './completion-item.ts';
import { signedWhole } from './markdown.ts';

/** What a key takes: words, codes, addresses, or a number with its tolerance. */
export function valueSuggestions(
  snapshot: Snapshot,
  cursor: Cursor,
  files: readonly string[],
): readonly Suggestion[] {
  const info = infoOf(cursor);
  if (!info) return cursor.section === 'remove' ? addresses(snapshot) : [];
  switch (info.type) {
    case 'choice':
      return (info.choices ?? []).map((choice) => value(choice));
    case 'code':
      return codeSuggestions(snapshot, cursor);
    case 'size':
      return sizeSuggestions(snapshot, cursor);
    case 'seat':
      return seats(snapshot);
    case 'address':
      return addresses(snapshot);
    case 'material':
      return materialNames(snapshot).map((name) => value(name));
    case 'bore':
    case 'shaft':
      return fits(snapshot, cursor, info);
    case 'length':
      return info.key === 'width' && cursor.section === 'hub'
        ? widthSuggestions(snapshot, cursor, info)
        : lengthSuggestions(snapshot, cursor, info);
    case 'file':
      return hubFiles(snapshot, files);
    case 'name':
      return nameFrom(snapshot.file) === '' ? [] : [value(nameFrom(snapshot.file))];
    default:
      return info.examples.map((example) => value(example, 'for example'));
  }
}

function infoOf(cursor: Cursor): KeyInfo | null {
  const find = (section: Cursor['section']): KeyInfo | undefined =>
    sectionKeys(section).find(({ key }) => key === cursor.key);
  return find(cursor.section) ?? find('added') ?? null;
}

function value(text: string, detail?: string): Suggestion {
  return { label: text, text: text.replace(/[\\$}]/g, '\\$&'), kind: 'value', ...(detail ? { detail } : {}) };
}

function seats({ document, analysis }: Snapshot): readonly Suggestion[] {
  const housings = [document.hub?.shell, document.hub?.freehub].flatMap((housing) => housing ?? []);
  const assembly = analysis.variants[0]?.assembly;
  const full = new Set(
    [assembly?.shell, assembly?.freehub]
      .flatMap((housing) => housing?.seats ?? [])
      .filter(({ bearings }) => bearings.length > 0)
      .map(({ address }) => address),
  );
  return housings
    .flatMap((housing) => housing.seats)
    .toSorted((a, b) => Number(full.has(a.address)) - Number(full.has(b.address)))
    .map(({ address, values }) => ({
      label: address,
      text: address,
      kind: 'name',
      detail: [
        values.bore && `bore ${values.bore.value.written}`,
        full.has(address) && 'holds a bearing already',
      ]
        .filter(Boolean)
        .join(', '),
    }));
}

function addresses({ document }: Snapshot): readonly Suggestion[] {
  return (document.hub?.stack ?? []).map((part) => ({
    label: part.address,
    text: part.address,
    kind: 'name',
    detail: part.values.length?.value.written ?? part.values.code?.value ?? '',
  }));
}

function materialNames({ analysis }: Snapshot): readonly string[] {
  const own = Object.keys(analysis.workshop?.materials ?? {});
  const known = Object.entries(materials)
    .filter(([, { use }]) => use === 'part')
    .map(([name]) => name);
  return [...new Set([...own, ...known])];
}

/** `26 N7` with its limits: the classes of the number that stands there, or of what sits in it or on it. */
function fits(snapshot: Snapshot, cursor: Cursor, info: KeyInfo): readonly Suggestion[] {
  const written = /^(\d+(?:\.\d+)?)\b/.exec(cursor.typed)?.[1];
  const nominals = written === undefined ? diameterNominals(snapshot, cursor, info) : [written];
  const kind = info.type === 'bore' ? 'hole' : 'shaft';
  const classed = nominals.flatMap((nominal) =>
    fitClassesFor(kind).flatMap((name): readonly Suggestion[] => {
      const fit = parseFitClass(name);
      const zone = fit ? toleranceZone(Number(nominal), fit) : { error: '' };
      if ('error' in zone) return [];
      const detail = `${signedWhole(zone.upper * 1000)}/${signedWhole(zone.lower * 1000)} µm`;
      return [{ label: `${nominal} ${name}`, text: `${nominal} ${name}`, kind: 'value', detail }];
    }),
  );
  if (classed.length > 0) return classed;
  return info.examples.map((example) => value(example, 'for example'));
}

function hubFiles({ file }: Snapshot, files: readonly string[]): readonly Suggestion[] {
  const folder = folderOf(file);
  return files
    .filter((other) => /\.hub\.ya?ml$/i.test(other) && isInside(folder, other))
    .map((other) => {
      const written = `./${relativeTo(folder, other)}`;
      return { label: written, text: written.replace(/[\\$}]/g, '\\$&'), kind: 'file' };
    });
}
