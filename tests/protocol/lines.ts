import { spawn } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import {
  createProtocolConnection,
  type DataCallback,
  type Message,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';

/** A built server at the other end, and the way to be rid of it. */
export interface Line {
  readonly connection: ProtocolConnection;
  /** Resolves with the exit code of the process, 0 for a worker that ended. */
  readonly ended: Promise<number>;
  close(): Promise<void>;
}

const dist = join(import.meta.dirname, '..', '..', 'dist');

function built(name: string): string {
  const path = join(dist, name);
  if (!existsSync(path)) throw new Error(`${name} is not built: run npm run build first`);
  return path;
}

/** A line of bytes, which may be anything. */
export interface NodeLine extends Line {
  write(bytes: string): void;
  hangUp(): void;
}

/** The Node bundle as a process, spoken to over standard input and output. */
export function nodeLine(): NodeLine {
  const child = spawn(process.execPath, [built('server-node.cjs'), '--stdio'], {
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  connection.listen();
  const ended = new Promise<number>((resolve) => child.on('exit', (code) => resolve(code ?? 1)));
  return {
    connection,
    ended,
    write: (bytes) => void child.stdin.write(bytes),
    hangUp: () => void child.stdin.end(),
    close: async () => {
      connection.dispose();
      child.kill();
      await ended;
    },
  };
}

/** What a worker of a browser has and one of Node has not, and the other way round. */
const shim = `
const { parentPort, workerData } = require('node:worker_threads');
const vm = require('node:vm');
globalThis.self = globalThis;
self.addEventListener = () => {};
self.postMessage = (message) => parentPort.postMessage(message);
parentPort.on('message', (data) => self.onmessage({ data }));
for (const name of ['process', 'Buffer', 'global', 'setImmediate', 'clearImmediate']) delete globalThis[name];
vm.runInThisContext(workerData.code, { filename: 'server-browser.js' });
`;

/** The browser bundle in a worker without anything of Node. */
export function browserLine(): Line {
  const code = readFileSync(built('server-browser.js'), 'utf8');
  const worker = new Worker(shim, { eval: true, workerData: { code } });
  const quiet = () => ({ dispose: () => {} });
  const connection = createProtocolConnection(
    {
      onError: quiet,
      onClose: quiet,
      onPartialMessage: quiet,
      listen: (callback: DataCallback) => {
        worker.on('message', callback);
        return { dispose: () => void worker.off('message', callback) };
      },
      dispose: () => {},
    },
    {
      onError: quiet,
      onClose: quiet,
      write: async (message: Message) => worker.postMessage(message),
      end: () => {},
      dispose: () => {},
    },
  );
  connection.listen();
  const ended = new Promise<number>((resolve) => worker.on('exit', () => resolve(0)));
  return {
    connection,
    ended,
    close: async () => {
      connection.dispose();
      await worker.terminate();
    },
  };
}
