import { expect, test } from 'vitest';
import { completion } from '../../server/features/completion.ts';
import { hover } from '../../server/features/hover.ts';
import { positionsOf } from '../../server/features/positions.ts';
import { readSpec, specKindOf } from '../../server/spec/read-spec.ts';
import { lookAt, samples } from './samples.ts';
import { complaints, ofDocument } from './soundness.ts';
import { watched } from './watchdog.ts';

const options = { snippets: true, suggestAgain: true, files: ['file:///saltmarsh/dunlin-front.hub.yaml'] };

/** What is wrong with the beginning of a file, cut at any byte; a character may be cut in two. */
function cutAnywhere(name: string, whole: string, each: number): readonly string[] {
  const bytes = Buffer.from(whole, 'utf8');
  const kind = specKindOf(name) ?? 'hub';
  const wrong: string[] = [];
  for (let length = 0; length <= bytes.length && wrong.length < 5; length++) {
    const text = bytes.toString('utf8', 0, length);
    const where = `${name} cut at byte ${length}`;
    const found = watched(where, () => {
      if (length % each !== 0) return ofDocument(readSpec(text, kind));
      const snapshot = lookAt(name, text);
      const end = positionsOf(snapshot.document).position(text.length);
      hover(snapshot, end);
      completion(snapshot, end, options);
      return complaints(snapshot);
    });
    wrong.push(...found.map((complaint) => `${where}: ${complaint}`));
  }
  return wrong;
}

// Read at every byte; worked out, hovered and completed at every fifth, and at every one of the faulty sample below.
test.each(samples)('$name may end at any byte', ({ name, text }) => {
  expect(cutAnywhere(name, text, 5)).toEqual([]);
});

test('a sample with a byte order mark and carriage returns may end at any byte', () => {
  const faulty = samples.find(({ name }) => name.startsWith('faulty'));
  expect(faulty).toBeDefined();
  if (!faulty) return;
  expect(cutAnywhere(faulty.name, `\ufeff${faulty.text.replaceAll('\n', '\r\n')}`, 1)).toEqual([]);
});

test('work that goes on for ever is ended and named', () => {
  const forever = (): never => {
    for (;;);
  };
  expect(() => watched('a loop without an end', forever, 50)).toThrow('a loop without an end');
  expect(watched('a sum', () => 1 + 1)).toBe(2);
});
