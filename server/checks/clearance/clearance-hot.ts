import type { Check } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { clearanceAtEnd } from './clearance-at-end.ts';

const shell: readonly [string, string] = [
  '  between-shoulders',
  '  outside: 40\n  material: titanium\n  between-shoulders',
];

const looser: readonly [string, string] = ['code: 6803-2RS\n', 'code: 6803-2RS C3\n'];

/** A ring that grows more than what stands round it, or an axle that grows inside it, and leaves no clearance. */
export const clearanceHot: Check = {
  code: 'clearance-hot',
  group: 'clearance',
  severity: 'warning',
  summary: 'In the warm a bearing loses its clearance to its seat or its axle.',
  page: {
    why: 'A bearing ring grows half as much again as titanium round it, and a light alloy axle twice as much as the ring on it. Either squeezes the balls when the hub is warm: in the sun, behind a brake, on a long descent. The bench, where it still turns freely, does not show it.',
    bad: `temperature: 10..80 °C\n${pageHub(shell)}`,
    good: `temperature: 10..80 °C\n${pageHub(shell, looser, looser)}`,
    sources: [
      'ISO 5753, radial internal clearance',
      'thermal expansion of the materials as their tables print it',
      'thick cylinders of two materials (Lamé)',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => clearanceAtEnd(analysis, variant, 'hi')),
};
