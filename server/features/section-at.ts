import type { SpecDocument } from '../spec/document.ts';
import type { SpecPath } from '../spec/place.ts';
import { sectionKeys } from '../spec/schema/catalogue.ts';
import { childSection } from '../spec/schema/child-section.ts';
import type { KeyInfo, SectionId } from '../spec/schema/key-info.ts';

/** The section a path stands in, when the path itself is a section: `['shell', 'seats', 'left']` is a seat. */
export function sectionAt(document: SpecDocument, path: SpecPath): SectionId | null {
  let section: SectionId | null = document.kind;
  for (let at = 0; at < path.length && section; at++) {
    section = into(document, section, path.slice(0, at + 1));
  }
  return section;
}

/** What is known of the key a path ends in; null for a name, an item, or a key nobody knows. */
export function keyAt(document: SpecDocument, path: SpecPath): KeyInfo | null {
  const key = path.at(-1);
  const section = typeof key === 'string' ? sectionAt(document, path.slice(0, -1)) : null;
  if (!section) return null;
  const own = sectionKeys(section).find((info) => info.key === key);
  const isAdded = path.at(-3) === 'add';
  return own ?? (isAdded ? sectionKeys('added').find((info) => info.key === key) : null) ?? null;
}

function into(document: SpecDocument, section: SectionId, path: SpecPath): SectionId | null {
  const step = path.at(-1);
  return typeof step === 'number' ? itemAt(document, path) : childSection(section, String(step));
}

function itemAt({ hub }: SpecDocument, path: SpecPath): SectionId | null {
  const same = (other: { readonly path: SpecPath }): boolean => samePath(other.path, path);
  const part =
    hub?.stack.find(same) ?? hub?.variants.flatMap(({ add }) => add.map((added) => added.part)).find(same);
  if (part) return `part:${part.kind}`;
  const beside = hub?.beside.find(same);
  return beside ? `beside:${beside.kind}` : null;
}

export function samePath(a: SpecPath, b: SpecPath): boolean {
  return a.length === b.length && a.every((step, at) => step === b[at]);
}

export function startsWith(path: SpecPath, start: SpecPath): boolean {
  return start.length <= path.length && start.every((step, at) => step === path[at]);
}
