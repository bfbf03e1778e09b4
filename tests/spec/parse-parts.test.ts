import { expect, test } from 'vitest';
import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { parseInParts } from '../../server/spec/parse-parts.ts';
import type { SpecPath } from '../../server/spec/place.ts';
import { placesOf } from '../../server/spec/places.ts';
import { parseOptions, type YamlText } from '../../server/spec/yaml-text.ts';
import { mutated } from '../robustness/mutate.ts';
import { samples } from '../robustness/samples.ts';

/** A hub long enough to be parsed in parts, with everything that may stand between its sections and entries. */
function long(text: string, newline = '\n'): string {
  const sets = Array.from(
    { length: 30 },
    (_, at) => `  # set ${at}
  set-${at}:${at % 3 === 0 ? '   # drawn' : ''}
    width: ${100 + at} ±0.2
    change:
      end-cap.left: { length: ${14 + at}.03, bore: 12.1 }
      end-cap.right:
        length: ${14 + at}.03

    notes: |
      of the same bar: as before
    # a comment that stands further out
   # and one between
    clamp: "5 kN"
`,
  );
  const variants = text.includes('\nvariants:') ? '' : '\n# more sets\nvariants:\n';
  const head = text.replace(/\nclamp:[^\n]*/, '');
  return `${head}${variants}${sets.join('')}\n# the end\nclamp: 5 kN\nnotes: >-\n  folded\n\n  text`.replaceAll(
    '\n',
    newline,
  );
}

const whole = (text: string): YamlText => {
  const { contents } = parseDocument(text, parseOptions);
  return { text, root: contents, at: (offset) => offset, mended: false, problems: [], broken: [] };
};

/** Every path of a tree with where it stands, in each of the ways a place is asked for. */
function placesIn(yaml: YamlText): readonly unknown[] {
  const places = placesOf(yaml);
  const found: unknown[] = [];
  const walk = (node: unknown, path: SpecPath): void => {
    const spans = (['key', 'value', 'whole'] as const).map((part) => places.span(path, part));
    const what = isScalar(node) ? [node.value, node.type] : isMap(node) ? ['map', node.flow ?? false] : null;
    found.push([path, what, isScalar(node) ? node.range?.slice(0, 2) : null, spans]);
    if (isMap(node)) for (const { key, value } of node.items) walk(value, [...path, String(key)]);
    if (isSeq(node)) for (const [at, item] of node.items.entries()) walk(item, [...path, at]);
  };
  walk(yaml.root, []);
  for (let offset = 0; offset <= yaml.text.length; offset += 7) found.push(places.pathAt(offset));
  return found;
}

function compared(text: string): boolean {
  const root = parseInParts(text);
  if (!root) return false;
  const { errors } = parseDocument(text, parseOptions);
  expect(errors).toEqual([]);
  const [inParts, inOne] = [placesIn({ ...whole(text), root }), placesIn(whole(text))];
  // The long way round is only gone where it shows what differs.
  if (JSON.stringify(inParts) !== JSON.stringify(inOne)) expect(inParts).toEqual(inOne);
  return true;
}

const hubs = samples.filter(({ name }) => name.endsWith('.hub.yaml'));

test.each(hubs)('the tree of $name made long is the same in parts and whole', ({ text }) => {
  expect(compared(long(text))).toBe(true);
  expect(compared(long(text, '\r\n'))).toBe(true);
  expect(compared(`\ufeff${long(text)}`)).toBe(true);
});

test('a part is found again wherever it has moved to, and what was read before stays where it was', () => {
  const text = long(hubs[1]?.text ?? '');
  const before = parseInParts(text);
  const places = placesIn({ ...whole(text), root: before });
  for (const more of ['# one\n', '# one\n# two\n', '']) compared(`${more}${text}`);
  expect(placesIn({ ...whole(text), root: before })).toEqual(places);
});

test('a changed text is read in parts as it is read whole, or is left to be read whole', () => {
  const base = long(hubs[0]?.text ?? '');
  let inParts = 0;
  for (let seed = 0; seed < 250; seed++) inParts += compared(mutated(base, seed)) ? 1 : 0;
  expect(inParts).toBeGreaterThan(50);
  expect(inParts).toBeLessThan(250);
});

test('what reaches from one part into another is left to be read whole', () => {
  const text = long(hubs[0]?.text ?? '');
  expect(parseInParts(text.replace('hub: ', 'hub: &a '))).toBeNull();
  expect(parseInParts(`---\n${text}`)).toBeNull();
  expect(parseInParts(`${text}\n...\n`)).toBeNull();
  expect(parseInParts(text.replace('hub: ', 'hub: "'))).toBeNull();
  expect(parseInParts(text.replace('hub: ', '? hub\n: '))).toBeNull();
});
