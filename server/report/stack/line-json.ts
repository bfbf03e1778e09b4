import type { LineMechanics } from '../../analysis/mechanics/line-mechanics.ts';

/** More than two bearings of one housing together: mm, N, MPa; null where nothing is clamped or nothing closes the line. */
export function lineJson(line: LineMechanics, isClamped: boolean) {
  const { housing, bearings, playUnclamped, playClampedSigned, spacers } = line;
  const isLoaded = bearings.some(({ force }) => force !== 0);
  return {
    housing,
    playUnclamped: finite(playUnclamped),
    playClamped: !isClamped ? null : isLoaded ? 0 : finite(Math.max(0, playClampedSigned)),
    bearings: bearings.map(({ address, force, contactStress, slid }) => ({
      address,
      force: isClamped ? force : null,
      contactStress: isClamped ? contactStress : null,
      outerRingSlides: isClamped ? slid : null,
    })),
    spacerLoads: isClamped ? spacers : null,
  };
}

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);
