import { type Dirent, existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { specKindOf } from '../spec/read-spec.ts';
import { folderOf, isInside, nameOf, resolveReference } from '../workspace/location.ts';
import { createWorkspace, type Snapshot, type Workspace } from '../workspace/workspace.ts';

/** A file to look at, under the name it was asked for by. */
export interface NamedFile {
  readonly path: string;
  /** Its key in the workspace: the absolute path with slashes. */
  readonly file: string;
}

/** The files a command line names, read, with everything around them that they need. */
export interface NamedFiles {
  readonly workspace: Workspace;
  readonly files: readonly NamedFile[];
  /** Paths that could not be read, with the reason. */
  readonly unread: readonly { readonly path: string; readonly message: string }[];
}

/**
 * Reads the named files, and the spec files below the named folders. Around each file its workspace is the nearest
 * folder above with a `.git`, else its own folder: workshop files up to there, and what wheel files name, are read too.
 */
export function readNamed(paths: readonly string[], cwd: string): NamedFiles {
  const found = new Map<string, NamedFile>();
  const unread: { path: string; message: string }[] = [];
  const roots = new Set<string>();
  for (const path of paths) {
    const place = slashed(resolve(cwd, path));
    const kind = kindOf(place);
    if (kind === null) {
      unread.push({ path, message: `${path} is not there` });
    } else if (kind === 'folder') {
      roots.add(rootOf(place));
      for (const below of specsBelow(place)) add(found, slashed(join(path, below)), `${place}/${below}`);
    } else if (specKindOf(nameOf(place)) === null) {
      const names = 'NAME.hub.yaml, NAME.wheel.yaml, NAME.workshop.yaml';
      unread.push({ path, message: `${path} is no spec file by its name; they are called ${names}` });
    } else {
      roots.add(rootOf(folderOf(place)));
      add(found, slashed(path), place);
    }
  }
  const workspace = createWorkspace();
  // The innermost workspace a file lies in is its own.
  workspace.setRoots([...roots].sort((a, b) => b.length - a.length));
  const files = [...found.values()].filter(({ path, file }) => {
    const read = readText(file);
    if (typeof read !== 'string') unread.push({ path, message: `${path} cannot be read: ${read.reason}` });
    else workspace.setFile(file, read);
    return typeof read === 'string';
  });
  readAround(workspace, files, [...roots]);
  return { workspace, files: files.sort((a, b) => (a.path < b.path ? -1 : 1)), unread };
}

/** What the workshop files say that hold for a spec in this folder; null where there is none. */
export function workshopAround(folder: string): Snapshot['analysis']['workshop'] {
  const place = slashed(resolve(folder));
  const workspace = createWorkspace();
  const root = rootOf(place);
  // A hub not yet written sees what every hub here sees.
  const unwritten = `${place}/.hub.yaml`;
  workspace.setRoots([root]);
  workspace.setFile(unwritten, '');
  readAround(workspace, [{ path: unwritten, file: unwritten }], [root]);
  return workspace.snapshot(unwritten)?.analysis.workshop ?? null;
}

function add(found: Map<string, NamedFile>, path: string, file: string): void {
  if (!found.has(file)) found.set(file, { path, file });
}

/** Reads the workshop files above each file, and the files beside what a wheel names. */
function readAround(workspace: Workspace, files: readonly NamedFile[], roots: readonly string[]): void {
  const looked = new Set<string>();
  const look = (folder: string, wanted: (name: string) => boolean): void => {
    for (const entry of entriesOf(folder)) {
      const file = `${folder}/${entry.name}`;
      if (!entry.isFile() || !wanted(entry.name) || workspace.has(file)) continue;
      const read = readText(file);
      if (typeof read === 'string') workspace.setFile(file, read);
    }
  };
  for (const { file } of files) {
    const root = roots.filter((folder) => isInside(folder, file)).sort((a, b) => b.length - a.length)[0];
    for (let folder = folderOf(file); !looked.has(folder); folder = folderOf(folder)) {
      looked.add(folder);
      look(folder, (name) => specKindOf(name) === 'workshop');
      if (folder === '' || folder === root || root === undefined) break;
    }
    const hub =
      specKindOf(nameOf(file)) === 'wheel' ? workspace.snapshot(file)?.document.wheel?.values.hub : undefined;
    const target = hub ? resolveReference(file, hub.value) : null;
    if (target === null || root === undefined || !isInside(root, target)) continue;
    for (const folder of new Set([folderOf(file), folderOf(target)]))
      look(folder, (name) => specKindOf(name) !== null);
  }
}

/** The nearest folder upwards that holds a `.git`, else the folder itself. */
function rootOf(folder: string): string {
  for (let at = folder; ; at = folderOf(at)) {
    if (existsSync(`${at}/.git`)) return at;
    if (folderOf(at) === at || at === '') return folder;
  }
}

/** Spec files below a folder, in order of their names; hidden folders and `node_modules` are left out. */
function specsBelow(folder: string): readonly string[] {
  const entries = entriesOf(folder).sort((a, b) => (a.name < b.name ? -1 : 1));
  return entries.flatMap((entry) => {
    if (entry.isFile() || isLinkToFile(entry, `${folder}/${entry.name}`)) {
      return specKindOf(entry.name) === null ? [] : [entry.name];
    }
    if (!entry.isDirectory() || entry.name.startsWith('.') || entry.name === 'node_modules') return [];
    return specsBelow(`${folder}/${entry.name}`).map((below) => `${entry.name}/${below}`);
  });
}

function isLinkToFile(entry: Dirent, place: string): boolean {
  return entry.isSymbolicLink() && kindOf(place) === 'file';
}

function entriesOf(folder: string): Dirent[] {
  try {
    return readdirSync(folder === '' ? '/' : folder, { withFileTypes: true });
  } catch {
    return [];
  }
}

function kindOf(place: string): 'file' | 'folder' | null {
  try {
    return statSync(place === '' ? '/' : place).isDirectory() ? 'folder' : 'file';
  } catch {
    // Not there, or a name that cannot be one: too long, or a link that leads back to itself.
    return null;
  }
}

/** The text of a file without its byte order mark, as an editor hands it on; or why there is none. */
function readText(file: string): string | { readonly reason: string } {
  try {
    return readFileSync(file, 'utf8').replace(/^\uFEFF/, '');
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason';
    return { reason: code === 'EACCES' ? 'no permission' : code };
  }
}

function slashed(path: string): string {
  return path.replaceAll('\\', '/');
}
