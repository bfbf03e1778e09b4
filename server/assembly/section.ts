import type { Assembly } from './assemble.ts';
import { sectionAxle } from './section-axle.ts';
import { sectionBeside } from './section-beside.ts';
import { sectionHousing } from './section-housing.ts';
import { sectionPart } from './section-part.ts';
import { placeAll } from './section-places.ts';
import type { SectionPart } from './section-shape.ts';

/** The hub cut along its axle: every part a ring, with what was taken for granted to draw it. */
export interface Section {
  /** Nominal length of the clamped line, mm; guessed where a length is missing. */
  readonly length: number;
  /** The hub's mid-plane, mm from the left dropout face. */
  readonly middle: number;
  /** From the outside in: housings, axle, the stack left to right, the parts beside it. */
  readonly parts: readonly SectionPart[];
  /** Sentences, one for each thing assumed. */
  readonly assumed: readonly string[];
}

/**
 * Cuts a hub along its axle. Values that no dimension gives are taken from the parts around and said in
 * `assumed`. `asWritten` is the hub the flanges are measured in: they stay with the shell in its variants.
 */
export function section(assembly: Assembly, asWritten: Assembly = assembly): Section {
  const places = placeAll(assembly);
  const note: string[] = [...places.assumed];
  const say = (text: string): void => {
    if (!note.includes(text)) note.push(text);
  };
  const stack = assembly.line.map((part) => sectionPart(part, assembly, places, say));
  const middle = (assembly.width.wanted?.nominal ?? places.length) / 2;
  const housings = [assembly.shell, assembly.freehub].flatMap((filled) =>
    filled ? sectionHousing(filled, stack, { assembly, asWritten, middle, say }) : [],
  );
  const axle = sectionAxle(assembly, stack, places.length, say);
  const beside = assembly.hub.beside.flatMap((item) => sectionBeside(item, stack, say));
  return {
    length: places.length,
    middle,
    parts: [...housings, ...(axle ? [axle] : []), ...stack, ...beside],
    assumed: note,
  };
}
