import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Dimension, PartValues, StackPart } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';

/** Two parts of one name left and right are alike but for one dimension that looks like a slip. */
export const symmetricPartsDiffer: Check = {
  code: 'symmetric-parts-differ',
  group: 'stack',
  severity: 'hint',
  summary: 'Two parts that look like a mirrored pair differ a little in one dimension.',
  page: {
    why: 'End caps of a front hub usually come from one drawing. When all dimensions agree and one differs by a few tenths, it is more often a slip of the pen than a design, and it moves the rim off centre by half the difference. A hub that is meant to be so can say why with an allow comment.',
    bad: pageHub([
      '  - end-cap: left\n    length: 14.03 ±0.02',
      '  - end-cap: left\n    length: 14.08 ±0.02',
    ]),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => slips(analysis, variant)),
};

const compared = [
  'length',
  'face',
  'outside',
  'inside',
  'bore',
  'spigot',
  'socket',
] as const satisfies readonly (keyof PartValues)[];
/** A difference larger than this, mm, is taken as meant. */
const slipAtMost = 0.5;

function* slips(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const { stack, values } = variant.assembly.hub;
  if (values.position?.value !== 'front') return;
  const { width } = variant;
  const widthIsOff = width.drawn && width.loop.wanted && !inside(width.drawn.mean, width.loop.wanted);
  for (const right of stack.filter(({ name }) => name === 'right')) {
    const left = stack.find((part) => part.kind === right.kind && part.name === 'left');
    const slip = left ? oneSlip(left, right, analysis.limits.value('mirror-difference')) : null;
    // A length that also puts the width off is one fault, and said there.
    if (!left || !slip || (widthIsOff && slip.key === 'length')) continue;
    const [mine, other] = [slip.right.value.nominal, slip.left.value.nominal];
    const name = `${slip.key} of ${right.address}`;
    yield {
      path: slip.right.path,
      message: `${name} is ${length(mine)}, of ${left.address} ${length(other)}: ${length(Math.abs(mine - other))} mm apart where all else is alike — make them the same if they are one part`,
      related: [{ path: slip.left.path, message: `${plain(other)} here` }],
      data: { key: slip.key, left: other, right: mine },
      fixes: [
        rewriteFix(analysis, slip.right, other, {
          name,
          result: `the same as ${left.address}`,
          preferred: false,
        }),
        rewriteFix(analysis, slip.left, mine, {
          name: `${slip.key} of ${left.address}`,
          result: `the same as ${right.address}`,
          preferred: false,
        }),
      ],
    };
  }
}

const inside = (mean: number, { lo, hi }: { readonly lo: number; readonly hi: number }) =>
  lo <= mean && mean <= hi;

interface Slip {
  readonly key: string;
  readonly left: Placed<Dimension>;
  readonly right: Placed<Dimension>;
}

/** The one dimension in which two parts differ, when every other that both have is the same. */
function oneSlip(left: StackPart, right: StackPart, least: number): Slip | null {
  const differing: Slip[] = [];
  let same = 0;
  for (const key of compared) {
    const [a, b] = [left.values[key], right.values[key]];
    if (!a !== !b) return null;
    if (!a || !b) continue;
    const difference = Math.abs(a.value.nominal - b.value.nominal);
    if (difference <= least || a.value.measured || b.value.measured) same += 1;
    else if (slipAtMost < difference) return null;
    else differing.push({ key, left: a, right: b });
  }
  return differing.length === 1 && 0 < same ? (differing[0] ?? null) : null;
}
