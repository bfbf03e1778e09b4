import { type Hover, MarkupKind, type Position } from 'vscode-languageserver-types';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { bearingWords } from './hover-bearing.ts';
import { dimensionWords } from './hover-dimension.ts';
import { keyWords, kindHover } from './hover-key.ts';
import { mechanicsWords } from './hover-mechanics.ts';
import { referenceWords } from './hover-reference.ts';
import { paragraphs } from './markdown.ts';
import { positionsOf } from './positions.ts';
import { keyAt } from './section-at.ts';

/** What is known of the key or the value under the cursor; null where nothing is. */
export function hover(snapshot: Snapshot, at: Position): Hover | null {
  const { document } = snapshot;
  const positions = positionsOf(document);
  const found = document.pathAt(positions.offset(at));
  if (!found) return null;
  const said = words(snapshot, found.path, found.part);
  const value = found.part === 'value' ? paragraphs(said, ...mechanicsWords(snapshot, found.path)) : said;
  if (!value) return null;
  const range = positions.range(document.span(found.path, found.part));
  return { contents: { kind: MarkupKind.Markdown, value }, range };
}

function words(snapshot: Snapshot, path: SpecPath, part: 'key' | 'value'): string | null {
  const { document } = snapshot;
  const info = keyAt(document, path);
  if (part === 'key')
    return info ? keyWords(info) : (kindHover(path) ?? referenceWords(snapshot, path, String(path.at(-1))));
  if (!info) return kindHover(path) ?? referenceWords(snapshot, path, writtenAt(snapshot, path));
  switch (info.type) {
    case 'code':
    case 'size':
      return bearingWords(snapshot, path) ?? keyWords(info);
    case 'length':
    case 'bore':
    case 'shaft':
    case 'offset':
      return dimensionWords(snapshot, path, info) ?? keyWords(info);
    case 'seat':
    case 'address':
    case 'file':
      return referenceWords(snapshot, path, writtenAt(snapshot, path)) ?? keyWords(info);
    default:
      return keyWords(info);
  }
}

function writtenAt({ document }: Snapshot, path: SpecPath): string {
  const { start, end } = document.span(path);
  return document.text.slice(start, end).replace(/^(["'])(.*)\1$/, '$2');
}
