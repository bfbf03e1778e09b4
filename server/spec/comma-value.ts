import type { YAMLMap } from 'yaml';
import { isEmpty, keyOf, nodeSpan, type YamlText } from './yaml-text.ts';

/**
 * In braces YAML cuts `14,03` at its comma and makes a key of the rest: how many keys after the one at `index` are
 * really parts of its value, and where that value ends.
 */
export function commaValue(
  yaml: YamlText,
  map: YAMLMap<unknown, unknown>,
  index: number,
): { readonly count: number; readonly end: number } | null {
  if (!map.flow) return null;
  let end = nodeSpan(yaml, map.items[index]?.value)?.end;
  let count = 0;
  while (end !== undefined && yaml.text[end] === ',' && /\d/.test(yaml.text[end - 1] ?? '')) {
    const next = map.items[index + count + 1];
    const key = next ? keyOf(next) : null;
    const span = nodeSpan(yaml, next?.key);
    if (key === null || !/^\d/.test(key) || span?.start !== end + 1 || !isEmpty(next?.value)) break;
    end = span.end;
    count++;
  }
  return count === 0 || end === undefined ? null : { count, end };
}
