import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { plain } from '../../engine/base/figures.ts';
import { comesApartWith } from '../../service/comes-apart-with.ts';
import type { Plan } from '../../service/plan.ts';
import { insertKey, renameKey } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { isDoubtful, readablePlan } from './lockable.ts';

const collar = (name: string): string => `  - collar: ${name}\n    length: 5\n    outside: 19.6\n`;
const spacer = (name: string): string =>
  `  - spacer: ${name}\n    length: 5\n    inside: 17.1\n    outside: 19.6\n`;

/** There is no order in which the hub could be put together or taken apart. */
export const partsLockEachOther: Check = {
  code: 'parts-lock-each-other',
  group: 'service',
  severity: 'error',
  summary: 'There is no order in which some parts could be fitted or taken out.',
  page: {
    why: 'Each part can only be slid in from one end or the other. Where every one of a few parts stands in the way of another one whichever way it moves, none of them can be the last to go in or the first to come out, so the hub cannot be built as drawn. The usual cause is an axle with a shoulder outside of both bearings, or a retaining ring that no pliers can reach.',
    bad: pageHub(
      ['  - bearing: left\n', `${collar('a')}  - bearing: left\n`],
      ['  - end-cap: right\n', `${collar('b')}  - end-cap: right\n`],
    ),
    good: pageHub(
      ['  - bearing: left\n', `${collar('a')}  - bearing: left\n`],
      ['  - end-cap: right\n', `${spacer('b')}  - end-cap: right\n`],
    ),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => locked(analysis, variant)),
};

function* locked(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const plan = readablePlan(analysis, variant);
  if (!plan?.locked || plan.locked.some((address) => isDoubtful(plan, address))) return;
  const parts = plan.locked.flatMap((address) => plan.bodies.filter((body) => body.address === address));
  const collars = parts.flatMap((body) => body.with);
  const free = collars.filter((address) => comesApartWith(plan, variant, address));
  const [first] = free;
  const names = plan.locked.join(', ').replace(/, ([^,]*)$/, ' and $1');
  const stuck = variant.assembly.line.find(
    ({ address }) => address === (first ?? plan.locked?.find((one) => one.startsWith('bearing.'))),
  );
  const part = stuck?.part ?? variant.assembly.hub.stack[0];
  if (!part) return;
  yield {
    path: [...part.path, part.kind],
    part: 'key',
    message: `${names} hold each other both ways: none of them can be fitted last or taken out first — ${
      first
        ? `make ${first} a part of its own, slid over the axle`
        : 'let one of them pass: a wider bore, a lower shoulder, or a part in two pieces'
    }`,
    related: parts.flatMap((body) =>
      body.address === stuck?.address
        ? []
        : [{ path: body.path, message: `${body.address} stands in the way` }],
    ),
    data: { locked: plan.locked },
    fixes: free.flatMap((address, index) => asSpacer(analysis, variant, plan, address, index === 0)),
  };
}

/** A collar turned into a spacer of the same length; only where nothing else in the file calls it by its name. */
function asSpacer(
  analysis: Analysis,
  variant: VariantAnalysis,
  plan: Plan,
  address: string,
  preferred: boolean,
): NonNullable<Draft['fixes']> {
  const found = variant.assembly.line.find((item) => item.address === address);
  const axle = plan.bodies.find(({ kind }) => kind === 'axle');
  if (!found || !axle || analysis.spec.text.includes(address)) return [];
  const { part } = found;
  const taken = variant.assembly.line.some((other) => other.address === `spacer.${part.name}`);
  const diameter = variant.assembly.hub.axle?.values.diameter?.value.nominal;
  if (taken || diameter === undefined) return [];
  const inside = plain(diameter + 0.1);
  return [
    {
      title: `Make ${address} a spacer with a bore of ${inside}: the hub then comes apart and goes together`,
      changes: [
        ...renameKey(analysis.spec, [...part.path, 'collar'], 'spacer'),
        ...(part.values.inside
          ? []
          : insertKey(analysis.spec, part.path, 'inside', inside, { after: 'length' })),
      ],
      preferred,
    },
  ];
}
