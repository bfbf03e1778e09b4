import { expect, test } from 'vitest';
import { mending } from './apply.ts';
import { afterFix, covered, finding, look, pageHub } from './look.ts';

const cover = (at: string, to: string): string =>
  pageHub(['stack:', `beside:\n  - cover: left\n    at: ${at}\n    to: ${to}\nstack:`]);

test('the name within a place is marked and changed alone', () => {
  const text = cover('12.5 from end-cap.lefft', 'bearing.left');
  expect(covered(text, finding(text, 'name-not-found'))).toBe('end-cap.lefft');
  expect(afterFix(text, 'name-not-found').text).toContain('at: 12.5 from end-cap.left\n');
});

test('what a cover runs against is looked up too', () => {
  const text = cover('12.5 from end-cap.left', 'bearing.lefft');
  expect(covered(text, finding(text, 'name-not-found'))).toBe('bearing.lefft');
});

test('a seat of a housing that is not written says what to write', () => {
  const text = pageHub().replace(/shell:\n(?: .*\n)+/, '');
  const { findings } = look(text).findings;
  expect(findings.map(({ code }) => code)).toEqual(['name-not-found', 'name-not-found']);
  expect(findings[0]?.message).toContain('write shell with its seats, or leave seat out');
});

test('an empty seat is offered before one that is taken', () => {
  const text = pageHub(['seat: shell.right', 'seat: shell.rigth']);
  expect(mending(finding(text, 'name-not-found'))[0]?.title).toBe('Change to shell.right');
});

test('a hub that is nowhere is told with how to write it', () => {
  const text = 'wheel: Plover rear\nhub: ./plover-rear.hub.yaml\n';
  const { findings } = look(text, {}, 'plover.wheel.yaml').findings;
  expect(findings.filter(({ group }) => group === 'reference').map(({ code }) => code)).toEqual([
    'file-not-found',
  ]);
});

test('a hub beside the wheel is found, and its variant', () => {
  const others = {
    'knot.hub.yaml': `${pageHub()}variants:\n  thru-12:\n    change:\n      end-cap.left: { bore: 12.05 }\n`,
  };
  const text = 'wheel: Knot front\nhub: ./knot.hub.yaml\nvariant: thru-12\n';
  const { findings } = look(text, others, 'knot.wheel.yaml').findings;
  expect(findings.filter(({ group }) => group === 'reference')).toEqual([]);
});
