// One VS Code server with throw-away data, the packed extension installed in it.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { endWithRun, removeFolder, temporaryFolder } from './temporary.mjs';

/** Nothing of the editor's own that moves, asks or saves by itself. */
const quiet = {
  'chat.disableAIFeatures': true,
  'editor.minimap.enabled': false,
  'extensions.ignoreRecommendations': true,
  'files.autoSave': 'off',
  'telemetry.telemetryLevel': 'off',
  'workbench.colorTheme': 'Light Modern',
  'workbench.reduceMotion': 'on',
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
};

/** A data folder with the packed extension in it. */
export function installExtension(host, vsix) {
  const folder = temporaryFolder('editor');
  const data = {
    folder,
    extension: '',
    settings,
    remove: () => removeFolder(folder),
  };
  settings({});
  const flags = ['--accept-server-license-terms', '--server-data-dir', folder, '--install-extension', vsix];
  const done = spawnSync(host.node, [host.main, ...flags], { encoding: 'utf8' });
  const name = readdirSync(join(folder, 'extensions')).find((entry) => entry.startsWith('hubwright.'));
  if (done.status !== 0 || !name)
    throw new Error(`${vsix} could not be installed: ${done.stdout}${done.stderr}`);
  data.extension = join(folder, 'extensions', name);
  return data;

  /** Writes the user's settings; a running editor follows them. */
  function settings(more) {
    mkdirSync(join(folder, 'data', 'User'), { recursive: true });
    writeFileSync(join(folder, 'data', 'User', 'settings.json'), JSON.stringify({ ...quiet, ...more }));
  }
}

/** Starts the server; `driver` lets a page pass the parameters of an extension test run. */
export async function startServer(host, data, { driver = false } = {}) {
  const args = [
    '--host',
    '127.0.0.1',
    '--port',
    '0',
    '--without-connection-token',
    '--accept-server-license-terms',
  ];
  args.push(
    '--server-data-dir',
    data.folder,
    '--builtin-extensions-dir',
    host.builtin,
    '--telemetry-level',
    'off',
  );
  args.push('--disable-experiments', '--disable-update-check', '--disable-workspace-trust');
  if (driver) args.push('--enable-smoke-test-driver');
  const child = endWithRun(spawn(host.node, [host.main, ...args], { stdio: ['ignore', 'pipe', 'pipe'] }));
  const ended = new Promise((resolve) => child.once('exit', resolve));
  let output = '';
  const port = await new Promise((resolve, reject) => {
    const late = setTimeout(
      () => reject(new Error(`the VS Code server was not up in 30 s: ${output}`)),
      30_000,
    );
    const read = (bytes) => {
      output += bytes;
      const found = /agent listening on (\d+)/.exec(output);
      if (!found) return;
      clearTimeout(late);
      resolve(found[1]);
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    ended.then((status) => reject(new Error(`the VS Code server ended with ${status}: ${output}`)));
  });
  const stop = async () => {
    child.kill('SIGTERM');
    const late = setTimeout(() => child.kill('SIGKILL'), 5000);
    await ended;
    clearTimeout(late);
  };
  return { authority: `localhost:${port}`, stop };
}
