import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { planOf } from '../../server/service/plan.ts';
import { analyzeText } from '../support/analyze-text.ts';
import { feasibleHub, lockedHub } from '../support/random-hub.ts';
import { holdEachOther, jammedAtRest, piecesOf, replay } from '../support/replay.ts';

const root = join(import.meta.dirname, '..', '..');
const folders = [join(root, 'client', 'samples'), join(root, 'tests', 'drawing', 'hubs')];
const workshop = readFileSync(join(root, 'client', 'samples', 'saltmarsh.workshop.yaml'), 'utf8');
const samples = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.hub.yaml'))
    .map((name) => [name, readFileSync(join(folder, name), 'utf8')] as const),
);

const plans = (text: string) => {
  const analysis = analyzeText(text, workshop);
  return analysis.variants.map((variant) => ({
    variant,
    plan: planOf(variant, analysis),
    pieces: piecesOf(variant),
  }));
};

test.each(samples)('%s is taken apart and put together again without a collision', (_, text) => {
  for (const { plan, pieces } of plans(text)) {
    expect(plan.locked).toBeNull();
    expect(replay(pieces, plan.apart, plan.together)).toEqual([]);
  }
});

const seeds = (count: number): readonly number[] => Array.from({ length: count }, (_, index) => index + 1);

test('200 random hubs that can be built are taken apart and put together without a collision', () => {
  const wrong = seeds(200).flatMap((seed) =>
    plans(feasibleHub(seed)).flatMap(({ plan, pieces }) => [
      ...jammedAtRest(pieces).map((pair) => `${seed}: ${pair}`),
      ...(plan.locked ? [`${seed}: locked ${plan.locked.join(' ')}`] : []),
      ...replay(pieces, plan.apart, plan.together).map((text) => `${seed}: ${text}`),
    ]),
  );
  expect(wrong).toEqual([]);
});

test('in 50 hubs that cannot be built the parts named hold each other when all else is gone, and none of them is spare', () => {
  const wrong = seeds(50).flatMap((seed) =>
    plans(lockedHub(seed)).flatMap(({ plan, pieces }) => {
      if (!plan.locked) return [`${seed}: came apart`];
      const { locked } = plan;
      if (!holdEachOther(pieces, locked)) return [`${seed}: ${locked.join(' ')} come apart`];
      const spare = locked.filter((address) =>
        holdEachOther(
          pieces,
          locked.filter((other) => other !== address),
        ),
      );
      return spare.map((address) => `${seed}: ${address} holds nothing`);
    }),
  );
  expect(wrong).toEqual([]);
});

test('the bench sees a step left out, two steps swapped and a wrong side', () => {
  const [first] = plans(feasibleHub(3));
  if (!first) throw new Error('the text is no hub');
  const { plan, pieces } = first;
  const [one, two, ...rest] = plan.apart;
  if (!one || !two) throw new Error('the plan is too short');
  expect(replay(pieces, plan.apart.slice(0, -1), plan.together)).not.toEqual([]);
  expect(replay(pieces, [two, one, ...rest], plan.together)).not.toEqual([]);
  const turned = { ...one, towards: one.towards === 'right' ? ('left' as const) : ('right' as const) };
  expect(replay(pieces, [turned, two, ...rest], plan.together)).not.toEqual([]);
});

test('the random hubs are of every kind: collars, retaining rings on both sides, freehubs, pairs, threads, tight axles', () => {
  const texts = seeds(200).map(feasibleHub);
  const kinds: readonly (readonly [string, RegExp])[] = [
    ['a collar', /collar: centre/],
    ['a sleeve', /spacer: centre/],
    ['a ring at the open end', /side: open/],
    ['a ring at the blind end', /side: blind/],
    ['a freehub', /^freehub:/m],
    ['two bearings in one seat', /bearing: far/],
    ['a seat only the spacer stops', /stop: spacer/],
    ['a threaded cap', /fixing: thread/],
    ['a spigot', /spigot/],
    ['a socket', /socket/],
    ['a short land', /land:/],
    ['an axle tight in its bearings', /[km]6/],
    ['a shim', /shim: left/],
  ];
  const rare = kinds.filter(([, pattern]) => texts.filter((text) => pattern.test(text)).length < 15);
  expect(rare.map(([name]) => name)).toEqual([]);
  const done = new Set(
    texts.flatMap((text) =>
      plans(text).flatMap(({ plan }) => [...plan.apart, ...plan.together].map(({ kind }) => kind)),
    ),
  );
  expect(done.size).toBe(8);
  const reached = texts.flatMap((text) =>
    plans(text).flatMap(({ plan }) =>
      plan.apart.flatMap((step) =>
        step.kind === 'press-out' ? step.pressed.map(({ reach }) => reach.by) : [],
      ),
    ),
  );
  expect(new Set(reached)).toEqual(new Set(['drift', 'part', 'inner-ring', 'outer-ring']));
});
