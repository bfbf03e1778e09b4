import type { Unchecked } from '../assembly/assemble.ts';
import type { Loop } from '../assembly/loop.ts';
import type { VariantAnalysis } from './analyze.ts';
import type { LoopAnalysis } from './close.ts';

/** What could not be worked out, each with the dimension it would take. */
export function uncheckedOf(variant: Omit<VariantAnalysis, 'unchecked' | 'mechanics'>): readonly Unchecked[] {
  const { assembly } = variant;
  const list: Unchecked[] = [
    ...missingOf('clamped width', variant.width).filter(({ missing }) => !isSetByHand(missing)),
    ...variant.pairs.flatMap((pair) =>
      missingOf(`distance between ${pair.loop.bearings.join(' and ')}`, pair),
    ),
    ...variant.seats.flatMap((seat) => missingOf(`depth of ${seat.loop.seat}`, seat)),
    ...variant.gaps.flatMap((gap) => missingOf(`gap between ${gap.loop.between.join(' and ')}`, gap)),
  ];
  const locatedBearings = new Set(
    variant.pairs
      .filter((pair) => pair.loop.located === 'shoulders')
      .flatMap(({ loop }) =>
        loop.bearings.filter(
          (address) => !loop.missing.some((item) => item.address === address && item.key === 'face-offset'),
        ),
      ),
  );
  for (const { part, address } of assembly.bearings) {
    if (locatedBearings.has(address) && !part.values['face-offset']) {
      list.push({
        what: `faces of ${address}: taken as flush`,
        missing: `face-offset of ${address}`,
        path: part.path,
      });
    }
  }
  const hasBearings = assembly.bearings.length > 0;
  if (hasBearings && !assembly.hub.shell && !assembly.bearings.some(({ part }) => part.values.seat)) {
    list.push({ what: 'seats and the distance between the bearings', missing: 'shell', path: [] });
  }
  return list;
}

/** Where a cone stands on its axle is set by hand to the width written: nobody can write it, so it is not missing. */
const isSetByHand = (missing: string): boolean => missing.startsWith('position on the axle of cone.');

function missingOf(what: string, analysis: LoopAnalysis<Loop>): readonly Unchecked[] {
  return analysis.loop.missing.map(({ address, key, path }) => ({
    what,
    // A length of a housing carries its key in its address: `shell.length`.
    missing: `${key} of ${address.endsWith(`.${key}`) ? address.slice(0, -key.length - 1) : address}`,
    path,
  }));
}
