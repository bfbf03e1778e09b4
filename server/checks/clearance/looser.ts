import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { MountedBearing, RingFit } from '../../analysis/mechanics/mounted-bearing.ts';
import { settle } from '../../assembly/settle.ts';
import { micrometres, plain } from '../../engine/base/figures.ts';
import { decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { usualness } from '../../engine/fits/recommended-fits.ts';
import { effectiveInterference } from '../../engine/seats/smoothing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import { ownCode } from '../bearing/fitting.ts';
import { interference, interferenceInClass } from '../fit-of.ts';
import { findSeat } from '../seat-of.ts';

/** Changes that leave a bearing some clearance: a looser usual seat first, then a bearing with more to begin with. */
export function clearanceFixes(
  analysis: Analysis,
  variant: VariantAnalysis,
  mounted: MountedBearing,
  where: string,
): readonly Fix[] {
  const fixes = [
    ...looserSeats(analysis, variant, mounted, where),
    ...moreClearance(analysis, mounted, where),
  ];
  return fixes.map((fix, index) => (index === 0 ? { ...fix, preferred: true } : fix));
}

function looserSeats(
  analysis: Analysis,
  variant: VariantAnalysis,
  { stack, outerFit, mounted }: MountedBearing,
  where: string,
): readonly Fix[] {
  const address = stack.part.values.seat?.value;
  const bore = address === undefined ? undefined : findSeat(variant, address)?.seat.values.bore;
  const tolerance = bore?.value.tolerance;
  if (!outerFit || !mounted || !stack.outside || !bore || tolerance?.kind !== 'class' || bore.value.measured)
    return [];
  const { nominal } = bore.value;
  const { outside } = stack;
  const judged = usualness(nominal, { letters: tolerance.letters, grade: tolerance.grade, kind: 'hole' });
  const now = interference(settle(bore, variant.assembly.rules), outside).mean;
  const { taker } = outerFit;
  return (judged?.usual ?? []).toReversed().flatMap((name) => {
    const fit = interferenceInClass(nominal, name, outside)?.mean;
    if (fit === undefined) return [];
    // In a light alloy the tables ask for a tighter seat than in steel: nothing looser than N7 there.
    if (isLightAlloy(outerFit) && name.startsWith('M')) return [];
    if (now <= fit || fit < analysis.limits.value('seat-interference')) return [];
    const works = (made: number): number => effectiveInterference(made, taker.diameter, taker.finish);
    const eased = works(taker.interference.mean) - works(taker.interference.mean - now + fit);
    const left = mounted.mean + taker.lossFactor * eased;
    if (left <= leastLeft) return [];
    return [
      {
        title: `Change the bore of ${address} to ${plain(nominal)} ${name}: ${micrometres(left)} of clearance left${where}`,
        changes: setValue(analysis.spec, bore.path, `${plain(nominal)} ${name}`),
      },
    ];
  });
}

const isLightAlloy = ({ seat }: RingFit): boolean => (seat.walls[0]?.E ?? 0) < 100_000;

/** Clearance less than this is none, mm. */
const leastLeft = 0.0005;

const next: Readonly<Record<string, readonly string[]>> = {
  C2: ['', 'C3'],
  N: ['C3', 'C4'],
  C3: ['C4', 'C5'],
};

/** The same bearing of a looser clearance group; none where a code of the house or a size decides. */
function moreClearance(
  analysis: Analysis,
  { stack, mounted, free }: MountedBearing,
  where: string,
): readonly Fix[] {
  const code = ownCode(stack);
  const group = stack.bearing?.clearance.group;
  if (!code || !mounted || !free || group === undefined) return [];
  for (const name of next[group] ?? []) {
    const bare = code.value.replace(/[\s/-]*C[2-5N]\b/i, '');
    const text = name === '' ? bare : `${bare} ${name}`;
    const found = decodeBearing(text);
    if (!('bearing' in found)) continue;
    const { minUm, maxUm } = found.bearing.clearance;
    if (minUm === null || maxUm === null) continue;
    const left = mounted.mean + (minUm + maxUm) / 2000 - (free.lo + free.hi) / 2;
    if (left <= leastLeft) continue;
    return [
      {
        title: `Change ${stack.address} to ${text}: ${micrometres(left)} of clearance left${where}`,
        changes: setValue(analysis.spec, code.path, text),
      },
    ];
  }
  return [];
}
