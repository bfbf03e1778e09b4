// The packed extension in a real VS Code: `npm run editor`. Prints a line a test and ends with `N passed, N failed`.
//   HUBWRIGHT_VSIX     an extension already packed, instead of packing it here
//   HUBWRIGHT_VSCODE   the executable of a desktop VS Code: the suite runs there too
//   CHROMIUM_PATH      a Chromium, instead of Debian's
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { openBrowser } from './machine/browser.mjs';
import { ensureChromium } from './machine/chromium.mjs';
import { ensureHost } from './machine/host.mjs';
import { installExtension, startServer } from './machine/server.mjs';
import { removeFolder, temporaryFolder } from './machine/temporary.mjs';
import { openWorkbench } from './machine/user.mjs';
import { runSuiteInBrowser, runSuiteOnDesktop } from './run-suite.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));
const artifacts = join(root, 'artifacts', 'editor');
const only = process.argv[2] ?? '';
const began = Date.now();
/** A run that takes longer than this hangs somewhere, s. */
const atMost = 420;
const count = { passed: 0, failed: 0 };

function report(ok, title, problem = '') {
  count[ok ? 'passed' : 'failed'] += 1;
  const seconds = ((Date.now() - began) / 1000).toFixed(0);
  console.log(`${ok ? 'ok' : 'not ok'} - ${title} (${seconds} s)${problem && `\n${problem}`}`);
}

const late = setTimeout(() => {
  report(false, `the run ends within ${atMost} s`);
  process.exit(1);
}, atMost * 1000);
late.unref();

const chromium = ensureChromium();
if (chromium.missing) {
  const must = process.env.CI === 'true';
  console.log(`${must ? 'not ok' : 'skipped'} - the real editor: ${chromium.missing}`);
  console.log(must ? '0 passed, 1 failed' : '0 passed, 0 failed, 1 skipped');
  process.exit(must ? 1 : 0);
}

const host = ensureHost();
const vsix = process.env.HUBWRIGHT_VSIX ?? packExtension();
const suite = await bundleSuite();
mkdirSync(artifacts, { recursive: true });
const data = installExtension(host, vsix);
const samples = join(data.extension, 'client', 'samples');
const browser = await openBrowser(chromium.path);
try {
  if ('suite'.includes(only)) await runSuites();
  await runScenarios();
} finally {
  await browser.close();
  data.remove();
  removeFolder(join(suite, '..'));
}
console.log(`${count.passed} passed, ${count.failed} failed`);
process.exit(count.failed > 0 || count.passed === 0 ? 1 : 0);

async function runSuites() {
  const server = await startServer(host, data, { driver: true });
  for (const kind of ['node', 'web']) {
    await withWorkspace(async (workspace) => {
      let seen = 0;
      const print = (line) => {
        const result = /^(not )?ok - (.*)/s.exec(line);
        if (result) report(!result[1], `in the ${kind} extension host, ${result[2]}`);
        if (result) seen += 1;
        const host = /^extension host: (\w+), (.*)/.exec(line);
        if (host) report(host[1] === kind, `${host[2]} runs the suite in its ${kind} extension host`);
      };
      const options = {
        browser,
        server,
        extension: data.extension,
        suite,
        workspace,
        kind,
        print,
        artifacts,
      };
      try {
        const { code, ours } = await runSuiteInBrowser(options);
        if (seen === 0)
          report(false, `the suite runs in the ${kind} extension host`, `exit ${code}\n${ours}`);
      } catch (error) {
        report(false, `the suite ends in the ${kind} extension host`, error.message);
      }
    });
  }
  await server.stop();
  const executable = process.env.HUBWRIGHT_VSCODE;
  if (!executable) return;
  await withWorkspace(async (workspace) => {
    const options = { executable, extension: data.extension, suite, workspace };
    const problem = await runSuiteOnDesktop(options).then(
      (code) => (code === 0 ? '' : `exit ${code}`),
      String,
    );
    report(problem === '', 'the suite runs in a desktop VS Code', problem);
  });
}

async function runScenarios() {
  const server = await startServer(host, data);
  for (const file of readdirSync(join(here, 'scenarios')).filter((name) => name.includes(only))) {
    const scenario = await import(`./scenarios/${file}`);
    rmSync(join(artifacts, `failed-${file}.png`), { force: true });
    await withWorkspace(async (workspace) => {
      let user;
      try {
        if (!scenario.withoutEditor) user = await openWorkbench({ browser, server, workspace, artifacts });
        await scenario.run({ user, browser, workspace, data, artifacts });
        report(true, scenario.title);
      } catch (error) {
        await user?.screenshot(`failed-${file}`);
        report(false, scenario.title, error.stack);
      } finally {
        await user?.close();
      }
    });
  }
  await server.stop();
}

/** Gives a copy of the samples, for a test may write. */
async function withWorkspace(body) {
  const workspace = temporaryFolder('samples');
  cpSync(samples, workspace, { recursive: true });
  await body(workspace);
  removeFolder(workspace);
}

function packExtension() {
  const done = spawnSync('npm', ['run', '--silent', 'package'], { cwd: root, stdio: ['ignore', 2, 2] });
  if (done.status !== 0) throw new Error('npm run package failed');
  return join(root, 'dist', 'hubwright.vsix');
}

async function bundleSuite() {
  const outfile = join(temporaryFolder('suite'), 'index.cjs');
  const entry = join(here, 'suite', 'index.ts');
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    format: 'cjs',
    platform: 'neutral',
    external: ['vscode'],
  });
  return outfile;
}
