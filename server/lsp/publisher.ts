import type { Diagnostic } from 'vscode-languageserver';
import type { Snapshot } from '../workspace/workspace.ts';
import type { Host } from './host.ts';

/** Sends findings out: of an edited file at once, of the files that depend on it when typing pauses. */
export interface Publisher {
  /** The text of a file changed in an editor. */
  edited(file: string): void;
  /** What stands around these files changed. */
  around(files: Iterable<string>): void;
  /** The file is gone or no longer looked at. */
  clear(file: string): void;
  /** Until then edits only gather: the files around are still being read. */
  release(): void;
}

export interface PublisherOptions {
  readonly host: Host;
  readonly snapshot: (file: string) => Snapshot | null;
  readonly dependents: (file: string) => readonly string[];
  /** Whether findings of the file are to be shown at all. */
  readonly wanted: (file: string) => boolean;
  readonly toDiagnostics: (snapshot: Snapshot) => Diagnostic[];
  readonly send: (file: string, diagnostics: Diagnostic[]) => void;
  /** Files that stand around others were looked at again: what an editor asked before may be old. */
  readonly settled: () => void;
  readonly guarded: (what: string, work: () => void) => void;
}

/** Edits that keep coming are answered at least this often, ms. */
const longestWait = 40;
/** Pause in the typing after which other files are looked at, ms. */
const pause = 120;
/** Time spent on other files before what arrived meanwhile is dealt with, ms. */
const slice = 20;

export function createPublisher(options: PublisherOptions): Publisher {
  const { host, guarded } = options;
  const now = new Set<string>();
  const later = new Set<string>();
  const last = new Map<string, string>();
  let held = true;
  let edits = 0;
  let turning = false;
  let callOff: (() => void) | null = null;

  const publish = (file: string, always: boolean): void => {
    const snapshot = options.wanted(file) ? options.snapshot(file) : null;
    const diagnostics = snapshot ? options.toDiagnostics(snapshot) : [];
    const written = JSON.stringify(diagnostics);
    const before = last.get(file) ?? (snapshot ? null : '[]');
    if (!always && before === written) return;
    if (snapshot) last.set(file, written);
    else last.delete(file);
    options.send(file, diagnostics);
  };

  /** Waits until a whole turn brought no further edit, so that edits already sent are answered as one. */
  const turn = (seen: number, quiet: number, since: number): void => {
    host.schedule(() => {
      const still = seen === edits;
      if ((!still || quiet === 0) && host.now() - since < longestWait) {
        return turn(edits, still ? quiet + 1 : 0, since);
      }
      turning = false;
      const files = [...now];
      now.clear();
      for (const file of files) {
        guarded(`findings of ${file}`, () => publish(file, true));
        guarded(`files that depend on ${file}`, () => wake(options.dependents(file)));
      }
    }, 0);
  };

  const wake = (files: Iterable<string>): void => {
    for (const file of files) later.add(file);
    if (later.size === 0 || held) return;
    callOff?.();
    callOff = host.schedule(rest, pause);
  };

  const rest = (): void => {
    callOff = null;
    const began = host.now();
    for (const file of later) {
      later.delete(file);
      guarded(`findings of ${file}`, () => publish(file, false));
      if (slice < host.now() - began) break;
    }
    if (later.size > 0) callOff = host.schedule(rest, 0);
    else guarded('what follows from other files', options.settled);
  };

  const start = (): void => {
    if (turning || held || now.size === 0) return;
    turning = true;
    turn(edits, 0, host.now());
  };

  return {
    edited: (file) => {
      now.add(file);
      edits += 1;
      // Other files wait for a pause in the typing.
      if (callOff) wake([]);
      start();
    },
    around: wake,
    clear: (file) => {
      now.delete(file);
      later.delete(file);
      guarded(`findings of ${file}`, () => publish(file, false));
    },
    release: () => {
      held = false;
      start();
      wake([]);
    },
  };
}
