import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { lineMechanics } from '../../analysis/mechanics/line-mechanics.ts';
import type { PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { spacerOf } from '../../analysis/mechanics/spacer-of.ts';
import type { LoopTerm } from '../../assembly/loop.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import { leastTravel } from './located-pair.ts';
import type { TightLine } from './tight-lines.ts';

/** A spacer of a line and the length to write, mm. */
export interface LineLength {
  readonly item: LoopTerm;
  readonly written: Placed<Dimension>;
  readonly to: number;
}

/** Lengths that give a line play, and the play it then has, mm. */
export interface LineLengths {
  readonly lengths: readonly [LineLength, ...LineLength[]];
  readonly play: number;
}

/** A spacer that may be written anew, with its pair. */
interface Spacer {
  readonly item: LoopTerm;
  readonly written: Placed<Dimension>;
  readonly pair: PairMechanics;
}

/** Lengths are changed this far to each side, in hundredths of a millimetre. */
const farthest = 30;

/**
 * Lengths to write for a line that is tight. Each spacer brought to the distance of its own stops gives the line all
 * the play there is and leaves each pair in the middle; where that is more than is wanted, or a part is measured and
 * stays, one spacer is changed so that the play comes nearest to the middle of what is wanted. Null where neither helps.
 */
export function lineLengths(
  analysis: Analysis,
  variant: VariantAnalysis,
  tight: TightLine,
): LineLengths | null {
  const { assembly } = variant;
  const { line, pairs } = tight;
  const housing = line.housing === 'shell' ? assembly.shell : assembly.freehub;
  if (!housing) return null;
  const most = analysis.limits.value('play-clamped');
  const spacers = pairs.flatMap((pair) => spacerIn(variant, pair));
  const tried = (steps: readonly number[]): LineLengths | null => {
    const changed = pairs.map((pair) =>
      spacers.reduce((one, { item }, at) => lengthened(one, item, (steps[at] ?? 0) / 100), pair),
    );
    const play = lineMechanics(assembly, housing, changed)?.playClampedSigned ?? -1;
    const [first, ...more] = spacers.flatMap(({ item, written }, at): readonly LineLength[] => {
      const step = steps[at] ?? 0;
      return step === 0
        ? []
        : [{ item, written, to: Math.round(written.value.nominal * 1e4 + step * 100) / 1e4 }];
    });
    return first && leastTravel < play ? { lengths: [first, ...more], play } : null;
  };
  const centred = tried(spacers.map(toOwnStops));
  if (centred && centred.play <= most) return centred;
  const off = ({ play }: LineLengths): number => Math.abs(play - most / 2);
  let best = centred;
  for (const spacer of spacers) {
    for (let step = -farthest; step <= farthest; step++) {
      const found = tried(spacers.map((other) => (other === spacer ? step : 0)));
      if (found && (!best || off(found) < off(best) - 1e-9)) best = found;
    }
  }
  return best;
}

function spacerIn(variant: VariantAnalysis, pair: PairMechanics): readonly Spacer[] {
  const item = spacerOf(variant, pair);
  const part = item && variant.assembly.line.find(({ address }) => address === item.address);
  const written = part?.part.values.length;
  return item && written && !written.value.measured ? [{ item, written, pair }] : [];
}

/** Hundredths that bring the clamped distance of the inner rings nearest to that of their stops. */
function toOwnStops({ item, pair: { input, loop } }: Spacer): number {
  const shared = loop.terms.find(({ path }) => path === item.path);
  if (!shared) return 0;
  const clamped = input.mismatch - input.clampForce * input.spacerCompliance;
  const step = Math.round((-100 * clamped) / (shared.sign * shared.count));
  return Math.abs(step) <= farthest ? step : 0;
}

function lengthened(pair: PairMechanics, item: LoopTerm, by: number): PairMechanics {
  const shared = pair.loop.terms.find(({ path }) => path === item.path);
  if (!shared) return pair;
  const mismatch = pair.input.mismatch + shared.sign * shared.count * by;
  return { ...pair, input: { ...pair.input, mismatch } };
}
