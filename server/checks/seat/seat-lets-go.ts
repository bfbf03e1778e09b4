import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { RingFit } from '../../analysis/mechanics/mounted-bearing.ts';
import { type Settled, settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import { usualness } from '../../engine/fits/recommended-fits.ts';
import { setValue } from '../../spec/edit.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { interference, interferenceInClass } from '../fit-of.ts';
import { pageHub } from '../page-hub.ts';
import { findSeat } from '../seat-of.ts';
import { celsius, serviceRange } from '../service-range.ts';
import { restsOnCoarseReading } from './coarse-readings.ts';

const shell: readonly [string, string] = [
  '  between-shoulders',
  '  outside: 32\n  material: aluminium 6061-T6\n  between-shoulders',
];

const more: readonly [string, string] = ['code: 6803-2RS\n', 'code: 6803-2RS C3\n'];
const roomy = [more, more];

/** A seat that grips on the bench and lets go when the hub is warm. */
export const seatLetsGo: Check = {
  code: 'seat-lets-go',
  group: 'seat',
  severity: 'warning',
  summary: 'The seat lets its ring go within the range of temperature in service.',
  page: {
    why: 'Light alloy grows twice as much as steel. A seat with little interference opens in the sun or behind a brake, the ring creeps round in it, and it stays loose once the bore is worn. A tighter class keeps its grip at the warm end of the range.',
    bad: `temperature: 10..80 °C\n${pageHub(shell, ...roomy)}`,
    good: `temperature: 10..40 °C\n${pageHub(shell, ...roomy)}`,
    sources: [
      'thermal expansion of the materials as their tables print it',
      'ISO 286 and ISO 492, interference of seat and ring',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => letsGo(analysis, variant)),
};

function* letsGo(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const range = serviceRange(analysis, variant);
  if (!range || range.hi <= bench) return;
  const cool = variant.mechanics('built').bearings;
  const { bearings } = variant.mechanics('built', { temperature: range.hi, clampForce: null });
  const seen = new Set<unknown>();
  for (const [index, bearing] of bearings.entries()) {
    const { stack, outerFit, address } = bearing;
    const seat = findSeat(variant, stack.part.values.seat?.value ?? '');
    const bore = seat?.seat.values.bore;
    const before = cool[index]?.outerFit;
    if (!outerFit || !before || !seat || !bore || !stack.outside) continue;
    if (seat.seat.values.compound?.value || seen.has(bore)) continue;
    const [made, now] = [before.taker.interference.mean, outerFit.taker.interference.mean];
    // Loose on the bench is a finding of its own.
    if (made < analysis.limits.value('seat-interference') || 0 <= now) continue;
    // A reading that cannot tell one fit from the next says no more of where it ends.
    if (restsOnCoarseReading(analysis, variant, bearing)) continue;
    seen.add(bore);
    const free = bench + ((range.hi - bench) * made) / (made - now);
    yield {
      path: bore.path,
      message: `${seat.address} lets the ring of ${address} go at ${celsius(free)} on average, wanted to hold it to ${celsius(range.hi)}${range.said}: ${micrometres(-now)} of room there — a tighter seat, or a retaining compound and compound: yes`,
      related: [
        {
          path: stack.from,
          message: `${micrometres(made)} of interference at ${celsius(bench)}, ${micrometres(-now)} of room at ${celsius(range.hi)}`,
        },
        ...range.related,
      ],
      data: { letsGoAt: free, benchUm: made * 1000, hotUm: now * 1000, temperature: range.hi },
      fixes: tighter(
        analysis,
        variant,
        seat.address,
        bore,
        stack.outside,
        outerFit,
        cool[index]?.mounted?.mean ?? 0,
      ),
    };
  }
}

/** °C */
const bench = 20;

function tighter(
  analysis: Analysis,
  variant: VariantAnalysis,
  address: string,
  bore: Placed<Dimension>,
  outside: Settled,
  { taker }: RingFit,
  clearance: number,
): readonly Fix[] {
  const { tolerance, nominal, measured } = bore.value;
  if (tolerance.kind !== 'class' || measured) return [];
  const drawn = interference(settle(bore, variant.assembly.rules), outside).mean;
  const judged = usualness(nominal, { letters: tolerance.letters, grade: tolerance.grade, kind: 'hole' });
  const most = analysis.limits.value('seat-interference-per-diameter') * nominal;
  const fixes = (judged?.usual ?? []).flatMap((name): readonly Fix[] => {
    const fit = interferenceInClass(nominal, name, outside)?.mean;
    if (fit === undefined) return [];
    const then = taker.interference.mean + fit - drawn;
    // A grip that leaves the balls no clearance only moves the fault.
    if (then < 0 || most < fit || clearance - taker.lossFactor * (fit - drawn) <= 0) return [];
    return [
      {
        title: `Change the bore of ${address} to ${plain(nominal)} ${name}: ${micrometres(then)} of interference left in the warm`,
        changes: setValue(analysis.spec, bore.path, `${plain(nominal)} ${name}`),
      },
    ];
  });
  return fixes.map((fix, index) => (index === 0 ? { ...fix, preferred: true } : fix));
}
