import { findMaterial, type MaterialName, materials } from '../../engine/tables/materials.ts';
import type { Placed } from '../../spec/place.ts';
import type { Workshop } from '../../spec/workshop-model.ts';

/** What a part is made of, as far as mechanics needs it. */
export interface PartMaterial {
  readonly name: string;
  /** MPa */
  readonly E: number;
  readonly nu: number;
  /** 1/K */
  readonly expansion: number;
  /** MPa; null where the table has none. */
  readonly yield: number | null;
  /** Said where the material was not written, or is only a family of materials. */
  readonly assumed: string | null;
}

/** The material written for a part: the workshop's own first, the built-in table second, `otherwise` where neither has it. */
export function materialOf(
  part: string,
  written: Placed<string> | undefined,
  otherwise: MaterialName,
  workshop: Workshop | null,
): PartMaterial {
  const own = written ? workshop?.materials[written.value]?.values : undefined;
  if (written && own?.E && own.nu && own.expansion) {
    return {
      name: written.value,
      E: own.E.value.value,
      nu: own.nu.value,
      expansion: own.expansion.value,
      yield: own.yield?.value.value ?? null,
      assumed: null,
    };
  }
  const found = written ? findMaterial(written.value) : null;
  const name = found?.name ?? otherwise;
  const { E, nu, expansion, yield: strength } = found?.material ?? materials[otherwise];
  const said = written
    ? `${written.value} of ${part} taken as ${name}`
    : `${part} taken as ${name}: no material is written`;
  return { name, E, nu, expansion, yield: strength, assumed: found && !found.assumed ? null : said };
}
