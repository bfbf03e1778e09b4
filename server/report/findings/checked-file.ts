import type { Findings } from '../../checks/run.ts';
import type { Snapshot } from '../../workspace/workspace.ts';

/** A file that was checked, under the name it was asked for by. */
export interface CheckedFile {
  /** As given on the command line, or below the folder given. */
  readonly path: string;
  readonly text: string;
  readonly findings: Findings;
}

/** The findings of a snapshot, under the name the user knows the file by. */
export function checkedFile(path: string, snapshot: Snapshot): CheckedFile {
  return { path, text: snapshot.document.text, findings: snapshot.findings };
}
