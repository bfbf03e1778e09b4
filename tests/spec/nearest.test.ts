import { expect, test } from 'vitest';
import { nearestOf } from '../../server/spec/nearest.ts';

const keys = ['length', 'face', 'outside', 'bore', 'spigot', 'code', 'inside'];

test.each([
  ['lenght', 'length'],
  ['lengt', 'length'],
  ['outsid', 'outside'],
  ['Length', 'length'],
  ['fcae', 'face'],
  ['insidde', 'inside'],
])('%s is near %s', (word, near) => {
  expect(nearestOf(word, keys)).toBe(near);
});

test.each(['width', 'x', '', 'cone', 'material'])('%s is near none of the keys of an end cap', (word) => {
  expect(nearestOf(word, ['length', 'face', 'outside', 'spigot'])).toBeNull();
});

test('the first of equally near words wins, and the limit holds', () => {
  expect(nearestOf('cat', ['bat', 'rat'])).toBe('bat');
  expect(nearestOf('spacer', ['spigot'], 6)).toBe('spigot');
  expect(nearestOf('spacer', ['spigot'])).toBeNull();
});
