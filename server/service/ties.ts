import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { MountedBearing, RingFit } from '../analysis/mechanics/mounted-bearing.ts';
import type { Body } from './body.ts';

/** What holds two bodies together until force or turning parts them. */
export type Tie =
  | {
      readonly kind: 'press';
      /** The bearing. */
      readonly a: string;
      /** Its housing or the axle. */
      readonly b: string;
      readonly ring: 'outer' | 'inner';
      /** Null where its dimensions are not written: then it is taken to be tight. */
      readonly fit: RingFit | null;
      readonly bearing: MountedBearing | null;
    }
  | { readonly kind: 'thread'; readonly a: string; readonly b: string };

const threaded: readonly string[] = ['locknut', 'cone', 'adjuster'];

/** The tight fits and threads of a hub. A ring is tight where its fit, as made, is one of interference on average. */
export function tiesOf(variant: VariantAnalysis, bodies: readonly Body[]): readonly Tie[] {
  const { assembly } = variant;
  const there = new Set(bodies.map(({ address }) => address));
  const mounted = new Map(variant.mechanics('drawn').bearings.map((bearing) => [bearing.address, bearing]));
  const housed = [assembly.shell, assembly.freehub].flatMap((housing) =>
    (housing?.seats ?? []).flatMap(({ bearings }) =>
      bearings.map(({ address }) => ({ address, housing: housing?.housing.name ?? '' })),
    ),
  );
  const outer = housed.flatMap(({ address, housing }): readonly Tie[] => {
    const bearing = mounted.get(address) ?? null;
    const fit = bearing?.outerFit ?? null;
    const tight = fit === null || 0 < fit.made.mean;
    return tight ? [{ kind: 'press', a: address, b: housing, ring: 'outer', fit, bearing }] : [];
  });
  const inner = [...mounted.values()].flatMap((bearing): readonly Tie[] => {
    const fit = bearing.innerFit;
    if (!fit || fit.made.mean <= 0) return [];
    return [{ kind: 'press', a: bearing.address, b: 'axle', ring: 'inner', fit, bearing }];
  });
  const threads = assembly.line.flatMap(({ part, address }): readonly Tie[] =>
    threaded.includes(part.kind) || part.values.fixing?.value === 'thread'
      ? [{ kind: 'thread', a: address, b: 'axle' }]
      : [],
  );
  return [...outer, ...inner, ...threads].filter(({ a, b }) => there.has(a) && there.has(b));
}
