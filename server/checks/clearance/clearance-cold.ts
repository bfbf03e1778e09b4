import type { Check } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { clearanceAtEnd } from './clearance-at-end.ts';

const shell: readonly [string, string] = [
  '  between-shoulders',
  '  outside: 40\n  material: aluminium 6061-T6\n  between-shoulders',
];

const looser: readonly [string, string] = ['code: 6803-2RS\n', 'code: 6803-2RS C3\n'];

/** A shell that shrinks onto the ring in the cold and leaves no clearance. */
export const clearanceCold: Check = {
  code: 'clearance-cold',
  group: 'clearance',
  severity: 'warning',
  summary: 'In the cold the shell shrinks onto a bearing and uses up its clearance.',
  page: {
    why: 'Light alloy shrinks twice as much as steel. A seat that is right on the bench grips harder in frost, and the ring it squeezes takes the clearance from the balls: the wheel that ran free in the workshop turns stiffly in winter. A looser class or a larger clearance group leaves room at both ends of the range.',
    bad: `temperature: -10..40 °C\n${pageHub(shell)}`,
    good: `temperature: -10..40 °C\n${pageHub(shell, looser, looser)}`,
    sources: [
      'ISO 5753, radial internal clearance',
      'thermal expansion of the materials as their tables print it',
      'thick cylinders of two materials (Lamé)',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => clearanceAtEnd(analysis, variant, 'lo')),
};
