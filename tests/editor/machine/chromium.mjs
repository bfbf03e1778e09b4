// Finds Chromium, or installs Debian's package of it where that can be done.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const debian = '/usr/bin/chromium';
const packages = ['chromium', 'fonts-dejavu-core'];
const works = (program, ...args) => spawnSync(program, args, { stdio: 'ignore' }).status === 0;

/** The path of a Chromium, installed first when need be; or the reason why there is none. */
export function ensureChromium() {
  const wanted = process.env.CHROMIUM_PATH ?? debian;
  if (existsSync(wanted)) return { path: wanted };
  if (!works('apt-get', '--version'))
    return { missing: `no Chromium at ${wanted} and no apt-get to install one` };
  const asRoot = process.getuid?.() === 0 ? [] : ['sudo', '-n'];
  if (asRoot.length > 0 && !works('sudo', '-n', 'true')) {
    return {
      missing: `no Chromium at ${wanted}, and apt-get needs a password: install chromium once by hand`,
    };
  }
  console.error(`Installing ${packages.join(' and ')} with apt-get …`);
  const env = ['env', 'DEBIAN_FRONTEND=noninteractive', 'apt-get', '-qq'];
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', ...packages]]) {
    const [program, ...rest] = [...asRoot, ...env, ...args];
    const done = spawnSync(program, rest, { stdio: ['ignore', 'ignore', 2] });
    if (done.status !== 0) return { missing: `apt-get ${args[0]} failed with ${done.status}` };
  }
  return existsSync(debian) ? { path: debian } : { missing: `apt-get installed no ${debian}` };
}
