// Installs the Node packages of package-lock.json when they are missing or older than the lock file.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

const stamp = 'node_modules/.package-lock.json';
const fresh = existsSync(stamp) && statSync(stamp).mtimeMs >= statSync('package-lock.json').mtimeMs;
if (!fresh) {
  console.error('Installing the packages of package-lock.json …');
  const done = spawnSync('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    stdio: ['ignore', 2, 2],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) process.exit(done.status ?? 1);
}
