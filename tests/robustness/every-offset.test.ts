import { expect, test } from 'vitest';
import { completion } from '../../server/features/completion.ts';
import { hover } from '../../server/features/hover.ts';
import { positionsOf } from '../../server/features/positions.ts';
import { lookAt, samples } from './samples.ts';
import { ofMessage } from './soundness.ts';
import { watched } from './watchdog.ts';

const options = { snippets: true, suggestAgain: true, files: ['file:///saltmarsh/dunlin-front.hub.yaml'] };

/** What is wrong with the answers at each offset of a text. */
function askedEverywhere(
  name: string,
  text: string,
): { wrong: readonly string[]; hovers: number; items: number } {
  const snapshot = lookAt(name, text);
  const positions = positionsOf(snapshot.document);
  const wrong: string[] = [];
  let [hovers, items] = [0, 0];
  for (let offset = 0; offset <= text.length; offset++) {
    const where = `${name} at ${offset}`;
    watched(where, () => {
      const at = positions.position(offset);
      const shown = hover(snapshot, at);
      const said = shown ? JSON.stringify(shown.contents) : 'nothing';
      const offered = completion(snapshot, at, options)?.items ?? [];
      hovers += shown ? 1 : 0;
      items += offered.length;
      const complaints = [said, ...offered.map((item) => `${item.label} ${JSON.stringify(item)}`)].flatMap(
        (words) => ofMessage(words.slice(0, 900), text),
      );
      wrong.push(...complaints.map((complaint) => `${where}: ${complaint}`));
    });
  }
  return { wrong: wrong.slice(0, 5), hovers, items };
}

test.each(samples)('hover and completion answer at every offset of $name', ({ name, text }) => {
  const { wrong, hovers, items } = askedEverywhere(name, text);
  expect(wrong).toEqual([]);
  expect(hovers).toBeGreaterThan(text.length / 10);
  expect(items).toBeGreaterThan(text.length / 10);
});

test('hover and completion answer at every offset of a text with a byte order mark and carriage returns', () => {
  const faulty = samples.find(({ name }) => name.startsWith('faulty'));
  expect(faulty).toBeDefined();
  const text = `\ufeff${faulty?.text.replaceAll('\n', '\r\n')}`;
  expect(askedEverywhere('faulty-front.hub.yaml', text).wrong).toEqual([]);
});
