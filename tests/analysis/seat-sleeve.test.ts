import { expect, test } from 'vitest';
import { materialOf } from '../../server/analysis/mechanics/material-of.ts';
import { materials } from '../../server/engine/tables/materials.ts';
import { asWritten } from '../support/analyze-text.ts';

const hub = (sleeve = ''): string => `hub: Dunlin front
position: front
width: 100
shell:
  material: aluminium 6061-T6
  outside: 40
  between-shoulders: 62
  seats:
    left: { bore: 26 P7${sleeve} }
    right: { bore: 26 P7 }
stack:
  - end-cap: left
    length: 14
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14
`;

const fitOf = (text: string) => {
  const [left] = asWritten(text).mechanics().bearings;
  return left?.outerFit?.fit;
};

test("a sleeve of the shell's own material changes nothing: two tubes of one material are one", () => {
  const [plain, sleeved] = [
    fitOf(hub()),
    fitOf(hub(', sleeve: { outside: 32, material: aluminium 6061-T6 }')),
  ];
  expect(sleeved?.pressure).toBeCloseTo(plain?.pressure ?? 0, 9);
  expect(sleeved?.clearanceLoss).toBeCloseTo(plain?.clearanceLoss ?? 0, 12);
});

/*
 * Compound cylinder by Lamé, from the outside in (Timoshenko, Strength of Materials II, thick-walled cylinders):
 * the shell of inside 2b and outside 2c answers a pressure p2 with u = p2·b/E·((c² + b²)/(c² − b²) + ν); the sleeve
 * between a and b takes p1 inside and p2 outside. Equal u at b gives p2/p1, then u at a under p1 = 1.
 */
test('a steel sleeve in a light shell gives way as two thick cylinders of two materials do', () => {
  const fit = fitOf(hub(', sleeve: { outside: 30, material: steel }'));
  const bare = fitOf(hub());
  const [a, b, c] = [13, 15, 20];
  const { E: Es, nu: nus } = materialOf('it', { value: 'steel', path: [] }, 'steel', null);
  const { E: Ea, nu: nua } = materials['aluminium 6061-T6'];
  const shell = (b / Ea) * ((c * c + b * b) / (c * c - b * b) + nua);
  // Sleeve: u(r) = ((1−ν)/E)·(a²p1 − b²p2)/(b²−a²)·r + ((1+ν)/E)·a²b²(p1−p2)/((b²−a²)·r).
  const u = (r: number, p1: number, p2: number): number =>
    ((1 - nus) / Es) * ((a * a * p1 - b * b * p2) / (b * b - a * a)) * r +
    ((1 + nus) / Es) * ((a * a * b * b * (p1 - p2)) / ((b * b - a * a) * r));
  const p2 = u(b, 1, 0) / (shell - u(b, 0, 1));
  const give = u(a, 1, p2);
  const giveBare = (a / Ea) * ((c * c + a * a) / (c * c - a * a) + nua);
  expect(give).toBeLessThan(giveBare);
  // The ring gives way alike in both, so the interference less what it takes is what the wall takes: p·give.
  const pressures = [fit?.pressure ?? 0, bare?.pressure ?? 0] as const;
  const ring = (pressure: number, wall: number, interference: number): number =>
    (interference / 2 - pressure * wall) / pressure;
  const [sleeved, plain] = [
    asWritten(hub(', sleeve: { outside: 30, material: steel }')),
    asWritten(hub()),
  ].map((variant) => variant.mechanics().bearings[0]?.outerFit?.interference.mean ?? 0) as [number, number];
  expect(sleeved).toBeCloseTo(plain, 12);
  const relative = ring(pressures[0], give, sleeved) / ring(pressures[1], giveBare, plain);
  expect(relative).toBeCloseTo(1, 6);
});
