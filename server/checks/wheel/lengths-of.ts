import type { Analysis } from '../../analysis/analyze.ts';
import type { WheelGroup } from '../../analysis/wheel/analyze-wheel.ts';
import type { GroupFit } from '../../analysis/wheel/group-length.ts';

/** A group whose length is written. */
export interface WrittenGroup extends WheelGroup {
  readonly fit: GroupFit & {
    readonly length: { readonly written: NonNullable<GroupFit['length']['written']> };
  };
}

/** Groups whose lengths are written and whose holes agree: lengths of a wheel that cannot be laced are not judged. */
export function writtenGroups(analysis: Analysis): readonly WrittenGroup[] {
  const wheel = analysis.wheel();
  if (!wheel?.rim || !wheel.hub) return [];
  const { left, right } = wheel.hub.flanges;
  if ((left?.holes ?? 0) + (right?.holes ?? 0) !== wheel.rim.holes) return [];
  // A crossing that cannot be is said to be that; the length that would follow from it is no fault of its own.
  const crossed = ({ crossing }: WheelGroup): boolean =>
    crossing === null || crossing.verdict === 'free' || crossing.verdict === 'over the next head';
  return wheel.groups.filter(
    (group): group is WrittenGroup => group.fit?.length.written != null && crossed(group),
  );
}

/** How far the end stands from the bottom of the slot beyond what is allowed, mm; 0 where it is within. */
export function beyondBand({ fit: { length, band } }: WrittenGroup, chosen = length.chosen): number {
  const end = chosen - length.corrected;
  return end < band.lo ? end - band.lo : band.hi < end ? end - band.hi : 0;
}

/** Whether the written lengths of the two sides suit each the other side, and not their own. */
export function areSwapped(groups: readonly WrittenGroup[]): boolean {
  const [left, right] = (['left', 'right'] as const).map((side) =>
    groups.filter((group) => group.side === side),
  );
  const [one, other] = [left?.[0], right?.[0]];
  if (!left || !right || !one || !other) return false;
  const own = groups.some((group) => beyondBand(group) !== 0);
  const [a, b] = [one.fit.length.written.value, other.fit.length.written.value];
  const turned = (of: readonly WrittenGroup[], chosen: number): boolean =>
    of.every((group) => beyondBand(group, chosen) === 0);
  return a !== b && own && turned(left, b) && turned(right, a);
}
