// Folders and programs of one run: gone when it ends, however it ends.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const folders = new Set();
const programs = new Set();

process.once('exit', () => {
  for (const program of programs) program.kill('SIGKILL');
  for (const folder of folders) removeFolder(folder);
});
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, () => process.exit(1));

/** A new folder for files of this run. */
export function temporaryFolder(name) {
  const folder = mkdtempSync(join(tmpdir(), `hubwright-${name}-`));
  folders.add(folder);
  return folder;
}

/** A program may still write while it ends: the removal is tried again. */
export function removeFolder(folder) {
  rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  folders.delete(folder);
}

/** Ends with the run if nothing ended it before. */
export function endWithRun(program) {
  programs.add(program);
  program.once('exit', () => programs.delete(program));
  return program;
}
