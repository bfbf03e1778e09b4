// A client with as little as possible between the clock and the pipe.
import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';

/** Starts a server and answers once it is initialised. */
export async function startServer(name, bundle, env = {}) {
  const began = performance.now();
  const child = spawn(process.execPath, [bundle, '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
    env: { ...process.env, ...env },
  });
  const waiting = new Map();
  const published = new Map();
  let id = 0;
  let rest = Buffer.alloc(0);

  child.stdout.on('data', (data) => {
    rest = rest.length === 0 ? data : Buffer.concat([rest, data]);
    for (;;) {
      const head = rest.indexOf('\r\n\r\n');
      if (head < 0) return;
      const length = Number(/Content-Length: (\d+)/i.exec(rest.toString('latin1', 0, head))?.[1]);
      if (rest.length < head + 4 + length) return;
      const body = rest.toString('utf8', head + 4, head + 4 + length);
      rest = rest.subarray(head + 4 + length);
      receive(JSON.parse(body));
    }
  });

  function receive(message) {
    if (message.method !== undefined && message.id !== undefined)
      return send({ id: message.id, result: null });
    if (message.method === 'textDocument/publishDiagnostics') {
      const { uri, version, diagnostics } = message.params;
      const key = `${uri} ${version}`;
      const waiter = published.get(key);
      published.delete(key);
      return waiter?.(diagnostics);
    }
    if (message.method === 'window/logMessage' && message.params.type === 1) {
      throw new Error(`${name} logged: ${message.params.message}`);
    }
    const waiter = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.error) throw new Error(`${name} answered with an error: ${JSON.stringify(message.error)}`);
    waiter?.(message.result);
  }

  function send(message) {
    const body = Buffer.from(JSON.stringify({ jsonrpc: '2.0', ...message }), 'utf8');
    child.stdin.write(Buffer.concat([Buffer.from(`Content-Length: ${body.length}\r\n\r\n`), body]));
  }

  const ask = (method, params) =>
    new Promise((done) => {
      id += 1;
      waiting.set(id, done);
      send({ id, method, params });
    });
  const tell = (method, params) => send({ method, params });
  const findings = (uri, version) => new Promise((done) => published.set(`${uri} ${version}`, done));
  const versions = new Map();

  await ask('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: {},
    workspaceFolders: null,
  });
  const started = performance.now() - began;
  tell('initialized', {});

  return {
    name,
    /** From the start of the process to the answer to `initialize`, ms. */
    started,
    ask,
    /** Opens a file; the time to its findings, ms. */
    async open(uri, text) {
      versions.set(uri, 1);
      const shown = findings(uri, 1);
      const at = performance.now();
      tell('textDocument/didOpen', { textDocument: { uri, languageId: 'hub-spec', version: 1, text } });
      const diagnostics = await shown;
      return { ms: performance.now() - at, diagnostics };
    },
    /** One edit; the time to the findings of the text it leaves, ms. */
    async edit(uri, change) {
      const version = versions.get(uri) + 1;
      versions.set(uri, version);
      const shown = findings(uri, version);
      const at = performance.now();
      tell('textDocument/didChange', { textDocument: { uri, version }, contentChanges: [change] });
      const diagnostics = await shown;
      return { ms: performance.now() - at, diagnostics };
    },
    /** An edit with a request right behind it; the time to the answer, ms. */
    async editAndAsk(uri, change, method, params) {
      const version = versions.get(uri) + 1;
      versions.set(uri, version);
      const shown = findings(uri, version);
      const at = performance.now();
      tell('textDocument/didChange', { textDocument: { uri, version }, contentChanges: [change] });
      const answer = await ask(method, { textDocument: { uri }, ...params });
      const ms = performance.now() - at;
      await shown;
      return { ms, answer };
    },
    /** Time of a request, ms. */
    async time(method, params) {
      const at = performance.now();
      const answer = await ask(method, params);
      return { ms: performance.now() - at, answer };
    },
    close(uri) {
      tell('textDocument/didClose', { textDocument: { uri } });
    },
    /** Resident memory of the process, MB; null where the system does not tell. */
    memory() {
      try {
        const status = readFileSync(`/proc/${child.pid}/status`, 'utf8');
        return Number(/VmRSS:\s+(\d+) kB/.exec(status)?.[1]) / 1024;
      } catch {
        return null;
      }
    },
    async stop() {
      const ended = new Promise((done) => child.on('exit', done));
      await ask('shutdown');
      tell('exit');
      await ended;
    },
  };
}
