import type { SpecDocument } from './document.ts';
import { parseYaml } from './parse-yaml.ts';
import type { Reader } from './section-reader.ts';
import { specDocument } from './spec-document.ts';

/** Reads a wheel file. Never throws. */
export function readWheel(text: string): SpecDocument {
  const yaml = parseYaml(text, 'wheel');
  const reader: Reader = { yaml, problems: [...yaml.problems] };
  return specDocument('wheel', reader, { wheel: null });
}
