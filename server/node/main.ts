import { enableCompileCache } from 'node:module';
import { performance } from 'node:perf_hooks';
import { type Connection, createConnection } from 'vscode-languageserver/node';
import { startServer } from '../lsp/server.ts';
import { diskFiles } from './disk-files.ts';

// Compiled code is kept between starts: the second start takes half the time.
enableCompileCache?.();

startServer(connection(), {
  ...diskFiles,
  now: () => performance.now(),
  schedule: (work, ms) => {
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
  const named = process.argv.some((argument) => /^--(node-ipc|stdio|pipe|socket)/.test(argument));
  return named ? createConnection() : createConnection(process.stdin, process.stdout);
}
