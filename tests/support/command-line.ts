import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The folder of the project. */
export const projectFolder = join(import.meta.dirname, '..', '..');
const bundle = join(projectFolder, 'dist', 'cli.js');

/** What one call of the built command line gave. */
export interface Called {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Calls the built command line, from the project's folder unless another is given; `input` is piped to it. */
export function hubwright(given: readonly string[], cwd = projectFolder, input = ''): Called {
  if (!existsSync(bundle)) throw new Error('dist/cli.js is missing: run npm run build first (npm test does)');
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...given], {
    cwd,
    encoding: 'utf8',
    input,
  });
  return { exit: status, out: stdout, err: stderr };
}

/** Calls it with `--json` and reads the one document it must print. */
export function hubwrightJson(
  given: readonly string[],
  cwd = projectFolder,
): Called & { readonly json: unknown } {
  const called = hubwright([...given, '--json'], cwd);
  return { ...called, json: JSON.parse(called.out) };
}

/** A folder of its own for one test, with these files in it; gone when the test is over. */
export async function withFiles(
  files: Readonly<Record<string, string | Uint8Array>>,
  body: (folder: string) => void | Promise<void>,
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'hubwright-cli-'));
  try {
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    await body(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
