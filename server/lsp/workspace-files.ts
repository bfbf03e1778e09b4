import { specKindOf } from '../spec/read-spec.ts';
import { folderOf, isInside, nameOf } from '../workspace/location.ts';
import type { Workspace } from '../workspace/workspace.ts';
import type { Files } from './host.ts';
import type { Uris } from './uris.ts';

/** Brings the files around the open ones into the workspace. */
export interface WorkspaceFiles {
  /** Reads every spec file of the folders; they bound references from then on. */
  load(folders: readonly string[]): Promise<void>;
  /** Done when the folders are read, well or not: what speaks for all files waits for it. */
  loaded(): Promise<void>;
  /** Reads the spec files beside a file that lies in none of the folders. */
  loadBeside(file: string): Promise<void>;
  /** Reads one file anew. */
  reload(file: string): Promise<void>;
}

/** Files read at a time. */
const atOnce = 16;

export function createWorkspaceFiles(workspace: Workspace, uris: Uris, files: () => Files): WorkspaceFiles {
  let roots: readonly string[] = [];
  const beside = new Set<string>();
  let loading: Promise<void> = Promise.resolve();

  const read = async (file: string): Promise<void> => {
    workspace.setFile(file, await files().readFile(uris.uri(file)));
  };
  const readAll = async (found: readonly string[]): Promise<void> => {
    // Workshop files speak for all others: they come first.
    const rank = (file: string): number => (specKindOf(nameOf(file)) === 'workshop' ? 0 : 1);
    const waiting = [...new Set(found.map(uris.file))]
      .filter((file) => specKindOf(nameOf(file)))
      .sort((a, b) => rank(b) - rank(a));
    const work = async (): Promise<void> => {
      for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) await read(file);
    };
    await Promise.all(Array.from({ length: atOnce }, work));
  };

  const load = async (folders: readonly string[]): Promise<void> => {
    roots = folders.map((folder) => uris.file(folder).replace(/\/+$/, ''));
    workspace.setRoots(roots);
    const found = await Promise.all(folders.map((folder) => files().findFiles(folder, true)));
    await readAll(found.flat());
  };

  return {
    load: (folders) => {
      const work = load(folders);
      // Whoever asked to load hears of a failure; whoever waits goes on with what there is.
      loading = work.catch(() => {});
      return work;
    },
    loaded: () => loading,
    loadBeside: async (file) => {
      const folder = folderOf(file);
      const stands = /^[a-z][a-z0-9+.-]*:\//i.test(folder) && !roots.some((root) => isInside(root, file));
      if (!stands || beside.has(folder)) return;
      beside.add(folder);
      await readAll(await files().findFiles(uris.uri(folder), false));
    },
    reload: read,
  };
}
