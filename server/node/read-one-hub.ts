import type { Snapshot } from '../workspace/workspace.ts';
import { readNamed } from './files.ts';

/** A hub or wheel file as worked out, or why it cannot be. */
export type ReadHub =
  | {
      readonly snapshot: Snapshot /** What to know before trusting the answer. */;
      readonly hint: string | null;
    }
  | { readonly message: string };

/** Reads the one hub file a command is about. */
export function readOneHub(path: string, cwd: string): ReadHub {
  return readOne(path, cwd, 'hub');
}

/** Whether a path names a wheel file. */
export function isWheelFile(path: string): boolean {
  return /\.wheel\.ya?ml$/i.test(path);
}

/** Reads the one wheel file a command is about, and the hub it names; a `variant` asked for beside it is refused. */
export function readOneWheel(path: string, cwd: string, variant: string | null = null): ReadHub {
  if (variant !== null) return { message: 'a wheel file names the variant of its hub itself' };
  return readOne(path, cwd, 'wheel');
}

function readOne(path: string, cwd: string, kind: 'hub' | 'wheel'): ReadHub {
  const { workspace, files, unread } = readNamed([path], cwd);
  const [problem] = unread;
  if (problem) return problem;
  const [named, ...more] = files;
  if (!named || more.length > 0 || named.path !== path.replaceAll('\\', '/')) {
    return { message: `${path} is a folder; one ${kind} file is wanted` };
  }
  const snapshot = workspace.snapshot(named.file);
  if (snapshot?.document.kind !== kind)
    return { message: `${path} is no ${kind} file; they are called NAME.${kind}.yaml` };
  const count = snapshot.findings.findings.length;
  const hint =
    count === 0
      ? null
      : `${path} has ${count === 1 ? 'a finding' : `${count} findings`}: hubwright check ${path}`;
  return { snapshot, hint };
}
