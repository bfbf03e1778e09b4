import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Files } from '../lsp/host.ts';

const specName = /\.(hub|wheel|workshop)\.ya?ml$/i;
/** Folders deeper than this, and files beyond that many, are not looked at. */
const deepest = 16;
const atMost = 20_000;

/** Spec files on the disk; anything else, and anything that cannot be read, is not there. */
export const diskFiles: Files = {
  readFile: async (uri) => {
    const path = pathOf(uri);
    return path === null ? null : readFile(path, 'utf8').catch(() => null);
  },
  findFiles: async (folder, deep) => {
    const path = pathOf(folder);
    const found: string[] = [];
    if (path !== null) await look(path, deep ? deepest : 0, found);
    return found.map((file) => pathToFileURL(file).href);
  },
};

async function look(folder: string, depth: number, found: string[]): Promise<void> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const entry of entries) {
    if (atMost <= found.length) return;
    if (entry.isFile() && specName.test(entry.name)) found.push(join(folder, entry.name));
    const inside = entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules';
    if (inside && 0 < depth) await look(join(folder, entry.name), depth - 1, found);
  }
}

function pathOf(uri: string): string | null {
  try {
    return fileURLToPath(uri);
  } catch {
    return null;
  }
}
