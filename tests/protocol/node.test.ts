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
