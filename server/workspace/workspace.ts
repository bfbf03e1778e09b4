import { type Analysis, analyze, type Surroundings } from '../analysis/analyze.ts';
import { checks } from '../checks/registry.ts';
import { type Findings, runChecks } from '../checks/run.ts';
import type { SpecDocument } from '../spec/document.ts';
import { readSpec, specKindOf } from '../spec/read-spec.ts';
import { folderOf, isInside, nameOf } from './location.ts';
import { type FileView, followReferences } from './references.ts';

/** A file as everything else sees it at one moment. */
export interface Snapshot {
  readonly file: string;
  readonly document: SpecDocument;
  readonly analysis: Analysis;
  readonly findings: Findings;
}

/** The files of a session: the only mutable object there is. Files are known by URI or absolute path. */
export interface Workspace {
  /** Folders that bound references and the search for workshop files. */
  setRoots(roots: readonly string[]): void;
  /** The text on disk; null when the file is gone. */
  setFile(file: string, text: string | null): void;
  /** The text in an editor, which hides the one on disk until closed. */
  open(file: string, text: string): void;
  close(file: string): void;
  files(): readonly string[];
  has(file: string): boolean;
  text(file: string): string | null;
  /** Null for a file that is no spec or is not there. Worked out once for each text and surroundings. */
  snapshot(file: string): Snapshot | null;
  /** Open or known files whose findings may change when this one does. */
  dependents(file: string): readonly string[];
}

interface Entry {
  disk: string | null;
  editor: string | null;
  document: SpecDocument | null;
}

/** A workspace with no files. */
export function createWorkspace(): Workspace {
  const entries = new Map<string, Entry>();
  const snapshots = new Map<string, { readonly snapshot: Snapshot; readonly from: readonly unknown[] }>();
  let roots: readonly string[] = [];

  const entry = (file: string): Entry => {
    const known = entries.get(file);
    if (known) return known;
    const made: Entry = { disk: null, editor: null, document: null };
    entries.set(file, made);
    return made;
  };
  const textOf = (item: Entry | undefined): string | null => item?.editor ?? item?.disk ?? null;
  const forget = (file: string, item: Entry): void => {
    item.document = null;
    // What was made of the old text makes room before the new one is read.
    snapshots.delete(file);
    if (textOf(item) === null) entries.delete(file);
  };
  const read = (file: string): SpecDocument | null => {
    const item = entries.get(file);
    const text = textOf(item);
    const kind = specKindOf(nameOf(file));
    if (!item || text === null || !kind) return null;
    item.document ??= readSpec(text, kind);
    return item.document;
  };
  const view: FileView = {
    read,
    files: () => entries.keys(),
    get roots() {
      return roots;
    },
  };
  const workshopsFor = (file: string): Surroundings['workshops'] => {
    const root = roots.find((folder) => isInside(folder, file));
    return [...entries.keys()]
      .filter((other) => other !== file && specKindOf(nameOf(other)) === 'workshop')
      .filter((other) => isInside(folderOf(other), file) && (root === undefined || isInside(root, other)))
      .sort((a, b) => folderOf(b).length - folderOf(a).length || (a < b ? -1 : 1))
      .flatMap((other) => {
        const document = read(other);
        return document ? [{ file: other, document }] : [];
      });
  };
  const snapshot = (file: string): Snapshot | null => {
    const document = read(file);
    if (!document) return null;
    const workshops = workshopsFor(file);
    const references = followReferences(file, document, view);
    const from: readonly unknown[] = [
      document,
      ...workshops.map((item) => item.document),
      ...references.map(({ state }) => (state.kind === 'found' ? state.document : JSON.stringify(state))),
    ];
    const known = snapshots.get(file);
    if (known && known.from.length === from.length && from.every((item, at) => item === known.from[at])) {
      return known.snapshot;
    }
    const analysis = analyze(document, { workshops, references });
    const made = { file, document, analysis, findings: runChecks(analysis, checks) };
    snapshots.set(file, { snapshot: made, from });
    return made;
  };

  return {
    setRoots: (folders) => {
      roots = folders.map((folder) => folder.replace(/\/+$/, ''));
      snapshots.clear();
    },
    setFile: (file, text) => {
      const item = entry(file);
      if (item.disk === text && text !== null) return;
      item.disk = text;
      if (item.editor === null) forget(file, item);
    },
    open: (file, text) => {
      const item = entry(file);
      if (item.editor === text) return;
      item.editor = text;
      forget(file, item);
    },
    close: (file) => {
      const item = entries.get(file);
      if (!item) return;
      item.editor = null;
      forget(file, item);
    },
    files: () => [...entries.keys()],
    has: (file) => entries.has(file),
    text: (file) => textOf(entries.get(file)),
    snapshot,
    dependents: (file) => {
      const kind = specKindOf(nameOf(file));
      if (kind === 'wheel') return [];
      return [...entries.keys()].filter((other) => {
        if (other === file) return false;
        if (kind === 'workshop') return isInside(folderOf(file), other);
        return followReferences(other, read(other) ?? emptyDocument, view).some(
          ({ state }) => state.kind === 'found' && state.file === file,
        );
      });
    },
  };
}

const emptyDocument = readSpec('', 'hub');
