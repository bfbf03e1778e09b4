import type { FlangeValues, Named, Side } from '../spec/model.ts';
import type { Assembly } from './assemble.ts';

/** A flange with its place along the axle. */
export interface FlangePlace {
  readonly name: string;
  readonly flange: Named<FlangeValues>;
  /** Middle of the flange from the mid-plane between the dropouts, mm, right positive; null where `from-centre` is not written. */
  readonly fromMiddle: number | null;
}

/**
 * Where the flanges of a variant stand. `from-centre` is true for the hub as written; from there on a flange keeps
 * its place on the shell, so other end caps move it against the mid-plane.
 */
export function flangePlaces(assembly: Assembly, asWritten: Assembly): readonly FlangePlace[] {
  const moved = shift(assembly, asWritten);
  return (assembly.shell?.housing.flanges ?? []).map((flange): FlangePlace => {
    const offset = flange.values['from-centre']?.value.nominal;
    return {
      name: flange.name,
      flange,
      fromMiddle: offset === undefined ? null : moved + (flange.name === 'right' ? offset : -offset),
    };
  });
}

/** The flange of one side, by its name. */
export function flangeOf(places: readonly FlangePlace[], side: Side): FlangePlace | null {
  return places.find(({ name }) => name === side) ?? null;
}

/** How far the shell's seats have moved to the right against the mid-plane of the hub as written, mm. */
function shift(assembly: Assembly, asWritten: Assembly): number {
  if (assembly === asWritten) return 0;
  const width = assembly.width.wanted?.nominal;
  const written = asWritten.width.wanted?.nominal;
  const bearing = assembly.shell?.seats.find(({ contact }) => contact?.at)?.contact;
  const before = asWritten.line.find(({ address, at }) => at && address === bearing?.address);
  if (!bearing?.at || !before?.at || written === undefined || width === undefined) return 0;
  return bearing.at.left - width / 2 - (before.at.left - written / 2);
}
