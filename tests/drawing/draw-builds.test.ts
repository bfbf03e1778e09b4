import { expect, test } from 'vitest';
import { isWorked } from '../../server/analysis/mechanics/pair-mechanics.ts';
import { pairStatistics } from '../../server/analysis/mechanics/pair-statistics.ts';
import { drawBuilds } from '../../server/drawing/draw-builds.ts';
import { asWritten } from '../support/analyze-text.ts';
import { hubWith } from '../support/spec-at-cursor.ts';

function builds(spacer: string, mostPlay = 0.05) {
  const variant = asWritten(`${hubWith(['62.06', spacer])}clamp: 2 kN\n`);
  const pair = variant.mechanics().pairs.find(isWorked);
  if (!pair) throw new Error('the pair is not worked out');
  const statistics = pairStatistics(pair, 'drawn', mostPlay);
  return { statistics, ...drawBuilds('a and b', statistics, mostPlay, 'one') };
}

/** Corners of the bars: x and height of each, mm of the sheet. */
function barsOf(svg: string): readonly { left: number; right: number; height: number }[] {
  return [...svg.matchAll(/class="hw-solid"[^>]* d="M([\d. L]+)Z"/g)].map(([, path = '']) => {
    const points = path.split('L').map((point) => point.trim().split(' ').map(Number));
    const xs = points.map(([x = 0]) => x);
    const ys = points.map(([, y = 0]) => y);
    return { left: Math.min(...xs), right: Math.max(...xs), height: Math.max(...ys) - Math.min(...ys) };
  });
}

test('each bar is as high as its share of the builds', () => {
  const { svg, statistics } = builds('62.06');
  const filled = statistics.histogram.counts.filter((count) => count > 0);
  const bars = barsOf(svg);
  expect(bars).toHaveLength(filled.length);
  const [most, tallest] = [Math.max(...filled), Math.max(...bars.map(({ height }) => height))];
  for (const [at, { height }] of bars.entries()) {
    expect(height / tallest).toBeCloseTo((filled[at] ?? 0) / most, 2);
  }
});

test('bars stand left to right and beside each other, inside the picture', () => {
  const bars = barsOf(builds('62.04').svg);
  for (const [at, { left, right }] of bars.entries()) {
    expect(left).toBeGreaterThanOrEqual(bars[at - 1]?.right ?? 0);
    expect(right).toBeLessThanOrEqual(120);
  }
});

test('the words say the three shares, which are all there is', () => {
  const { words } = builds('62.00');
  const shares = /loaded (\S+ %|none), more play than 50 µm (\S+ %|none), right (\S+ %|none|all)/.exec(words);
  const sum = shares
    ?.slice(1)
    .reduce(
      (total, text) => total + (text === 'none' ? 0 : text === 'all' ? 100 : Number.parseFloat(text)),
      0,
    );
  expect(sum).toBeGreaterThan(98);
  expect(sum).toBeLessThan(102);
  expect(words).toContain('Of 20 000 builds');
});

test('a spacer far too short loads every build, far too long gives none of them a load from it', () => {
  expect(builds('61.80').words).toContain('loaded all');
  expect(builds('61.80').words).toMatch(/99 % carry \d+(\.\d+)? k?N or less/);
});

test('limits beyond the builds are on the picture too', () => {
  const { svg } = builds('62.06', 0.3);
  expect(svg).toContain('300 µm, the most wanted');
  expect(Math.max(...barsOf(svg).map(({ right }) => right))).toBeLessThan(60);
});

test('what a page embeds carries no style, no script, and its own ids', () => {
  const { svg } = builds('62.06');
  expect(svg).not.toMatch(/style|<script|\son\w+=/);
  expect(svg).toContain('id="one-title"');
  expect(svg).not.toContain('id="hw-title"');
  expect(svg).toMatch(/<title[^>]*>Play of a and b once clamped/);
});
