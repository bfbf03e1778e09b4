import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Pause after which memory is given back, ms: longer than a typist looks up, and nobody waits for an answer then. */
const pause = 2_000;
/** Work below which there is nothing worth giving back. */
const leastWork = 50;

type Collect = (options: { type: 'major'; execution: 'sync'; flavor: 'last-resort' }) => void;

/**
 * Every key leaves a tree of the text behind, and the heap keeps the room it once needed. When the work pauses, that
 * room is given back to the system; call the answer with each piece of work.
 */
export function tidyMemory(): () => void {
  let work = 0;
  let last = 0;
  let waiting = false;
  const wait = (ms: number): void => {
    waiting = true;
    setTimeout(look, ms).unref();
  };
  const look = (): void => {
    waiting = false;
    const left = pause - (performance.now() - last);
    if (0 < left) {
      wait(left);
      return;
    }
    work = 0;
    collector()?.({ type: 'major', execution: 'sync', flavor: 'last-resort' });
  };
  return () => {
    work += 1;
    last = performance.now();
    if (!waiting && leastWork <= work) wait(pause);
  };
}

/** The engine's own collector, which it shows only to contexts made while it is told to; null where it does not. */
function collector(): Collect | null {
  try {
    setFlagsFromString('--expose-gc');
    const collect: unknown = runInNewContext('typeof gc === "function" ? gc : null');
    setFlagsFromString('--no-expose-gc');
    return collect as Collect | null;
  } catch {
    return null;
  }
}
