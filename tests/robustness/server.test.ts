import { afterEach, expect, test } from 'vitest';
import { positionsIn } from '../../server/features/positions.ts';
import { type Client, startClient } from '../protocol/client.ts';
import { type Line, nodeLine } from '../protocol/lines.ts';
import { hostile } from './hostile.ts';
import { dice, mutated } from './mutate.ts';
import { samples } from './samples.ts';

let line: Line | null = null;
afterEach(() => line?.close());

const uri = 'file:///saltmarsh/dunlin-front.hub.yaml';
const textDocument = { uri };

/** Everything an editor asks of a text; an error answer rejects. */
async function askAll(client: Client, text: string, seed: number): Promise<void> {
  const positions = positionsIn(text);
  const position = positions.position(dice(seed).below(text.length + 1));
  const end = positions.position(text.length);
  await Promise.all([
    client.ask('textDocument/hover', { textDocument, position }),
    client.ask('textDocument/completion', { textDocument, position }),
    client.ask('textDocument/documentSymbol', { textDocument }),
    client.ask('textDocument/codeAction', {
      textDocument,
      range: { start: position, end: position },
      context: { diagnostics: [] },
    }),
    client.ask('textDocument/documentLink', { textDocument }),
    client.ask('hubwright/section', { uri, variant: null }),
    client.ask('textDocument/hover', { textDocument, position: end }),
  ]);
}

test('two hundred broken texts and all hostile ones are answered without an error by one server', async () => {
  line = nodeLine();
  const client = await startClient(line);
  const hubs = samples.filter(({ name }) => name.endsWith('.hub.yaml'));
  const texts = [
    ...Array.from({ length: 200 }, (_, seed) => mutated(hubs[seed % hubs.length]?.text ?? '', 70_000 + seed)),
    ...hostile.map(([, text]) => text),
  ];
  await client.open(uri, '');
  for (const [seed, text] of texts.entries()) {
    const version = seed + 2;
    await client.change(uri, version, [{ text }]);
    await askAll(client, text, seed);
    if (seed % 10 === 0) await client.findings(uri, version);
  }
  expect(client.log).toEqual([]);
  await client.change(uri, texts.length + 2, [{ text: hubs[1]?.text ?? '' }]);
  expect(await client.findings(uri, texts.length + 2)).toEqual([]);
});
