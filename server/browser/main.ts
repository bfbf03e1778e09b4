import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { startServer } from '../lsp/server.ts';

// There is no disk in a worker: files are read through the client.
const connection = createConnection(
  new BrowserMessageReader(self as DedicatedWorkerGlobalScope),
  new BrowserMessageWriter(self as DedicatedWorkerGlobalScope),
);

startServer(connection, {
  readFile: async () => null,
  findFiles: async () => [],
  now: () => performance.now(),
  schedule: (work, ms) => {
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
});
