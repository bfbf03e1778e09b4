import { expect, test } from 'vitest';
import { readSpec } from '../../server/spec/read-spec.ts';
import { hostile } from './hostile.ts';
import { lookAt } from './samples.ts';
import { complaints } from './soundness.ts';
import { trials } from './trials.ts';
import { watched } from './watchdog.ts';

test.each(hostile)('%s: read as each kind of file, with findings at their places', (what, text) => {
  expect(trials(what, 'curlew-family.hub.yaml', text, 0)).toEqual([]);
  for (const name of ['saltmarsh.workshop.yaml', 'dunlin-touring.wheel.yaml']) {
    expect(watched(`${what} as ${name}`, () => complaints(lookAt(name, text)))).toEqual([]);
  }
});

test.each(hostile)('%s: the same with carriage returns and a byte order mark', (what, text) => {
  const read = watched(what, () => readSpec(`\ufeff${text.replaceAll('\n', '\r\n')}`, 'hub'));
  for (const { span } of read.problems) {
    expect(span.start).toBeLessThanOrEqual(span.end);
    expect(span.end).toBeLessThanOrEqual(read.text.length);
  }
});

/** Found by mutation once; kept so that each stays mended. */
const regressions: readonly (readonly [what: string, text: string])[] = [
  [
    'a length beyond the moon, hatched',
    'hub: x\nshell:\n  between-shoulders: 9999999999999999999999999999999999999999\n  seats: { left: { bore: 26, depth: 5 }, right: { bore: 26, depth: 5 } }\nstack:\n  - bearing: left\n    code: 6803\n    seat: shell.left\n  - bearing: right\n    code: 6803\n    seat: shell.right\n',
  ],
  [
    'two parts of a swap in one another',
    "hub: x\n''\nstack:\n  - spacer: right\n    length: 15.||||||| base\n ±0.02\n  - end-cap: right\n    length: 3\n",
  ],
  [
    'an allowance behind a lone carriage return',
    'hub: x\rwidth: 100\r# allow nothing-of-that-kind because x\raxle: { bore: 3 }\n',
  ],
  [
    'a seat that is written and empty',
    'hub: x\nshell: { seats: { left: { bore: 26 N7 } } }\nstack:\n  - bearing: left\n    code: 6803\n    seat: \n',
  ],
  ['a unit called as a thing of every object', 'hub: x\nshell:\n  through: 22.5constructor\n'],
  [
    'a second colon that stands in a comment',
    'hub: x\naxle: !!binary \n  material: steel\n.  diameter: 17 h6 # a: b\n  bore: 3  # read: off\n',
  ],
  [
    'a space that lacks behind a colon, beside findings that doubt the same value',
    'hub: x\nshell:\n  between-shoulders: 62\n  seats: { left: { bore: 26 N7, depth: 5 }, right: { bore: 26 N7, depth: 5 } }\nstack:\n  - bearing: left\n    code: 6803\n    seat: shell.left\n  - spacer: a\n    length:02.06 ±0.01\n  - bearing: right\n    code: 6803\n    seat: shell.right\n',
  ],
];

test.each(regressions)('%s', (what, text) => {
  expect(trials(what, 'curlew-family.hub.yaml', text, 0)).toEqual([]);
});
