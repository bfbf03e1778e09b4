import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length } from '../../engine/base/figures.ts';
import type { PressedIn } from '../../service/step.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { readablePlan } from './lockable.ts';

/** A bearing is pressed in, and no driver on the wall bears on the right ring of it. */
export const driverMissing: Check = {
  code: 'driver-missing',
  group: 'service',
  severity: 'information',
  summary: 'No driver on the wall fits a bearing that is pressed in.',
  page: {
    why: 'A driver that touches the inner ring or the seal while the outer ring is pressed home sends the force through the balls and dents their tracks. A driver wider than the bore stops at the housing before the ring is home. The size to make follows from the bearing: for an outer ring 0.3 mm under its outside, hollow from a fifth of the section inwards.',
    bad: pageHub(
      ['left: { bore: 26 N7, depth: 5.1', 'left: { bore: 28 N7, depth: 7.1'],
      ['code: 6803-2RS', 'code: 6902-2RS'],
    ),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => missing(analysis, variant)),
};

const rings = { outer: 'outer ring', inner: 'inner ring', both: 'both rings' } as const;

function* missing(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  if (!analysis.workshop || analysis.workshop.drivers.length === 0) return;
  const plan = readablePlan(analysis, variant);
  const wanted = (plan?.together ?? [])
    .flatMap((step) => (step.kind === 'press-in' ? step.pressed : []))
    .filter(({ onWall }) => onWall?.length === 0);
  const keyOf = ({ ring, driver }: PressedIn): string =>
    `${ring} ${driver.outside.nominal} ${driver.inside.nominal}`;
  for (const key of new Set(wanted.map(keyOf))) {
    const alike = wanted.filter((one) => keyOf(one) === key);
    const [first] = alike;
    const parts = variant.assembly.line.filter(({ address }) =>
      alike.some(({ bearing }) => bearing === address),
    );
    const [part] = parts;
    if (!first || !part) continue;
    const names = parts
      .map(({ address }) => address)
      .join(', ')
      .replace(/, ([^,]*)$/, ' and $1');
    yield {
      path: [...part.part.path, part.part.kind],
      message: `no driver on the wall fits ${names}, pushed on ${rings[first.ring]}: wanted ${size(first)} — make one, or borrow it`,
      related: parts.slice(1).map((other) => ({
        path: [...other.part.path, other.part.kind],
        message: `${other.address} takes the same driver`,
      })),
      data: { ring: first.ring, outside: first.driver.outside, inside: first.driver.inside },
    };
  }
}

const size = ({ driver }: PressedIn): string =>
  `⌀${length(driver.outside.nominal, 1)} outside and ⌀${length(driver.inside.nominal, 1)} inside`;
