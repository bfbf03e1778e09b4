import { expect, test } from 'vitest';
import { readSpec, specKindOf } from '../../server/spec/read-spec.ts';

const workshop = `measuring: ±0.02
limits:
  running-gap: 0.3 mm
  share-outside: 1 %
  seat-depth: 50 µm
bearings:
  DB-17: { code: 6803-2RS C3 }
  DB-18: 6805
  DB-19: { size: 17x26x5 }
materials:
  forged: { E: 71 GPa, nu: 0.33, expansion: 23, density: 2.81 g/cm³, yield: 505 MPa }
stock:
  bearings: { 6803-2RS: 12 }
  spokes:
    2.0/1.8/2.0: [289, 291]
  shims: [0.1, 0.2]
drivers:
  - { name: D26, outside: 25.8, inside: 18 }
defaults: { clamp: 5 kN, temperature: -10..45 °C, rider: 95 kg }
`;

test('a workshop file reads into its own units', () => {
  const document = readSpec(workshop, 'workshop');
  expect(document.problems).toEqual([]);
  const read = document.workshop;
  expect(read?.measuring?.value).toBe(0.02);
  expect(read?.limits['running-gap']).toEqual({ value: 0.3, path: ['limits', 'running-gap'] });
  expect(read?.limits['share-outside']?.value).toBeCloseTo(0.01, 12);
  expect(read?.limits['seat-depth']?.value).toBeCloseTo(0.05, 12);
  expect(read?.bearings['DB-17']?.value.code).toBe('6803-2RS C3');
  expect(read?.bearings['DB-18']?.value.code).toBe('6805');
  expect(read?.bearings['DB-19']?.value.size).toMatchObject({ bore: 17, outside: 26, width: 5 });
  expect(read?.materials['forged']?.values).toMatchObject({
    E: { value: { value: 71000 } },
    density: { value: 2810 },
  });
  expect(read?.materials['forged']?.values.expansion?.value).toBeCloseTo(23e-6, 12);
  expect(read?.stock.bearings['6803-2RS']?.value).toBe(12);
  expect(read?.stock.spokes['2.0/1.8/2.0']?.value).toEqual([289, 291]);
  expect(read?.stock.shims?.value).toEqual([0.1, 0.2]);
  expect(read?.drivers[0]?.values.name?.value).toBe('D26');
  expect(read?.defaults.clamp?.value.value).toBe(5000);
});

test('what is wrong in one entry leaves the others alive', () => {
  const text = workshop
    .replace('12 }', 'many, 6902: 3 }')
    .replace('0.3 mm', '3 furlong')
    .replace('289,', 'x,');
  const document = readSpec(text, 'workshop');
  const marked = document.problems.map((p) => [p.code, text.slice(p.span.start, p.span.end)]);
  expect(marked).toEqual([
    ['wrong-unit', '3 furlong'],
    ['value-not-understood', 'many'],
    ['value-not-understood', 'x'],
  ]);
  expect(document.workshop?.stock.bearings['6902']?.value).toBe(3);
  expect(document.workshop?.limits['seat-depth']?.value).toBeCloseTo(0.05, 12);
});

test.each([
  ['dunlin-front.hub.yaml', 'hub'],
  ['a/b/dunlin.wheel.yml', 'wheel'],
  ['bench.workshop.yaml', 'workshop'],
  ['hub.yaml', null],
  ['dunlin.yaml', null],
  ['dunlin.hub.yaml.txt', null],
])('%s is a file of kind %s', (name, kind) => {
  expect(specKindOf(name)).toBe(kind);
});
