import type { LinePart } from '../../assembly/line.ts';
import { force } from '../../engine/base/figures.ts';
import { waveWasherPreload } from '../../engine/play/adjusted-pair.ts';

/**
 * A wave washer outside of two inner rings that a spacer holds apart: the rings are pressed on the spacer with the
 * force of the washer, and the clamp goes past them. Null without one, or where its height or rate is not written.
 */
export function springInLine(
  line: readonly LinePart[],
): { readonly preload: number; readonly assumed: readonly string[] } | null {
  const found = line.find(({ part }) => part.kind === 'wave-washer');
  const { free, rate, length } = found?.part.values ?? {};
  if (!found || !free || !rate || !length) return null;
  const washer = { free: free.value.nominal, assembled: length.value.nominal, rate: rate.value.value };
  const preload = waveWasherPreload(washer);
  return {
    preload,
    assumed: [
      `inner rings pressed on what stands between them with ${force(preload)} by ${found.address}; the clamp goes past them through the axle`,
    ],
  };
}
