import { readFileSync } from 'node:fs';
import { afterEach, expect, test } from 'vitest';
import { positionsIn } from '../../server/features/positions.ts';
import { hubWith, soundHub } from '../support/spec-at-cursor.ts';
import { type Client, type ClientSetup, startClient } from './client.ts';
import type { Line } from './lines.ts';

const uri = 'file:///saltmarsh/dunlin-front.hub.yaml';
const textDocument = { uri };
const snippets = {
  workspace: { workspaceEdit: { snippetEditSupport: true, documentChanges: true } },
  textDocument: { completion: { completionItem: { snippetSupport: true } } },
};
interface Table {
  readonly titles: readonly string[];
  readonly rows: readonly { readonly cells: readonly string[] }[];
}

const codes = (found: readonly { readonly code?: unknown }[]): readonly unknown[] =>
  found.map(({ code }) => code);
const placeOf = (text: string, words: string, more = 0) =>
  positionsIn(text).position(text.indexOf(words) + more);
const rangeOf = (text: string, words: string) => ({
  start: placeOf(text, words),
  end: placeOf(text, words, words.length),
});

/** What every bundle of the server must answer, whatever it runs on. */
export function testConversation(openLine: () => Line): void {
  let line: Line | null = null;
  const start = (setup: ClientSetup = { capabilities: snippets }): Promise<Client> => {
    line = openLine();
    return startClient(line, setup);
  };
  afterEach(() => line?.close());

  test('it says what it offers', async () => {
    const { started } = await start();
    expect(started.serverInfo?.name).toBe('hubwright');
    expect(started.capabilities).toMatchObject({
      textDocumentSync: { openClose: true, change: 2 },
      hoverProvider: true,
      documentSymbolProvider: true,
      inlayHintProvider: true,
      codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite'] },
    });
  });

  test('a fault is found where it stands, mended by the first fix, and gone', async () => {
    const client = await start();
    const faulty = hubWith([
      'code: 6803-2RS\n    seat: shell.right',
      'code: 6893-2RS\n    seat: shell.right',
    ]);
    await client.open(uri, faulty);
    const found = await client.findings(uri, 1);
    expect(codes(found)).toContain('bearing-not-decoded');
    const [finding] = found.filter(({ code }) => code === 'bearing-not-decoded');
    expect(finding?.range).toEqual(rangeOf(faulty, '6893-2RS'));
    expect(finding?.source).toBe('hubwright');

    const range = { start: finding?.range.start, end: finding?.range.start };
    const [fix] = await client.ask<
      { edit: { documentChanges: { textDocument: unknown; edits: { range: never; newText: string }[] }[] } }[]
    >('textDocument/codeAction', { textDocument, range, context: { diagnostics: found } });
    const [change] = fix?.edit.documentChanges ?? [];
    expect(change?.textDocument).toEqual({ uri, version: 1 });
    await client.change(
      uri,
      2,
      change?.edits.map(({ range: at, newText }) => ({ range: at, text: newText })) ?? [],
    );
    expect(await client.findings(uri, 2)).toEqual([]);
  });

  test('edits in pieces come to the same as the whole text', async () => {
    const client = await start();
    await client.open(uri, soundHub);
    const wanted = hubWith(['length: 14.03', 'length: 14.53'], ['6803-2RS', '6902-2RS']);
    let text = soundHub;
    let version = 1;
    const edit = async (words: string, by: string): Promise<void> => {
      const change = { range: rangeOf(text, words), text: by };
      text = text.replace(words, () => by);
      version += 1;
      await client.change(uri, version, [change]);
    };
    await edit('14.03', '14');
    await edit('length: 14 ', 'length: 14.53 ');
    await edit('6803-2RS', '');
    await edit('code: \n', 'code: 6902-2RS\n');
    expect(text).toBe(wanted);
    const inPieces = await client.findings(uri, version);
    await client.change(uri, version + 1, [{ text: wanted }]);
    expect(await client.findings(uri, version + 1)).toEqual(inPieces);
    expect(inPieces).not.toEqual([]);
  });

  test('edits that come at once are answered together, the last one always', async () => {
    const client = await start();
    await client.open(uri, soundHub);
    await client.findings(uri, 1);
    const before = client.published.length;
    for (let version = 2; version <= 40; version++) {
      void client.change(uri, version, [
        { range: { start: { line: 0, character: 5 }, end: { line: 0, character: 5 } }, text: 'x' },
      ]);
    }
    expect(await client.findings(uri, 40)).toEqual([]);
    expect(client.published.length - before).toBeLessThan(20);
  });

  test('a hover, suggestions and the outline are answered right after an edit', async () => {
    const client = await start();
    await client.open(uri, soundHub);
    const changed = hubWith(['code: 6803-2RS', 'code: 6902-2RS']);
    await client.change(uri, 2, [{ range: rangeOf(soundHub, '6803-2RS'), text: '6902-2RS' }]);
    const hover = await client.ask('textDocument/hover', {
      textDocument,
      position: placeOf(changed, '6902', 1),
    });
    // ISO 15, series 69 with bore code 02.
    expect(JSON.stringify(hover)).toContain('15 × 28 × 7 mm');
    const list = await client.ask<{ items: { label: string }[] }>('textDocument/completion', {
      textDocument,
      position: placeOf(changed, '6902'),
    });
    expect(list.items.map(({ label }) => label)).toContain('6803-2RS');
    const symbols = await client.ask<{ name: string }[]>('textDocument/documentSymbol', { textDocument });
    expect(symbols.map(({ name }) => name)).toEqual(['Dunlin front', 'shell', 'axle', 'stack']);
  });

  test('results stand behind the values they belong to, of the text as it is now', async () => {
    const client = await start();
    await client.open(uri, soundHub);
    await client.change(uri, 2, [{ range: rangeOf(soundHub, '62.06'), text: '62.04' }]);
    const hints = await client.ask<{ position: unknown; label: string }[]>('textDocument/inlayHint', {
      textDocument,
      range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
    });
    expect(hints.map(({ label }) => label.replace(/\d+/g, '#'))).toEqual([
      'mounted # µm',
      'mounted # µm',
      'play # µm',
    ]);
    expect(hints[2]?.position).toEqual(placeOf(soundHub, '62.06 ±0.01', '62.06 ±0.01'.length));
  });

  test('the section is drawn with its loops, and follows the variant asked for', async () => {
    const client = await start();
    await client.open(uri, `${soundHub}variants:\n  wide:\n    width: 110 ±0.2\n`);
    const written = await client.ask<Record<string, never>>('hubwright/section', { uri, variant: null });
    expect(written).toMatchObject({
      title: 'Dunlin front',
      variant: null,
      variants: [null, 'wide'],
      broken: null,
    });
    expect(written.svg).toMatch(/^<svg /);
    expect(written.svg).not.toMatch(/<script|style=|<style|on\w+=/);
    expect(written.description).toContain('6803-2RS');
    expect(written.loops).toMatchObject([
      { what: 'clamped width', mean: '100.00', gravity: null },
      {},
      {},
      {},
    ]);
    expect(written.places).toMatchObject({
      'spacer.centre': { start: placeOf(soundHub, 'spacer: centre') },
    });
    const wide = await client.ask('hubwright/section', { uri, variant: 'wide' });
    expect(wide).toMatchObject({ variant: 'wide', loops: [{ gravity: 'error' }, {}, {}, {}] });
  });

  test('hints are asked for again when a file around changed', async () => {
    const folder = 'memory:///saltmarsh';
    const workshop = `${folder}/saltmarsh.workshop.yaml`;
    const disk: Record<string, string> = { [workshop]: 'workshop: Saltmarsh\n' };
    let told: () => void = () => {};
    const client = await start({
      folders: [folder],
      capabilities: { workspace: { inlayHint: { refreshSupport: true } } },
      initializationOptions: { files: true },
      answers: {
        'hubwright/findFiles': () => ({ uris: Object.keys(disk) }),
        'hubwright/readFile': (params: { uri: string }) => ({ text: disk[params.uri] ?? null }),
        'workspace/inlayHint/refresh': () => {
          told();
          return null;
        },
      },
    });
    const open = `${folder}/open.hub.yaml`;
    await client.open(open, soundHub);
    await client.findings(open);
    const lastHint = async (): Promise<string | undefined> => {
      const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
      const hints = await client.ask<{ label: string }[]>('textDocument/inlayHint', {
        textDocument: { uri: open },
        range,
      });
      return hints.at(-1)?.label;
    };
    expect(await lastHint()).toMatch(/^play \d+ µm$/);
    disk[workshop] = 'workshop: Saltmarsh\ndefaults:\n  clamp: 2 kN\n';
    const next = (): Promise<void> =>
      new Promise((resolve) => {
        told = resolve;
      });
    let refreshed = next();
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: workshop, type: 2 }],
    });
    // One that was on its way from the start may come first; without any the test runs out of time.
    for (let label: string | undefined = ''; !label?.includes('clamped'); ) {
      await refreshed;
      refreshed = next();
      label = await lastHint();
    }
  });

  test('play and load are those of the temperature and the clamp asked for', async () => {
    const client = await start();
    // An alloy sleeve of 72.06 mm², by its diameters; the clamp takes F·L/(E·A) off it, E of 7075 is 71 700 MPa.
    const text = hubWith(['    outside: 19.6', '    outside: 19.6\n    material: aluminium 7075-T6']);
    await client.open(uri, `${text}clamp: 2 kN\n`);
    const shortens = async (conditions: unknown) => {
      const answer = await client.ask<{ conditions: unknown; pairs: Table; bearings: Table }>(
        'hubwright/section',
        { uri, variant: null, conditions },
      );
      expect(answer.bearings.rows).toHaveLength(2);
      return { now: answer.conditions, by: answer.pairs.rows[0]?.cells[4] };
    };
    expect(await shortens(undefined)).toEqual({
      now: { temperature: 20, clampForce: null, writtenClamp: 2000 },
      by: '24 µm',
    });
    // Twice and half of 24.0 µm.
    expect(await shortens({ temperature: 20, clampForce: 4000 })).toEqual({
      now: { temperature: 20, clampForce: 4000, writtenClamp: 2000 },
      by: '48 µm',
    });
    expect(await shortens({ temperature: -10, clampForce: 1000 })).toMatchObject({ by: '12 µm' });
    // Odd ones are the bench and the written clamp.
    for (const odd of [7, { temperature: 'warm', clampForce: Number.NaN }, null]) {
      expect(await shortens(odd)).toMatchObject({ now: { temperature: 20, clampForce: null } });
    }
  });

  test('thousands of builds follow when they are asked for', async () => {
    const client = await start();
    await client.open(uri, `${soundHub}clamp: 2 kN\n`);
    const { pairs } = await client.ask<{ pairs: { what: string; svg: string; words: string }[] }>(
      'hubwright/builds',
      { uri, variant: null },
    );
    expect(pairs).toMatchObject([{ what: 'bearing.left and bearing.right' }]);
    expect(pairs[0]?.svg).toMatch(/^<svg /);
    expect(pairs[0]?.svg).not.toMatch(/<script|style=|<style|on\w+=/);
    expect(pairs[0]?.words).toContain('Of 20 000 builds');
    await client.change(uri, 2, [{ text: soundHub }]);
    // Without a clamp there is nothing to build.
    expect(await client.ask('hubwright/builds', { uri, variant: null })).toEqual({ pairs: [] });
  });

  test('a broken text is said to be broken', async () => {
    const client = await start();
    await client.open(uri, hubWith(['hub: Dunlin', 'hub: "Dunlin']));
    expect(await client.ask('hubwright/section', { uri, variant: null })).toMatchObject({
      broken: expect.any(String),
    });
  });

  test('pages, skeletons and links between files are answered', async () => {
    const client = await start();
    const page = await client.ask<{ markdown: string }>('hubwright/explain', { code: 'width-off' });
    expect(page.markdown).toContain('# width-off');
    expect(await client.ask('hubwright/explain', { code: 'no-such-finding' })).toBeNull();
    const skeleton = await client.ask<{ text: string }>('hubwright/skeleton', {
      name: 'Knot rear',
      position: 'rear',
    });
    expect(skeleton.text).toMatch(/^hub: Knot rear\nposition: rear\n/);
    await client.open(uri, soundHub);
    const wheel = 'file:///saltmarsh/dunlin.wheel.yaml';
    await client.open(wheel, 'wheel: Dunlin\nhub: ./dunlin-front.hub.yaml\n', 'wheel-spec');
    const links = await client.ask('textDocument/documentLink', { textDocument: { uri: wheel } });
    expect(links).toMatchObject([{ target: uri }]);
  });

  test('other end caps in a hub are told of in the wheel that is built on it', async () => {
    const client = await start();
    const samples = new URL('../../client/samples/', import.meta.url);
    const hub = readFileSync(new URL('curlew-family.hub.yaml', samples), 'utf8');
    const longer = hub
      .replace('width: 110 ±0.2', 'width: 115 ±0.2')
      .replace('end-cap.right: { length: 20.05', 'end-cap.right: { length: 25.05');
    expect(longer).toContain('25.05');
    const file = 'file:///saltmarsh/curlew-family.hub.yaml';
    const wheel = 'file:///saltmarsh/curlew.wheel.yaml';
    await client.open(file, hub);
    await client.open(
      wheel,
      `wheel: Curlew front
hub: ./curlew-family.hub.yaml
variant: wide-110
rim: { erd: 596.5, erd-to: nipple-seat, holes: 32, tension-limit: 1250 N }
lacing:
  left: { crosses: 3, heads: alternate }
  right: { crosses: 3, heads: alternate }
tension: { side: left, value: 1200 N }
`,
      'wheel-spec',
    );
    expect(await client.findings(wheel)).toEqual([]);
    // The right cap is 5 longer, so the middle lies 2.5 further right: flanges at 31.5 and 26.5, and the right
    // spokes pull 31.5/26.5 of 1200 N, some 1430 N.
    await client.change(file, 2, [{ text: longer }]);
    await client.until('a finding of the wheel', (all) =>
      all.some(
        (one) => one.uri === wheel && one.diagnostics.some(({ code }) => code === 'tension-over-limit'),
      ),
    );
    const latest = client.published.filter((one) => one.uri === wheel).at(-1);
    expect(latest?.diagnostics[0]?.message).toMatch(/^14[23]0 N on the right side, which balance asks for/);
  });

  test('what to order is listed for every hub of the workspace, the text in an editor before the one on disk', async () => {
    const folder = 'file:///saltmarsh';
    const disk: Readonly<Record<string, string>> = {
      [`${folder}/house.workshop.yaml`]: 'stock: { bearings: { 6803-2RS: 1 } }\n',
      [`${folder}/a.hub.yaml`]: soundHub,
      [`${folder}/below/b.hub.yaml`]: soundHub,
      [`${folder}/below/broken.hub.yaml`]: 'hub: [Broken',
    };
    const client = await start({
      folders: [folder],
      initializationOptions: { files: true },
      answers: {
        'hubwright/findFiles': () => ({ uris: Object.keys(disk) }),
        'hubwright/readFile': (params: { uri: string }) => ({ text: disk[params.uri] ?? null }),
      },
    });
    // One of four bearings becomes one with shields, in an editor only.
    await client.open(`${folder}/a.hub.yaml`, hubWith(['6803-2RS', '6803-2Z']));
    const order = await client.ask<{ files: number; markdown: string }>('hubwright/order', {});
    expect(order.files).toBe(3);
    expect(order.markdown).toContain('| 61803-2RS | rubbing seals, clearance N | 3 | 1 | 2 |');
    expect(order.markdown).toMatch(/\| 61803-2Z \| shields, clearance N[^|]*\| 1 \| 0 \| 1 \|/);
    expect(order.markdown).toContain('not all read: below/broken.hub.yaml');
  });

  test('a workspace without hubs has nothing to order', async () => {
    const client = await start({});
    expect(await client.ask('hubwright/order', {})).toBeNull();
  });

  test('files are read through a client that offers it, and findings of closed files are shown when asked for', async () => {
    const folder = 'memory:///saltmarsh';
    const disk: Record<string, string> = {
      [`${folder}/saltmarsh.workshop.yaml`]: 'bearings:\n  SM-17: { code: 6803-2RS }\n',
      [`${folder}/faulty.hub.yaml`]: hubWith(['6803-2RS', '6893-2RS']),
    };
    const client = await start({
      folders: [folder],
      initializationOptions: { files: true, explain: true },
      answers: {
        'hubwright/findFiles': () => ({ uris: Object.keys(disk) }),
        'hubwright/readFile': (params: { uri: string }) => ({ text: disk[params.uri] ?? null }),
      },
    });
    const open = `${folder}/open.hub.yaml`;
    await client.open(open, hubWith(['6803-2RS', 'SM-17']));
    expect(await client.findings(open)).toEqual([]);
    const answer = await client.ask('hubwright/checkWorkspace', {});
    expect(answer).toMatchObject({ files: 3, withFindings: 1, counts: { error: 1 } });
    const faulty = `${folder}/faulty.hub.yaml`;
    await client.until('findings of a closed file', (all) => all.some((params) => params.uri === faulty));
    const [finding] = await client.findings(faulty);
    expect(finding?.codeDescription?.href).toBe('hubwright-page:/bearing-not-decoded.md');

    // The house drops its code: the file that uses it is told of, without an edit.
    disk[`${folder}/saltmarsh.workshop.yaml`] = 'bearings: {}\n';
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: `${folder}/saltmarsh.workshop.yaml`, type: 2 }],
    });
    await client.until('findings after the workshop changed', (all) =>
      all.some((params) => params.uri === open && params.diagnostics.length > 0),
    );
    // A file that is deleted has no findings.
    delete disk[faulty];
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {
      changes: [{ uri: faulty, type: 3 }],
    });
    await client.until(
      'no findings of a deleted file',
      (all) => all.findLast((params) => params.uri === faulty)?.diagnostics.length === 0,
    );
  });

  test('closing a file takes its findings away', async () => {
    const client = await start();
    await client.open(uri, hubWith(['6803-2RS', '6893-2RS']));
    expect(await client.findings(uri, 1)).not.toEqual([]);
    await client.connection.sendNotification('textDocument/didClose', { textDocument });
    await client.until('no findings', (all) => all.at(-1)?.diagnostics.length === 0);
  });

  test('an unsaved file is known by its language', async () => {
    const client = await start();
    const untitled = 'untitled:Untitled-1';
    await client.open(untitled, hubWith(['6803-2RS', '6893-2RS']));
    expect(codes(await client.findings(untitled))).toContain('bearing-not-decoded');
  });

  test('what makes no sense is answered with nothing, never with an error', async () => {
    const client = await start();
    await client.open(uri, soundHub);
    const nonsense: unknown[] = [
      {},
      { textDocument: null },
      { textDocument: { uri: 'file:///nowhere.hub.yaml' } },
      { textDocument: { uri: '%%%' }, position: { line: 1, character: 1 } },
      { textDocument, position: null, range: 7, context: null },
      { textDocument, position: { line: -1, character: 1.5 }, range: { start: {}, end: null } },
      {
        textDocument,
        position: { line: 1e9, character: 1e9 },
        range: { start: { line: 1e9, character: 0 }, end: { line: 0, character: 0 } },
      },
      { uri: 7, variant: {}, code: [], name: null, position: 'up' },
    ];
    const methods = [
      'textDocument/hover',
      'textDocument/completion',
      'textDocument/codeAction',
      'textDocument/documentSymbol',
      'textDocument/documentLink',
      'textDocument/inlayHint',
      'hubwright/section',
      'hubwright/builds',
      'hubwright/explain',
      'hubwright/skeleton',
    ];
    for (const method of methods) {
      for (const params of nonsense) await expect(client.ask(method, params)).resolves.not.toThrow();
    }
    for (const method of [
      'textDocument/didOpen',
      'textDocument/didChange',
      'textDocument/didClose',
      'workspace/didChangeConfiguration',
    ]) {
      for (const params of nonsense) await client.connection.sendNotification(method, params as object);
    }
    await client.connection.sendNotification('textDocument/didOpen', {
      textDocument: { uri: 'file:///x.hub.yaml' },
    });
    await client.change(uri, 9, [
      { range: { start: { line: 0, character: 5 } }, text: 'x' },
      { range: 1 },
      null,
    ]);
    // All of that, and the server goes on.
    await client.open(uri, soundHub);
    const hover = await client.ask('textDocument/hover', {
      textDocument,
      position: placeOf(soundHub, '6803', 1),
    });
    expect(JSON.stringify(hover)).toContain('17 × 26 × 5 mm');
  });

  test('nothing is answered before the start and after the end', async () => {
    line = openLine();
    const { connection } = line;
    const hover = () =>
      connection.sendRequest('textDocument/hover', { textDocument, position: { line: 0, character: 0 } });
    await expect(hover()).rejects.toMatchObject({ code: -32002 });
    await startClient(line);
    await expect(
      connection.sendRequest('initialize', { processId: null, rootUri: null, capabilities: {} }),
    ).rejects.toMatchObject({ code: -32600 });
    await connection.sendRequest('shutdown');
    await expect(hover()).rejects.toMatchObject({ code: -32600 });
  });
}
