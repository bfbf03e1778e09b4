import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { millimetres, plain } from '../../engine/base/figures.ts';
import type { Plan } from '../../service/plan.ts';
import { driftFace } from '../../service/reach.ts';
import type { PressedOut } from '../../service/step.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { isDoubtful, readablePlan } from '../service/lockable.ts';

const narrow: readonly [string, string] = [
  'between-shoulders: 62.05 ±0.01',
  'between-shoulders: 62.05 ±0.01\n  through: 20.1',
];

/** A bearing that nothing reaches from behind: neither a drift nor the axle nor a collet. */
export const bearingOutOfReach: Check = {
  code: 'bearing-out-of-reach',
  group: 'freehub',
  severity: 'warning',
  summary: 'Nothing reaches a bearing to take it out again.',
  page: {
    why: 'A bearing comes out by a drift on its inner ring, by a shoulder of the axle, or by a collet spread behind it. A spacer that fills both the bore of the bearings and the bore of the housing leaves no edge for any of them, so the first bearing of the hub can only be destroyed in place. A spacer that can be pushed aside by a few tenths of a millimetre is enough.',
    bad: pageHub(narrow),
    good: pageHub(narrow, ['outside: 19.6', 'outside: 19']),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => outOfReach(analysis, variant)),
};

function* outOfReach(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  if (!mayHide(variant)) return;
  const plan = readablePlan(analysis, variant);
  if (!plan) return;
  const pressed = plan.apart.flatMap((step) => (step.kind === 'press-out' ? step.pressed : []));
  for (const one of pressed) {
    const draft = one.reach.by === 'none' ? unreached(one, one.reach, plan, analysis, variant) : null;
    if (draft) yield draft;
  }
}

/**
 * Whether anything in a hub could hide a bearing: a sleeve that has hardly any room in its housing, or an axle that
 * does not slide out. In all other hubs a drift finds its way, and the order of work need not be worked out.
 */
function mayHide({ assembly, mechanics }: VariantAnalysis): boolean {
  const { line, shell, freehub } = assembly;
  if (line.some(({ part }) => part.kind === 'collar' || part.kind === 'adjuster')) return true;
  if (mechanics('drawn').bearings.some(({ innerFit }) => innerFit && 0 < innerFit.made.mean)) return true;
  const bores = [shell, freehub].flatMap((housing) => {
    const { through } = housing?.housing.values ?? {};
    const shoulders = (housing?.seats ?? []).flatMap(({ seat }) => seat.values['shoulder-bore'] ?? []);
    return [...(through ? [through] : []), ...shoulders].map(({ value }) => value.nominal);
  });
  const narrowest = Math.min(...bores);
  return line.some(({ part }) => {
    const outside = part.values.outside?.value.nominal;
    // Half of 2.4 mm of room bares more than the chamfer of any ring in a hub and the face of a drift.
    return part.kind !== 'end-cap' && outside !== undefined && narrowest < outside + 2.4;
  });
}

function unreached(
  { bearing, from }: PressedOut,
  reach: Extract<PressedOut['reach'], { readonly by: 'none' }>,
  plan: Plan,
  analysis: Analysis,
  variant: VariantAnalysis,
): Draft | null {
  const housing = from.split('.')[0] ?? '';
  const way = variant.assembly.line.find(({ address }) => address === reach.inTheWay);
  const part = variant.assembly.line.find(({ address }) => address === bearing);
  const chamfer = part?.bearing?.bearing?.chamferMin;
  if (
    !part ||
    !way ||
    chamfer === undefined ||
    chamfer === null ||
    isDoubtful(plan, way.address) ||
    isDoubtful(plan, housing)
  )
    return null;
  const wanted = chamfer + driftFace;
  const { outside, inside } = way.part.values;
  // A spacer wider than the inner ring rubs, and that is said of it.
  const shoulder = part.bearing?.innerOutside?.value ?? 0;
  if (outside && shoulder < outside.value.nominal) return null;
  // Pushed aside, the spacer moves by half of what it gains.
  const most = outside
    ? Math.floor((outside.value.nominal - 2 * (wanted - reach.bare)) * 10 + 1e-6) / 10
    : null;
  const thick = most !== null && inside !== undefined && inside.value.nominal + 1.5 <= most;
  return {
    path: [...part.part.path, part.part.kind],
    message: `nothing reaches ${bearing} to take it out: ${way.address} leaves ${millimetres(reach.bare)} of its inner ring bare, wanted ${millimetres(wanted)}, ${millimetres(wanted - reach.bare)} more — ${
      thick && most !== null
        ? `turn its outside down to ${plain(most)}`
        : 'give the spacer two notches for a drift'
    }`,
    related: [{ path: outside?.path ?? way.part.path, message: `${way.address} lies before it` }],
    data: { bare: reach.bare, wanted, inTheWay: way.address },
    fixes:
      thick && most !== null && outside
        ? [
            rewriteFix(analysis, outside, most, {
              name: `outside of ${way.address}`,
              result: `pushed aside it leaves ${millimetres(wanted)} of the ring bare`,
            }),
          ]
        : [],
  };
}
