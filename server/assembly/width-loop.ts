import type { LinePart } from './line.ts';
import { gather, type WidthLoop } from './loop.ts';
import { type SettlingRules, settle, sizeRange } from './settle.ts';
import type { ResolvedHub } from './variants.ts';

/**
 * The clamped line against the width wanted. A width without a tolerance gets the limit of the workshop,
 * `defaultTolerance` ± mm. Cones are set by hand, so a cup-and-cone hub has no such loop.
 */
export function widthLoop(
  hub: ResolvedHub,
  line: readonly LinePart[],
  rules: SettlingRules,
  defaultTolerance: number,
): WidthLoop {
  const { terms, missing } = gather(line.map((part) => part.length));
  const adjusted = hub.stack.filter((part) => part.kind === 'cone');
  const byHand = adjusted.map((part) => ({
    address: part.address,
    key: 'position on the axle',
    path: part.path,
  }));
  return {
    kind: 'width',
    terms,
    missing: [...missing, ...byHand],
    wanted: wantedWidth(hub, rules, defaultTolerance),
  };
}

function wantedWidth(hub: ResolvedHub, rules: SettlingRules, defaultTolerance: number): WidthLoop['wanted'] {
  const { width } = hub.values;
  if (!width) return null;
  const { nominal, tolerance } = width.value;
  if (tolerance.kind === 'none' && !rules.untoleranced) {
    const assumed = `width ${nominal} taken as ±${defaultTolerance}: no tolerance is written`;
    return {
      nominal,
      lo: nominal - defaultTolerance,
      hi: nominal + defaultTolerance,
      path: width.path,
      assumed,
    };
  }
  const settled = settle(width, rules);
  const [lo, hi] = sizeRange(settled.drawn);
  return { nominal, lo, hi, path: width.path, assumed: settled.assumed };
}
