import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { positionsIn } from '../server/features/positions.ts';
import { createWorkspace, type Snapshot } from '../server/workspace/workspace.ts';
import { applied } from './checks/apply.ts';

const folder = join(import.meta.dirname, '..', 'client', 'samples');
const names = readdirSync(folder);

/** Every fault planted in `faulty-front.hub.yaml`: its line, what is found, and what is wrong there. */
const planted: readonly (readonly [line: number, code: string, severity: string, what: string])[] = [
  [7, 'unknown-key', 'error', 'materiel for material'],
  [11, 'fillet-too-large', 'error', 'fillet 0.5 under a ring whose smallest chamfer is 0.3 (ISO 15)'],
  [12, 'seat-proud', 'warning', 'a seat 4.2 deep for a ring 5 wide'],
  [20, 'end-caps-swapped', 'error', 'the cap called right lies on the left'],
  [21, 'width-off', 'error', 'caps 0.06 too long each: 100.24 in sum, 100.12 on average, 100.10 allowed'],
  [24, 'bearing-not-decoded', 'warning', '6893 is no bearing; the size beside it keeps the stack alive'],
  [30, 'spacer-rubs', 'warning', 'a spacer 22.4 wide on an inner ring of about 20'],
  [38, 'wrong-unit', 'error', 'a rider of 95 kgs'],
];

function snapshots(): readonly (readonly [string, Snapshot])[] {
  const workspace = createWorkspace();
  workspace.setRoots(['/samples']);
  for (const name of names) workspace.setFile(`/samples/${name}`, readFileSync(join(folder, name), 'utf8'));
  return names.flatMap((name) => {
    const snapshot = workspace.snapshot(`/samples/${name}`);
    return snapshot ? [[name, snapshot] as const] : [];
  });
}

test('the samples are nine hubs that are sound, one full of faults, four with one fault each, five wheels and a workshop', () => {
  expect(names).toEqual([
    'avocet-cone.hub.yaml',
    'curlew-family.hub.yaml',
    'dunlin-front.hub.yaml',
    'dunlin-touring.wheel.yaml',
    'faulty-front.hub.yaml',
    'godwit-long.hub.yaml',
    'knot-front.hub.yaml',
    'plover-offset.wheel.yaml',
    'plover-rear.hub.yaml',
    'plover-touring.wheel.yaml',
    'redshank-clamp.hub.yaml',
    'ruff-gravel.wheel.yaml',
    'ruff-rear.hub.yaml',
    'saltmarsh.workshop.yaml',
    'sanderling-cold.hub.yaml',
    'stilt-front.hub.yaml',
    'stilt-road.wheel.yaml',
    'turnstone-worn.hub.yaml',
    'whimbrel-short.hub.yaml',
  ]);
  expect(snapshots()).toHaveLength(names.length);
});

/** Samples with one fault, said as often as the hub has it. */
const single = new Map<string, readonly string[]>([
  ['godwit-long.hub.yaml', ['spacer-long']],
  ['redshank-clamp.hub.yaml', ['clamp-takes-play']],
  ['sanderling-cold.hub.yaml', ['clearance-cold', 'clearance-cold']],
  ['whimbrel-short.hub.yaml', ['spacer-short']],
]);
const isSound = (name: string): boolean => name !== 'faulty-front.hub.yaml' && !single.has(name);

test('the sound samples check clean, without so much as a hint', () => {
  const found = snapshots()
    .filter(([name]) => isSound(name))
    .flatMap(([name, { findings }]) => [
      ...findings.findings.map(({ code, message }) => `${name}: ${code}: ${message}`),
      ...findings.broken.map(({ code, error }) => `${name}: ${code} could not run: ${error}`),
    ]);
  expect(found).toEqual([]);
});

test.each([...single])(
  '%s shows its fault and no other, and the first fix leaves it clean',
  (name, codes) => {
    const [, snapshot] = snapshots().find(([other]) => other === name) ?? [];
    expect(snapshot?.findings.findings.map(({ code }) => code)).toEqual(codes);
    const workspace = createWorkspace();
    workspace.setRoots(['/samples']);
    for (const other of names)
      workspace.setFile(`/samples/${other}`, readFileSync(join(folder, other), 'utf8'));
    let text = snapshot?.document.text ?? '';
    for (const _ of codes) {
      const [finding] = workspace.snapshot(`/samples/${name}`)?.findings.findings ?? [];
      const fix = finding?.fixes[0];
      expect(fix?.preferred).toBe(true);
      if (fix) text = applied(text, fix);
      workspace.setFile(`/samples/${name}`, text);
    }
    expect(workspace.snapshot(`/samples/${name}`)?.findings.findings.map(({ message }) => message)).toEqual(
      [],
    );
  },
);

test('nothing in the sound samples is left unchecked for want of a dimension, but the offset of ring faces', () => {
  const missing = snapshots()
    .filter(([name]) => name !== 'faulty-front.hub.yaml')
    .flatMap(([name, { analysis }]) =>
      analysis.variants.flatMap(({ unchecked }) => unchecked.map((item) => `${name}: ${item.missing}`)),
    );
  expect(missing.filter((text) => !text.includes('face-offset'))).toEqual([]);
  expect(missing.length).toBeGreaterThan(0);
});

test('the faulty sample shows exactly the planted faults, each on its line', () => {
  const [, snapshot] = snapshots().find(([name]) => name === 'faulty-front.hub.yaml') ?? [];
  const positions = positionsIn(snapshot?.document.text ?? '');
  const found = snapshot?.findings.findings.map(({ code, severity, span }) => [
    positions.position(span.start).line + 1,
    code,
    severity,
  ]);
  expect(found).toEqual(planted.map(([line, code, severity]) => [line, code, severity]));
});

test('every planted fault is of a kind of its own', () => {
  expect(new Set(planted.map(([, code]) => code)).size).toBe(planted.length);
});

test('the share outside the width is below what three sigma leave, in every variant', () => {
  for (const [name, { analysis }] of snapshots()) {
    if (name === 'faulty-front.hub.yaml') continue;
    for (const { width, assembly } of analysis.variants) {
      // Cones are screwed to the width: there is no sum that could miss it.
      if (assembly.hub.stack.some(({ kind }) => kind === 'cone')) continue;
      // 0.27 % of a normal spread lie beyond ±3σ.
      expect(width.drawn?.shareOutside ?? 1).toBeLessThan(0.0027);
    }
  }
});
