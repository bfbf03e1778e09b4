import { performance } from 'node:perf_hooks';
import {
  type Connection,
  createConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { startServer } from '../lsp/server.ts';
import { diskFiles } from './disk-files.ts';
import { tidyMemory } from './tidy-memory.ts';

const worked = tidyMemory();

startServer(connection(), {
  ...diskFiles,
  now: () => performance.now(),
  schedule: (work, ms) => {
    worked();
    if (ms === 0) {
      const immediate = setImmediate(work);
      return () => clearImmediate(immediate);
    }
    const timer = setTimeout(work, ms);
    return () => clearTimeout(timer);
  },
});

/** An editor names the way to talk on the command line; without one it is standard input and output. */
function connection(): Connection {
  if (process.argv.some((argument) => /^--(node-ipc|pipe|socket)/.test(argument))) return createConnection();
  const reader = new StreamMessageReader(process.stdin);
  // Behind a broken header no further message can be found: an end can be mended by the editor, silence cannot.
  reader.onError(({ message }) => {
    if (/header|content-length/i.test(message)) stop(`what came in is no message: ${message}`);
  });
  process.stdin.on('end', () => stop('the client is gone'));
  return createConnection(reader, new StreamMessageWriter(process.stdout));
}

function stop(why: string): void {
  process.stderr.write(`hubwright: ${why}\n`);
  process.exit(1);
}
