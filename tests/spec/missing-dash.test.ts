import { expect, test } from 'vitest';
import { readHub } from '../../server/spec/read-hub.ts';
import { applied } from '../checks/apply.ts';

// Expected texts follow YAML 1.2, section 8.2.1: each item of a block sequence begins with its own dash.
const stack = (third: string): string =>
  `hub: Knot\nposition: front\nwidth: 100\nstack:\n  - end-cap: left\n    length: 14\n${third}    length: 62\n  - end-cap: right\n    length: 14\n`;

test('a part without its dash is one finding, and the part is read', () => {
  const text = stack('  spacer: centre\n');
  const spec = readHub(text);
  expect(spec.problems.map(({ message }) => message)).toEqual([
    'a dash is wanted before spacer: - spacer: centre',
  ]);
  expect(spec.hub?.stack.map(({ address }) => address)).toEqual([
    'end-cap.left',
    'spacer.centre',
    'end-cap.right',
  ]);
  const [fix] = spec.problems[0]?.fixes ?? [];
  expect(fix && applied(text, fix)).toBe(stack('  - spacer: centre\n'));
});

test('two parts without a dash are two findings, one at each', () => {
  const text = stack('  spacer: centre\n').replace('  - end-cap: right', '  end-cap: right');
  const spec = readHub(text);
  expect(spec.problems.map(({ span }) => text.slice(span.start, span.end))).toEqual(['spacer', 'end-cap']);
  expect(spec.hub?.stack).toHaveLength(3);
});

test('a list that stands in the column of its key is no list without dashes', () => {
  const text =
    'hub: Knot\nposition: front\nwidth: 100\nstack:\n- end-cap: left\n  length: 50\n- end-cap: right\n  length: 50\nnotes: worn\n';
  expect(readHub(text).problems).toEqual([]);
});

test('a question mark is a value that is not known yet, and hides nothing after it', () => {
  for (const mark of ['?', '??']) {
    const spec = readHub(stack('  - spacer: centre\n').replace('length: 62', `length: ${mark}`));
    expect(spec.problems.map(({ code }) => code)).toEqual(['missing-key']);
    expect(spec.hub?.stack).toHaveLength(3);
  }
  const flow =
    'hub: Knot\nposition: front\nwidth: 100\nshell:\n  seats:\n    left: { bore: ?, depth: 5.1 }\nstack:\n  - end-cap: left\n    length: 50\n';
  expect(readHub(flow).hub?.shell?.seats[0]?.values.depth?.value.nominal).toBe(5.1);
});
