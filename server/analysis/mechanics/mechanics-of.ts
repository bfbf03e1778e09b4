import type { StackBearing } from '../../assembly/bearings.ts';
import { grooveClearanceFactors } from '../../engine/tables/groove-clearance-factors.ts';
import type { Seat } from '../../spec/model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { VariantAnalysis } from '../analyze.ts';
import { type Clamp, clampOf } from './clamp-of.ts';
import { bench, type Conditions, temperaturesOf } from './conditions.ts';
import { coneMechanics } from './cup-cone.ts';
import { inLine, type LineMechanics, lineMechanics } from './line-mechanics.ts';
import { materialOf } from './material-of.ts';
import { type MountedBearing, mountBearing } from './mounted-bearing.ts';
import { isWorked, type PairMechanics, type PairUnchecked, pairMechanics } from './pair-mechanics.ts';

/** What press fits, the clamp and temperature do to the bearings of one variant, at the means. */
export interface Mechanics {
  readonly clamp: Clamp | null;
  readonly bearings: readonly MountedBearing[];
  /** In the order of the variant's pairs. */
  readonly pairs: readonly (PairMechanics | PairUnchecked)[];
  /** Housings with more than two bearings; the loads of their pairs are those of the whole line. */
  readonly lines: readonly LineMechanics[];
  /** A hub set by cones, or what it lacks; null without cones. */
  readonly cups: ReturnType<typeof coneMechanics>;
}

/** What mechanics reads of a variant. */
type Loops = Pick<VariantAnalysis, 'assembly' | 'pairs'>;

/** Works the mechanics of a variant out, as drawn or as built. Nothing is kept: the caller asks once. */
export function mechanicsOf(
  variant: Loops,
  workshop: Workshop | null,
  how: 'drawn' | 'built',
  conditions: Conditions = bench,
): Mechanics {
  const { assembly } = variant;
  const clamp = clampOf(assembly.hub, workshop, conditions.clampForce);
  const bearings = assembly.bearings.flatMap(
    (stack) => mount(stack, variant, workshop, how, conditions) ?? [],
  );
  const isSet = variant.pairs.some(({ loop }) => loop.setBy?.kind === 'adjuster');
  const onBench = isSet && conditions !== bench ? mechanicsOf(variant, workshop, how).pairs : [];
  const alone = variant.pairs.map((pair, index) =>
    pairMechanics(
      assembly,
      pair.loop,
      (how === 'built' ? pair.built : null) ?? pair.drawn,
      bearings,
      clamp,
      workshop,
      temperaturesOf(conditions),
      settingOf(onBench[index]),
    ),
  );
  const worked = alone.filter(isWorked);
  const lines = [assembly.shell, assembly.freehub].flatMap((housing) =>
    housing ? (lineMechanics(assembly, housing, worked) ?? []) : [],
  );
  const pairs = alone.map((pair) => {
    const line = isWorked(pair) && lines.find(({ housing }) => housing === pair.loop.housing);
    if (!line || !isWorked(pair)) return pair;
    const alone = `shares of many builds count ${pair.loop.bearings.join(' and ')} alone, loads the whole line of ${line.bearings.length}`;
    return { ...pair, result: inLine(pair, line), ofLine: true as const, assumed: [...pair.assumed, alone] };
  });
  return { clamp, bearings, pairs, lines, cups: coneMechanics(assembly, bearings, clamp, workshop) };
}

/** An adjuster is set at 20 °C and stays where it is; a spring follows. */
function settingOf(pair: PairMechanics | PairUnchecked | undefined): PairMechanics['setting'] {
  return pair && isWorked(pair) && pair.setting?.kind === 'adjuster' ? pair.setting : null;
}

function mount(
  stack: StackBearing,
  { assembly }: Loops,
  workshop: Workshop | null,
  how: 'drawn' | 'built',
  conditions: Conditions,
): MountedBearing | null {
  const { hub, rules } = assembly;
  const { inner, outer } = temperaturesOf(conditions);
  const housing =
    [assembly.shell, assembly.freehub].find((filled) =>
      filled?.seats.some(({ bearings }) => bearings.some(({ address }) => address === stack.address)),
    ) ?? null;
  const seat =
    housing?.seats.find(({ bearings }) => bearings.some(({ address }) => address === stack.address)) ?? null;
  const from = [
    seat?.seat,
    housing?.housing,
    hub.axle,
    workshop,
    rules.untoleranced,
    rules.measuring,
    how,
    inner,
    outer,
  ];
  const before = mountedBefore.get(stack.part) ?? [];
  const same = before.find((known) => known.from.every((item, at) => item === from[at]));
  if (same) return same.mounted && { ...same.mounted, stack };
  const axle = hub.axle?.values;
  const mounted = mountBearing(
    stack,
    {
      housing,
      seat,
      shell: housing
        ? materialOf(
            `the ${housing.housing.name}`,
            housing.housing.values.material,
            'aluminium 6061-T6',
            workshop,
          )
        : null,
      sleeve: sleeveOf(seat?.seat ?? null, workshop),
      journal: stack.part.values.journal ?? axle?.diameter ?? null,
      axleBore: axle?.bore?.value.nominal ?? 0,
      axle: materialOf('the axle', axle?.material, 'aluminium 7075-T6', workshop),
      rules,
      temperatures: { inner, outer },
      factor: publishedFactor(stack),
    },
    how,
  );
  mountedBefore.set(stack.part, [...before.slice(-7), { from, mounted }]);
  return mounted;
}

/**
 * What a bearing came to between its seat and its axle: most variants leave all three as they are in the hub as
 * written, and share them.
 */
const mountedBefore = new WeakMap<
  StackBearing['part'],
  readonly { readonly from: readonly unknown[]; readonly mounted: MountedBearing | null }[]
>();

/** A sleeve in the seat with its outside and what it is made of. */
function sleeveOf(seat: Seat | null, workshop: Workshop | null) {
  const outside = seat?.sleeve?.values.outside?.value.nominal;
  if (!seat || outside === undefined) return null;
  const material = materialOf(
    `the sleeve of ${seat.address}`,
    seat.sleeve?.values.material,
    'steel',
    workshop,
  );
  return { outside, material };
}

/** The printed K of a series and bore code, where the table has one. */
function publishedFactor({ bearing }: StackBearing): number | null {
  const match = /^(160|60|62|63)(\d\d)$/.exec(bearing?.basic ?? '');
  if (!match) return null;
  const [, series, code] = match as unknown as [string, keyof typeof grooveClearanceFactors, string];
  return grooveClearanceFactors[series][code] ?? null;
}
