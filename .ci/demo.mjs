// The second half of `npm start`: checks the sample hubs, prints their stacks and draws them.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';

const samples = 'client/samples';
const drawings = 'dist/drawings';
/** Full of planted faults, so that there is something to see. */
const faulty = 'faulty-front';

const failures = [];

title(`Checking ${samples}`);
// Exit code 1 says that findings were found, as they must be.
say(hubwright([0, 1], 'check', samples));
console.log(`The findings are planted: ${samples}/${faulty}.hub.yaml is there to try the fixes on.`);

const hubs = readdirSync(samples)
  .filter((name) => name.endsWith('.hub.yaml'))
  .map((name) => name.slice(0, -'.hub.yaml'.length));
for (const name of hubs.filter((other) => other !== faulty)) {
  title(`The stack of ${name}`);
  say(hubwright([0], 'stack', `${samples}/${name}.hub.yaml`));
}

title('Drawings');
mkdirSync(drawings, { recursive: true });
for (const name of hubs) {
  const file = `${samples}/${name}.hub.yaml`;
  const { variants } = JSON.parse(hubwright([0], 'stack', file, '--json') || '{"variants":[]}');
  for (const variant of variants) {
    const output = `${drawings}/${[name, variant.name].filter((part) => part !== null).join('.')}.svg`;
    const options = variant.name === null ? [] : ['--variant', variant.name];
    say(hubwright([0], 'draw', file, '-o', output, ...options));
  }
}
console.log(
  '\nOpen them in a browser or print them at 100 %. In VS Code: open a hub file, then “Open Section Beside”.',
);

if (failures.length > 0) {
  console.error(`\n${failures.join('\n')}`);
  process.exit(1);
}

function hubwright(expected, ...given) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['dist/cli.js', ...given], {
    encoding: 'utf8',
  });
  if (!expected.includes(status))
    failures.push(`hubwright ${given.join(' ')} ended with ${status}: ${stderr}`);
  return stdout;
}

function title(text) {
  console.log(`\n${text}\n${'─'.repeat(text.length)}`);
}

function say(text) {
  console.log(text.trimEnd());
}
