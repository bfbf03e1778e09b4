// A cold check of a folder of files on the command line, ours beside the floor.
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { hubOfLines } from './texts.mjs';

/** Seconds a process takes to check `count` files of 60 lines, each a little different; a list for each command. */
export function coldChecks(commands, folder, count, runs) {
  const inside = join(folder, 'thousand');
  mkdirSync(join(inside, '.git'), { recursive: true });
  for (let at = 0; at < count; at++) {
    const shift = ((at % 50) - 25) / 100;
    const text = hubOfLines(60, `Dunlin ${at}`)
      .replace('62.09 ±0.01', `${(62.09 + shift / 10).toFixed(3)} ±0.01`)
      .replaceAll('face: 19.4', `face: ${(19.4 + shift / 5).toFixed(2)}`);
    writeFileSync(join(inside, `dunlin-${at}.hub.yaml`), text);
  }
  const found = commands.map(() => []);
  for (let run = 0; run < runs; run++) {
    for (const [at, { bundle, given }] of commands.entries()) {
      const began = performance.now();
      const { status, stderr, stdout } = spawnSync(process.execPath, [bundle, ...given, inside], {
        encoding: 'utf8',
        maxBuffer: 1 << 28,
      });
      if (status !== 0 || stdout === '') throw new Error(`${bundle} ended with ${status}: ${stderr}`);
      found[at].push((performance.now() - began) / 1000);
    }
  }
  return found;
}
