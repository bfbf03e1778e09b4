// Runs the suite inside an extension host: the Node one or the web worker one of the browser's VS Code, or the one of
// a desktop VS Code.
import { writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { newPage } from './machine/browser.mjs';
import { removeFolder, temporaryFolder } from './machine/temporary.mjs';
import { developmentOptions, serveFolders } from './machine/web-extension.mjs';

const patience = 60_000;

/** Runs the bundled suite in `kind` ('node' or 'web'); every line it prints goes to `print`. */
export async function runSuiteInBrowser({
  browser,
  server,
  extension,
  suite,
  workspace,
  kind,
  print,
  artifacts,
}) {
  const page = await newPage(browser);
  const noise = [];
  page.on('console', (message) => noise.push(message.text()));
  await page.exposeFunction('codeAutomationLog', (_type, args) => {
    const text = args.map(String).join(' ');
    noise.push(text);
    print(text);
  });
  const ended = new Promise((resolve) => {
    page.exposeFunction('codeAutomationExit', (code) => resolve(code));
  });
  const payload = [['skipWelcome', 'true']];
  if (kind === 'web') {
    // The editor looks for the host to run the tests in by the extension that holds them.
    const uri = await serveFolders(page, server.authority, { extension, 'extension/suite': dirname(suite) });
    await developmentOptions(page, {
      extensions: [uri('extension/')],
      extensionTestsPath: uri('extension/suite/index.cjs'),
    });
    payload.push(['extensionDevelopmentKind', 'web']);
  } else {
    const uri = (path) => `vscode-remote://${server.authority}${path}`;
    payload.push(['extensionDevelopmentPath', uri(extension)], ['extensionTestsPath', uri(suite)]);
  }
  const query = new URLSearchParams({ folder: workspace, payload: JSON.stringify(payload) });
  await page.goto(`http://${server.authority}/?${query}`);
  const late = new Promise((resolve) => setTimeout(resolve, patience, 'late').unref());
  const code = await Promise.race([ended, late]);
  await writeFile(join(artifacts, `suite-${kind}.log`), noise.join('\n'));
  if (code !== 0) await page.screenshot({ path: join(artifacts, `suite-${kind}.png`) });
  await page.context().close();
  const ours = noise
    .filter((line) => /hubwright|^Error/i.test(line))
    .slice(-8)
    .join('\n');
  if (code === 'late') throw new Error(`no end after ${patience / 1000} s\n${ours}`);
  return { code, ours };
}

/** Runs the suite in the desktop VS Code at `executable`. Its lines go to the terminal through the program itself. */
export async function runSuiteOnDesktop({ executable, extension, suite, workspace }) {
  const { runTests } = await import('@vscode/test-electron');
  const profile = temporaryFolder('desktop');
  const launchArgs = [workspace, '--disable-extensions', `--user-data-dir=${profile}/data`];
  launchArgs.push(`--extensions-dir=${profile}/extensions`);
  try {
    return await runTests({
      vscodeExecutablePath: executable,
      extensionDevelopmentPath: extension,
      extensionTestsPath: suite,
      launchArgs,
    });
  } finally {
    removeFolder(profile);
  }
}
