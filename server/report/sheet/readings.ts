import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { isClosed, isWorked } from '../../analysis/mechanics/pair-mechanics.ts';
import { micrometres, millimetres } from '../../engine/base/figures.ts';

/** A value to read and write down, beside what it should be. */
export interface Reading {
  readonly what: string;
  readonly wanted: string;
}

/** What is measured while the hub is apart and once it is together, with the value to expect where it is known. */
export function readingsOf(variant: VariantAnalysis, { limits }: Analysis): readonly Reading[] {
  const { clamp, pairs } = variant.mechanics('built');
  const { width } = variant.assembly.hub.values;
  const most = limits.value('play-clamped');
  const play = pairs.filter(isWorked).flatMap((pair): readonly Reading[] => {
    const { result, loop } = pair;
    if (!isClosed(pair)) return [];
    const bench = Math.max(0, result.playUnclamped);
    const limit = `at most ${millimetres(most)}`;
    const clamped =
      result.ballLoad > 0
        ? `${limit}; none left as it stands: see the findings`
        : `about ${micrometres(result.playClamped)}, ${limit}`;
    return [
      { what: `play on the bench, ${loop.housing}`, wanted: `about ${micrometres(bench)}` },
      {
        what: `play clamped, ${loop.housing}`,
        wanted: clamp ? clamped : `${limit}, in the frame`,
      },
    ];
  });
  const lengths = variant.assembly.line
    .filter(({ part }) => part.kind === 'spacer')
    .map(({ address, part }) => ({
      what: `length of ${address}`,
      wanted: part.values.length ? `${part.values.length.value.written} mm` : 'not written',
    }));
  const seats = [variant.assembly.shell, variant.assembly.freehub]
    .flatMap((housing) => housing?.seats ?? [])
    .map(({ address, seat }) => ({
      what: `bore of ${address}`,
      wanted: seat.values.bore ? seat.values.bore.value.written : 'not written',
    }));
  return [
    ...seats,
    ...lengths,
    {
      what: 'width over the end caps',
      wanted: width ? `${width.value.written} mm` : 'not written',
    },
    ...play,
    ...coneReadings(variant),
  ];
}

/** What cones are set to on the bench, where it is written; else that it is to be written down. */
function coneReadings({ assembly }: VariantAnalysis): readonly Reading[] {
  const cones = assembly.line.filter(({ part }) => part.kind === 'cone');
  if (cones.length === 0) return [];
  const set = cones.find(({ part }) => part.values.set)?.part.values.set?.value;
  return [
    {
      what: 'play the cones are set to on the bench',
      wanted: set ? `${set.written} mm` : 'not written',
    },
    { what: 'play clamped', wanted: 'none to feel, and no drag' },
  ];
}
