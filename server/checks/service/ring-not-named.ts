import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { seatsOf } from '../seat-of.ts';

const ringed: readonly [string, string] = [
  'right: { bore: 26 N7, depth: 5.1 ±0.02, fillet: 0.2, shoulder-bore: 23 }',
  'right: { bore: 26 N7, depth: 7.5 ±0.02, fillet: 0.2, shoulder-bore: 23, retaining-ring: { side: open, thickness: 1.2, groove-width: 1.3, groove-from-face: 1.2 } }',
];

/** The notes on service say nothing of a retaining ring that has to come out first. */
export const ringNotNamed: Check = {
  code: 'ring-not-named',
  group: 'service',
  severity: 'warning',
  summary: 'The notes on service do not name a retaining ring that has to come out first.',
  page: {
    why: 'Driving a bearing against a retaining ring nobody mentioned is the classic way to destroy a hub: the groove tears and the seat with it. Whoever has written notes on service is trusted to have told all of it, so the ring belongs into them.',
    bad: pageHub(['width: 100 ±0.2', 'width: 100 ±0.2\nservice: new bearings every second winter'], ringed),
    good: pageHub(
      [
        'width: 100 ±0.2',
        'width: 100 ±0.2\nservice: new bearings every second winter; first take the retaining ring out of shell.right',
      ],
      ringed,
    ),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => unnamed(analysis, variant)),
};

/** Words by which a note tells of the ring. */
const told = /\b(?:ring|rings|circlip|circlips|snap-?ring|retaining)\b/i;

function* unnamed(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { service } = variant.assembly.hub.values;
  if (!service || told.test(service.value)) return;
  const seats = seatsOf(variant).filter(({ seat, bearings }) => seat.ring && 0 < bearings.length);
  const [first] = seats;
  if (!first) return;
  const names = seats.map(({ address }) => address).join(' and ');
  const held = seats.flatMap(({ bearings }) => bearings.map(({ address }) => address)).join(' and ');
  const add = `first take the retaining ring out of ${names}`;
  yield {
    path: service.path,
    message: `service does not name the retaining ring of ${names}: ${held} driven against it tears the seat — add that it comes out first`,
    related: seats.map(({ seat, address }) => ({
      path: seat.ring?.path ?? seat.path,
      message: `the retaining ring of ${address}`,
    })),
    data: { seats: seats.map(({ address }) => address) },
    fixes: /[\r\n]/.test(service.value)
      ? []
      : [
          {
            title: `Add to service: ${add}`,
            changes: setValue(
              analysis.spec,
              service.path,
              `${service.value.trimEnd().replace(/[.;]$/, '')}; ${add}`,
            ),
            preferred: true,
          },
        ],
  };
}
