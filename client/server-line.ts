import type { BaseLanguageClient } from 'vscode-languageclient';
import { type ChangedParams, changedNotification } from '../server/protocol/requests.ts';

/** The line to the server: what is asked before it is ready waits. */
export interface ServerLine {
  ask<Answer>(method: string, params: object): Promise<Answer>;
  /** Calls back when what is known of a file changed. */
  onChanged(listener: (uri: string) => void): { dispose(): void };
  /** A URI as the server writes it. */
  uri(uri: { toString(): string }): string;
}

export function createServerLine(client: BaseLanguageClient, ready: Promise<void>): ServerLine {
  const listeners = new Set<(uri: string) => void>();
  client.onNotification(changedNotification, ({ uri }: ChangedParams) => {
    for (const listener of listeners) listener(uri);
  });
  return {
    ask: async <Answer>(method: string, params: object): Promise<Answer> => {
      await ready;
      return client.sendRequest<Answer>(method, params);
    },
    onChanged: (listener) => {
      listeners.add(listener);
      return { dispose: () => void listeners.delete(listener) };
    },
    uri: (uri) =>
      client.code2ProtocolConverter.asUri(uri as Parameters<typeof client.code2ProtocolConverter.asUri>[0]),
  };
}
