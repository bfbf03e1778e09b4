import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { hubWith } from '../support/spec-at-cursor.ts';
import { startClient } from './client.ts';
import { testConversation } from './conversation.ts';
import { nodeLine } from './lines.ts';

describe('the server as a process', () => {
  testConversation(nodeLine);

  test('ends with 0 after shutdown and exit', async () => {
    const line = nodeLine();
    const { connection } = await startClient(line);
    await connection.sendRequest('shutdown');
    await connection.sendNotification('exit');
    expect(await line.ended).toBe(0);
  });

  test.each([
    ['a header without a length', 'Length: 5\r\n\r\n'],
    ['a length that is no number', 'Content-Length: five\r\n\r\n'],
    ['no header at all', 'hello\r\n\r\n'],
  ])('ends, and does not fall silent, after %s', async (_, bytes) => {
    const line = nodeLine();
    await startClient(line);
    line.write(bytes);
    expect(await line.ended).toBe(1);
  });

  test.each([
    ['a body that is no JSON', 'Content-Length: 5\r\n\r\n{bad}'],
    ['a body that is no message', 'Content-Length: 1\r\n\r\n7'],
    ['an empty body', 'Content-Length: 0\r\n\r\n'],
  ])('goes on after %s', async (_, bytes) => {
    const line = nodeLine();
    const client = await startClient(line);
    line.write(bytes);
    expect(await client.ask('hubwright/explain', { code: 'width-off' })).toMatchObject({
      markdown: expect.any(String),
    });
    await line.close();
  });

  test('ends when the client is gone', async () => {
    const line = nodeLine();
    await startClient(line);
    line.hangUp();
    expect(await line.ended).toBe(1);
  });

  test('reads the disk for a client that does not offer its files', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'hubwright saltmarsh-'));
    writeFileSync(join(folder, 'salt.workshop.yaml'), 'bearings:\n  SM-17: { code: 6803-2RS }\n');
    const line = nodeLine();
    const client = await startClient(line, { folders: [pathToFileURL(folder).href] });
    // A client may write a URI in its own way.
    const uri = pathToFileURL(join(folder, 'dunlin.hub.yaml'))
      .href.replace('file:///', 'file:///')
      .replaceAll('-', '%2D');
    await client.open(uri, hubWith(['6803-2RS', 'SM-17']));
    expect(await client.findings(uri)).toEqual([]);
    await line.close();
    rmSync(folder, { recursive: true });
  });
});
