import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { materialOf } from '../../analysis/mechanics/material-of.ts';
import { stress as megapascals, micrometres, plain } from '../../engine/base/figures.ts';
import { pressFit } from '../../engine/seats/press-fit.ts';
import type { Check, Draft } from '../check.ts';
import { isTightElsewhere } from '../clearance/fit-counts.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { rewriteFix } from '../rewrite.ts';
import { findSeat } from '../seat-of.ts';
import { celsius, serviceRange } from '../service-range.ts';

/** A shell of stainless steel with its outside. */
const walled = (outside: string): string =>
  pageHub(['  between-shoulders', `  outside: ${outside}\n  material: stainless\n  between-shoulders`])
    .replaceAll('26 N7', '26 P7')
    .replaceAll('6803-2RS', '6803-2RS C3');

/** A press fit that stretches the wall around it too far. */
export const wallStress: Check = {
  code: 'wall-stress',
  group: 'seat',
  severity: 'warning',
  summary: 'The press fit stretches the wall around the seat close to its yield, or beyond it.',
  page: {
    why: 'The wall around a seat is pulled round by the ring that is pressed into it. Past its yield it gives way and grips less with every bearing that is fitted; a thin one cracks. A thicker wall, a looser class or a stronger material keeps the stress down.',
    bad: `temperature: -20..40 °C\n${walled('27.5')}`,
    good: `temperature: -20..40 °C\n${walled('30')}`,
    sources: [
      'thick cylinders of two materials (Lamé), equivalent stress by shape change energy',
      'common practice: two thirds of yield',
      'yield of the material as its table prints it',
    ],
  },
  run: (analysis) => eachVariant(analysis, (variant) => stretched(analysis, variant)),
};

/** Walls are tried in steps of this and no further than this, mm on the diameter. */
const step = 0.5;
const furthest = 12;

function* stretched(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const range = serviceRange(analysis, variant);
  const temperature = Math.min(20, range?.lo ?? 20);
  const cold = variant.mechanics('built', { temperature, clampForce: null }).bearings;
  const bench = variant.mechanics('built').bearings;
  const seen = new Set<unknown>();
  for (const [index, { stack, outerFit, address }] of cold.entries()) {
    const seat = findSeat(variant, stack.part.values.seat?.value ?? '');
    const { shell, freehub } = variant.assembly;
    const housing = [shell, freehub].find((filled) =>
      filled?.seats.some(({ address: own }) => own === seat?.address),
    )?.housing;
    const outside = housing?.values.outside;
    const warm = bench[index];
    if (!outerFit || !warm || !seat || !housing || !outside || seen.has(outside)) continue;
    if (isTightElsewhere(analysis, warm)) continue;
    const material = materialOf(
      `the ${housing.name}`,
      housing.values.material,
      'aluminium 6061-T6',
      analysis.workshop,
    );
    if (material.yield === null) continue;
    const most = analysis.limits.value('shell-yield') * material.yield;
    const stressAt = (interference: number, to = outside.value.nominal): number =>
      pressFit(
        { ...outerFit.seat, walls: outerFit.seat.walls.map((wall) => ({ ...wall, to })) },
        interference,
      ).wallEquivalent[0] ?? 0;
    const tightest = stressAt(outerFit.interference.most);
    if (tightest <= most || outside.value.nominal <= outerFit.seat.diameter) continue;
    const mean = stressAt(outerFit.interference.mean);
    seen.add(outside);
    const least =
      housing.name === 'shell' ? outerFit.seat.diameter + 2 * analysis.limits.value('shell-wall') : 0;
    const thicker = thickerWall(
      Math.max(outside.value.nominal, least - step),
      (to) => stressAt(outerFit.interference.most, to) <= most,
    );
    const where = temperature < 20 ? ` at ${celsius(temperature)}` : '';
    const assumed = material.assumed ? `; ${material.assumed}` : '';
    yield {
      path: outside.path,
      severity: material.yield < mean ? 'error' : 'warning',
      message: `the ring of ${address} stretches the wall of ${seat.address} with ${megapascals(tightest)} at its tightest${where}${range?.said ?? ''} (${megapascals(mean)} on average), wanted ${megapascals(most)} at most: ${megapascals(tightest - most)} too much — ${thicker ? `${plain(thicker)} outside` : 'a looser seat or a stronger material'}`,
      related: [
        ...(seat.seat.values.bore
          ? [
              {
                path: seat.seat.values.bore.path,
                message: `${micrometres(outerFit.interference.mean)} of interference after smoothing, ${micrometres(outerFit.interference.most)} at most${where}`,
              },
            ]
          : []),
        {
          path: housing.values.material?.path ?? housing.path,
          message: `yield ${megapascals(material.yield)}${assumed}`,
        },
        { path: stack.from, message: `${address} is pressed in here` },
      ],
      // A wall that holds this stress is no longer thin.
      doubts: [outside.path],
      data: { stress: tightest, mean, most, yield: material.yield, temperature },
      fixes:
        thicker && !outside.value.measured
          ? [
              rewriteFix(analysis, outside, thicker, {
                name: `outside of the ${housing.name}`,
                result: `${megapascals(stressAt(outerFit.interference.most, thicker))} at its tightest`,
              }),
            ]
          : [],
    };
  }
}

function thickerWall(outside: number, holds: (to: number) => boolean): number | null {
  for (let more = step; more <= furthest; more += step)
    if (holds(outside + more)) return Number((outside + more).toFixed(2));
  return null;
}
