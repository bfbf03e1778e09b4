import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { planText } from '../../server/report/plan/plan-text.ts';
import { stepWords } from '../../server/report/plan/step-words.ts';
import { type Plan, planOf } from '../../server/service/plan.ts';
import { analyzeText } from '../support/analyze-text.ts';
import { feasibleHub, lockedHub } from '../support/random-hub.ts';

/** A workshop that thinks it knows better. */
const hot = 'workshop: Hot\nlimits: { fitting-temperature: 140 }\n';
const samples = join(import.meta.dirname, '..', '..', 'client', 'samples');
const texts = [
  ...readdirSync(samples)
    .filter((name) => name.endsWith('.hub.yaml'))
    .map((name) => readFileSync(join(samples, name), 'utf8')),
  ...Array.from({ length: 200 }, (_, index) => feasibleHub(index + 1)),
  ...Array.from({ length: 20 }, (_, index) => lockedHub(index + 1)),
  // A compound in the seat, and fits far too tight to drop in.
  feasibleHub(1).replaceAll('stop: shoulder', 'stop: shoulder, compound: yes'),
  feasibleHub(1).replaceAll(/\b[NMP]7\b/g, 'S7'),
];
const plans: readonly Plan[] = [undefined, hot].flatMap((workshop) =>
  texts.flatMap((text) => {
    const analysis = analyzeText(text, workshop);
    return analysis.variants.map((variant) => planOf(variant, analysis));
  }),
);
const steps = plans.flatMap(({ apart, together }) => [...apart, ...together]);

test('a bearing whose outer ring leaves its seat by its inner ring is scrap, and the step says so', () => {
  const pulled = steps.flatMap((step) =>
    step.kind === 'press-out'
      ? step.pressed
          .filter(({ ring, reach }) => ring !== 'inner' && reach.by !== 'outer-ring')
          .map((one) => ({ one, said: stepWords(step).details.join('\n') }))
      : [],
  );
  expect(pulled.length).toBeGreaterThan(200);
  for (const { one, said } of pulled) {
    expect(one.scrap).toBe(true);
    expect(said).toContain(`${one.bearing} is scrap`);
    expect(said).not.toContain(`${one.bearing} may be used again`);
  }
});

test('a bearing that goes in is pushed on the ring that is tight, on both where both are', () => {
  const pressed = steps.flatMap((step) => (step.kind === 'press-in' ? step.pressed : []));
  expect(new Set(pressed.map(({ ring }) => ring))).toEqual(new Set(['outer', 'inner', 'both']));
  for (const { ring, why, into } of pressed) {
    if (ring === 'inner') expect([why, into]).toEqual(['tight-on-axle', 'axle']);
    if (ring === 'outer') expect(why).toBe('tight-in-seat');
    if (ring === 'both') expect(['both-tight', 'stopped-by-spacer']).toContain(why);
  }
});

test('nothing is warmed past 80 °C, whatever a workshop writes', () => {
  const degrees = plans.flatMap((plan) =>
    [...planText('f', 'h', plan).matchAll(/(\d+) °C/g)].map(([, value]) => Number(value)),
  );
  expect(degrees.length).toBeGreaterThan(100);
  expect(Math.max(...degrees)).toBeLessThanOrEqual(80);
  const warmed = steps.flatMap((step) =>
    step.kind === 'press-in' ? step.pressed.flatMap(({ warming }) => warming ?? []) : [],
  );
  expect(Math.max(...warmed.map(({ to }) => to))).toBeLessThanOrEqual(80);
});

test('whoever puts a hub together is told to check it before it is ridden', () => {
  for (const plan of plans) {
    const text = planText('f', 'h', plan);
    if (plan.together.length === 0) continue;
    expect(text).toContain('the hub is checked on the stand before it is ridden');
    expect(text).not.toMatch(/\bsafe\b|fit to ride|ready to ride/i);
  }
});

test('a retaining ring in the way is out before its bearing moves, and is named again where force begins', () => {
  let seen = 0;
  for (const { apart } of plans) {
    apart.forEach((step, index) => {
      if (step.kind !== 'press-out') return;
      const said = stepWords(step).details.join();
      for (const ring of step.pressed.flatMap(({ ringsFirst }) => ringsFirst)) {
        const out = apart.findIndex(({ kind, part }) => kind === 'take-ring-out' && part === ring);
        expect(out).toBeGreaterThanOrEqual(0);
        expect(out).toBeLessThan(index);
        expect(said).toContain(`retaining ring of ${ring.replace('.retaining-ring', '')} is out`);
        seen += 1;
      }
    });
  }
  expect(seen).toBeGreaterThan(20);
});

test('no word of a plan is a slip of the program', () => {
  for (const plan of plans)
    expect(planText('f', 'h', plan)).not.toMatch(/undefined|NaN|\[object|Infinity|\bnull\b|!|\d\.\d{4,}/);
});
