import type { Analysis } from '../../analysis/analyze.ts';
import { plain } from '../../engine/base/figures.ts';
import { bearingFromSize, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import type { HouseBearing } from '../../spec/workshop-model.ts';
import { bearingMatters } from './bearing-matters.ts';

/** What is on the shelf. */
export interface Shelf {
  readonly bearings: readonly {
    /** One spelling, as in the list; the code as written where it cannot be read. */
    readonly code: string;
    readonly written: string;
    readonly size: string;
    readonly matters: string;
    readonly count: number;
  }[];
  /** Thicknesses, mm, which are not counted. */
  readonly shims: ReadonlySet<number>;
}

/**
 * The shelf of all workshop files around some hubs. A line of a file counts once however many hubs see it, and only
 * where some hub does: a nearer file that writes the same code hides the one above it, as for everything it holds.
 */
export function shelfOf(analyses: readonly Analysis[]): Shelf {
  const bearings = new Map<string, Shelf['bearings'][number]>();
  const shims = new Set<number>();
  for (const { workshop, surroundings } of analyses) {
    for (const thickness of workshop?.stock.shims?.value ?? []) shims.add(thickness);
    const hidden = new Set<string>();
    for (const { file, document } of surroundings.workshops) {
      for (const [code, { value }] of Object.entries(document.workshop?.stock.bearings ?? {})) {
        if (hidden.has(code)) continue;
        hidden.add(code);
        bearings.set(
          JSON.stringify([file, code]),
          item(code, value, workshop?.bearings[code]?.value ?? null),
        );
      }
    }
  }
  return { bearings: [...bearings.values()], shims };
}

function item(written: string, count: number, house: HouseBearing | null): Shelf['bearings'][number] {
  const decoded = decodeBearing(house?.code ?? written);
  const read = 'bearing' in decoded && !(house && house.code === null) ? decoded.bearing : null;
  const sized = !read && house?.size ? house.size : null;
  const bearing = read ?? (sized && bearingFromSize(sized.bore, sized.outside, sized.width));
  if (!bearing) return { code: written, written, size: '', matters: '', count };
  return {
    code: read ? read.normalised : written,
    written,
    size: [bearing.bore, bearing.outside, bearing.width].map(plain).join(' × '),
    matters: bearingMatters(bearing),
    count,
  };
}
