import { readSync } from 'node:fs';

let waiting = '';
let ended = false;

/** The next line of standard input, typed or piped; null at its end. Waits for it: nothing else is to be done. */
export function askLine(): string | null {
  const chunk = Buffer.alloc(4096);
  for (;;) {
    const end = waiting.indexOf('\n');
    if (0 <= end) {
      const line = waiting.slice(0, end).replace(/\r$/, '');
      waiting = waiting.slice(end + 1);
      return line;
    }
    if (ended) {
      const rest = waiting;
      waiting = '';
      return rest === '' ? null : rest;
    }
    try {
      const count = readSync(0, chunk, 0, chunk.length, null);
      if (count === 0) ended = true;
      else waiting += chunk.toString('utf8', 0, count);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : null;
      // A terminal that has nothing yet is asked again; a closed one has ended.
      if (code !== 'EAGAIN') ended = true;
    }
  }
}
