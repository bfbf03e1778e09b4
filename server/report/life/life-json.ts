import type { HubLife } from '../../analysis/life/life-of.ts';

/** What `life --json` prints for one variant: N, km; null where there is no load and the life has no end. */
export function lifeJson(name: string | null, life: HubLife) {
  const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);
  return {
    name,
    kilometres: life.kilometres === null ? null : finite(life.kilometres),
    bearings: life.bearings.map(
      ({ address, ratings, cases, equivalent, staticShare, preload, kilometres }) => ({
        address,
        dynamicRating: ratings.dynamic,
        staticRating: ratings.static,
        ratingsFrom: ratings.basis,
        hybridStaticShare: ratings.hybridStatic,
        cases: cases.map(({ name: riding, share, load }) => ({ name: riding, share, ...load })),
        equivalentLoad: equivalent,
        staticShare,
        preload,
        kilometres: finite(kilometres),
      }),
    ),
    missing: life.missing,
    assumptions: life.assumed,
  };
}
