import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { hubwright, hubwrightJson, projectFolder } from '../support/command-line.ts';

const dunlin = 'client/samples/dunlin-front.hub.yaml';

/** Command lines that cannot be followed, with what the message must name. */
const misuses: readonly (readonly [given: readonly string[], said: string])[] = [
  [['chek', dunlin], 'check'],
  [['--jsonn'], '--jsonn'],
  [['check'], 'file or folder'],
  [['check', dunlin, '--fail-onn', 'error'], '--fail-on'],
  [['check', dunlin, '--fail-on', 'severe'], 'severe'],
  [['check', dunlin, '--fail-on'], '--fail-on'],
  [['check', dunlin, '--format', 'xml'], 'xml'],
  [['check', 'README.md'], 'NAME.hub.yaml'],
  [['stack'], 'one hub file'],
  [['stack', dunlin, dunlin], 'one hub file'],
  [['stack', 'client/samples/saltmarsh.workshop.yaml'], 'no hub file'],
  [['stack', 'gone.hub.yaml'], 'gone.hub.yaml'],
  [['bearing'], 'a code'],
  [['identify', '15', '26'], 'three lengths'],
  [['identify', '15,02', '26', '7'], '15.02'],
  [['identify', '15', '26', '7', '--uncertainty', 'small'], 'small'],
  [['fit', '26 N7'], 'bearing code'],
  [['draw'], 'one hub file'],
  [['draw', dunlin, '-o', 'no-such-folder/x.svg'], 'no-such-folder'],
  [['explain', 'no-such-finding'], 'no-such-finding'],
  [['explain', 'width-off', 'seat-proud'], 'one code'],
];

for (const [given, said] of misuses) {
  test(`hubwright ${given.join(' ')} ends with 2 and says what is wanted`, () => {
    const text = hubwright(given);
    expect([text.exit, text.out]).toEqual([2, '']);
    expect(text.err).toMatch(/^hubwright: /);
    expect(text.err).toContain(said);
    const { exit, json } = hubwrightJson(given);
    expect(exit).toBe(2);
    expect(json).toBeTypeOf('object');
  });
}

test('without arguments the commands are listed on standard error and the exit code is 2', () => {
  const { exit, out, err } = hubwright([]);
  expect([exit, out]).toEqual([2, '']);
  for (const name of ['check', 'stack', 'bearing', 'identify', 'fit', 'draw', 'explain']) {
    expect(err).toContain(`hubwright ${name}`);
  }
});

test('help is no misuse, for one command too', () => {
  expect(hubwright(['--help'])).toMatchObject({ exit: 0, err: '' });
  const { exit, out } = hubwright(['check', '--help']);
  expect(exit).toBe(0);
  expect(out).toContain('--fail-on SEVERITY');
  expect(hubwright(['help', 'check']).out).toBe(out);
  expect(hubwrightJson(['check', '--help']).json).toEqual({ text: out });
});

test('the version is that of the package', () => {
  const { version } = JSON.parse(readFileSync(join(projectFolder, 'package.json'), 'utf8')) as {
    version: string;
  };
  expect(hubwright(['--version'])).toEqual({ exit: 0, out: `${version}\n`, err: '' });
});

test('two runs print the same, byte for byte', () => {
  for (const given of [
    ['check', 'client/samples', '--json'],
    ['stack', 'client/samples/plover-rear.hub.yaml', '--json'],
    ['draw', 'client/samples/knot-front.hub.yaml'],
  ]) {
    expect(hubwright(given)).toEqual(hubwright(given));
  }
});
