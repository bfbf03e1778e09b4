import { expect, test } from 'vitest';
import type { VariantAnalysis } from '../../server/analysis/analyze.ts';
import { lifeOf } from '../../server/analysis/life/life-of.ts';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { stackText } from '../../server/report/stack/stack-text.ts';
import { analyzeText, asWritten } from '../support/analyze-text.ts';

const bearing = (name: string, side: string): string =>
  `  - bearing: ${name}\n    code: 6803-2RS\n    seat: shell.${side}\n`;

/** Two bearings side by side on the left, one on the right; demo data. */
const hub = (second: string): string => `hub: Dunlin front
position: front
width: 100
clamp: 5 kN
axle: { material: aluminium 7075-T6, diameter: 17 h6, bore: 12 }
shell:
  material: aluminium 6061-T6
  outside: 34
  between-shoulders: 62
  seats:
    left:  { bore: 26 N7, depth: 10 }
    right: { bore: 26 N7, depth: 5 }
stack:
${bearing('left', 'left')}${bearing(second, 'left')}  - spacer: centre
    length: 62.06 ±0.01
${bearing('right', 'right')}`;

test('a pair with a bearing whose name another one bears is not worked out, and the name is asked for', () => {
  const { variants, limits } = analyzeText(hub('left'));
  const variant = variants[0] as VariantAnalysis;
  const { pairs, lines } = variant.mechanics('built');
  expect(pairs.length).toBeGreaterThan(0);
  for (const pair of pairs) {
    expect(isWorked(pair)).toBe(false);
    expect(pair).toEqual({ missing: 'name of its own for each bearing.left' });
  }
  expect(lines).toEqual([]);
  const said = stackText('dunlin.hub.yaml', variants, limits);
  expect(said).toContain('missing name of its own for each bearing.left');
  expect(said).not.toContain('NaN');
  expect(lifeOf(variant, null, { how: 'built', rider: null }).kilometres).toBe(null);
});

test('the same bearings with names of their own are worked out as a line of three', () => {
  const { pairs, lines } = asWritten(hub('inner')).mechanics('built');
  expect(pairs.every(isWorked)).toBe(true);
  expect(lines[0]?.bearings.map(({ address }) => address)).toEqual([
    'bearing.left',
    'bearing.inner',
    'bearing.right',
  ]);
});

test('no life is told of two bearings of one name, since either may be the larger one', () => {
  const two = hub('left')
    .replace(bearing('left', 'left'), '')
    .replace(bearing('right', 'right'), bearing('left', 'right'));
  const { bearings, missing } = lifeOf(asWritten(two), null, { how: 'built', rider: null });
  expect(bearings).toEqual([]);
  expect(missing).toEqual(['life in the shell: needs a name of its own for each bearing.left']);
});
