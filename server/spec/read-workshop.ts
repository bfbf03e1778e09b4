import type { SpecDocument } from './document.ts';
import { parseYaml } from './parse-yaml.ts';
import type { Reader } from './section-reader.ts';
import { specDocument } from './spec-document.ts';

/** Reads a workshop file. Never throws. */
export function readWorkshop(text: string): SpecDocument {
  const yaml = parseYaml(text, 'workshop');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  return specDocument('workshop', reader, { workshop: null });
}
