// Every test there is: `npm test`. Installs what is needed, builds, and ends with `N passed, N failed`.
//   node .ci/test.mjs NAME…   only the suites of these names
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join, resolve } from 'node:path';
import './install.mjs';

const env = { ...process.env, PATH: `${resolve('node_modules/.bin')}${delimiter}${process.env.PATH}` };
const reports = mkdtempSync(join(tmpdir(), 'hubwright-tests-'));
const unitReport = join(reports, 'unit.json');

/** Each suite runs commands one after the other; `count` reads how many tests they held, one a command without it. */
const suites = {
  build: { commands: ['node .ci/build.mjs'] },
  style: { commands: ['biome ci --colors=off .'] },
  types: {
    commands: ['server', 'server/node', 'server/browser', 'client', 'tests'].map(
      (part) => `tsc --noEmit -p ${part}`,
    ),
  },
  unit: {
    commands: [`vitest run --root tests --reporter=dot --reporter=json --outputFile.json=${unitReport}`],
    count: () => {
      const { numPassedTests, numFailedTests, numFailedTestSuites, numPendingTests } = JSON.parse(
        readFileSync(unitReport, 'utf8'),
      );
      // A file that fails to load holds no test and would otherwise not be counted.
      const failed = numFailedTests > 0 || numFailedTestSuites === 0 ? numFailedTests : numFailedTestSuites;
      return { passed: numPassedTests, failed, skipped: numPendingTests };
    },
  },
  editor: {
    commands: ['node tests/editor/run.mjs'],
    count: (output) => {
      const last = [...output.matchAll(/^(\d+) passed, (\d+) failed(?:, (\d+) skipped)?$/gm)].at(-1);
      return last && { passed: Number(last[1]), failed: Number(last[2]), skipped: Number(last[3] ?? 0) };
    },
  },
};

function run(command) {
  return new Promise((done) => {
    const child = spawn(command, { shell: true, env, stdio: ['ignore', 'pipe', 'inherit'] });
    let output = '';
    child.stdout.on('data', (data) => {
      output += data;
      process.stdout.write(data);
    });
    child.on('close', (status) => done({ ok: status === 0, output }));
  });
}

const wanted = process.argv.slice(2);
const total = { passed: 0, failed: 0, skipped: 0 };
for (const [name, { commands, count }] of Object.entries(suites)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const began = Date.now();
  const found = { passed: 0, failed: 0, skipped: 0 };
  for (const command of commands) {
    const { ok, output } = await run(command);
    const counted = count
      ? readCount(() => count(output))
      : { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 };
    // A command that failed without a failed test to show for it has failed all the same.
    if (!ok && counted.failed === 0) counted.failed = 1;
    for (const key of Object.keys(found)) found[key] += counted[key];
  }
  const seconds = ((Date.now() - began) / 1000).toFixed(0);
  console.log(
    `\n${name}: ${found.passed} passed, ${found.failed} failed, ${found.skipped} skipped (${seconds} s)\n`,
  );
  for (const key of Object.keys(total)) total[key] += found[key];
}
rmSync(reports, { recursive: true, force: true });
console.log(
  `${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`,
);
process.exit(total.failed > 0 || total.passed === 0 ? 1 : 0);

/** What a suite counted; a report that is missing or cannot be read is one failure. */
function readCount(read) {
  try {
    return read() ?? { passed: 0, failed: 1, skipped: 0 };
  } catch {
    return { passed: 0, failed: 1, skipped: 0 };
  }
}
