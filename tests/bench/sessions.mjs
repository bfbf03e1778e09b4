// What is measured of a server: each measure is taken of ours and of the floor in turn, so that noise hits both.
import { startServer } from './client.mjs';
import { hubOfLines, typedEdits } from './texts.mjs';

const uriOf = (lines) => `file:///bench/dunlin-${lines}.hub.yaml`;
const rest = (ms) => new Promise((done) => setTimeout(done, ms));

/** Start, and the first findings of a small and a large file, in fresh processes. */
export async function starts(servers, runs, env = {}) {
  const found = servers.map(() => ({ start: [], openSmall: [], openLarge: [] }));
  const [small, large] = [hubOfLines(60), hubOfLines(2000)];
  for (let run = 0; run < runs; run++) {
    for (const [at, { name, bundle }] of servers.entries()) {
      const server = await startServer(name, bundle, env);
      found[at].start.push(server.started);
      found[at].openSmall.push((await server.open(uriOf(60), small)).ms);
      found[at].openLarge.push((await server.open(uriOf(2000), large)).ms);
      await server.stop();
    }
  }
  return found;
}

/** Two hundred typed edits in a file, each answered before the next; the times of each server. */
export async function typing(servers, lines, { warm, count }) {
  const text = hubOfLines(lines);
  const uri = uriOf(lines);
  for (const server of servers) {
    const { diagnostics } = await server.open(uri, text);
    const fault = diagnostics.find(({ severity }) => (severity ?? 1) === 1);
    if (fault) {
      throw new Error(`${server.name}: the file of ${lines} lines is not sound: ${JSON.stringify(fault)}`);
    }
  }
  const edits = typedEdits(text, count);
  for (const edit of typedEdits(text, warm)) for (const server of servers) await server.edit(uri, edit);
  await rest(300);
  const times = servers.map(() => []);
  const findings = servers.map(() => 0);
  for (const edit of edits) {
    for (const [at, server] of servers.entries()) {
      const { ms, diagnostics } = await server.edit(uri, edit);
      times[at].push(ms);
      findings[at] += diagnostics.length;
      await rest(1);
    }
  }
  return { times, findings, lines: text.split('\n').length - 1 };
}

/** Hovers over values, and suggestions asked for right behind an edit. */
export async function asking(servers, lines, count) {
  const text = hubOfLines(lines);
  const uri = uriOf(lines);
  const rows = text.split('\n');
  const values = rows.flatMap((row, line) => {
    const at = /(?:code|length|bore|width|clamp): /.exec(row);
    return at ? [{ line, character: at.index + at[0].length }] : [];
  });
  const edits = typedEdits(text, count);
  const hovers = servers.map(() => []);
  const completions = servers.map(() => []);
  for (let at = 0; at < count; at++) {
    const position = values[(at * 7) % values.length];
    for (const [s, server] of servers.entries()) {
      const { ms, answer } = await server.time('textDocument/hover', { textDocument: { uri }, position });
      if (!answer) throw new Error(`${server.name} knows nothing of line ${position.line + 1}`);
      hovers[s].push(ms);
    }
  }
  for (const edit of edits) {
    const { line, character } = edit.range.start;
    const position = { line, character: character + edit.text.length };
    for (const [s, server] of servers.entries()) {
      const { ms } = await server.editAndAsk(uri, edit, 'textDocument/completion', { position });
      completions[s].push(ms);
      await rest(1);
    }
  }
  return { hovers, completions };
}

/** Memory with one small file open, and three seconds after a thousand edits of a file; MB. */
export async function memories(servers, lines, count) {
  const found = [];
  for (const { name, bundle } of servers) {
    const server = await startServer(name, bundle);
    await server.open(uriOf(60), hubOfLines(60));
    await rest(500);
    const atRest = server.memory();
    const text = hubOfLines(lines);
    await server.open(uriOf(lines), text);
    for (const edit of typedEdits(text, count)) await server.edit(uriOf(lines), edit);
    const typing = server.memory();
    // What an editor that is not typed into has to carry: the server tidies up when typing pauses.
    await rest(3000);
    found.push({ atRest, typing, after: server.memory() });
    await server.stop();
  }
  return found;
}

/** Builds of a hub asked for right behind an edit, as the section does when the typing pauses; ours alone. */
export async function building(server, lines, count) {
  const uri = uriOf(lines);
  const times = [];
  for (const edit of typedEdits(hubOfLines(lines), count)) {
    const { ms, answer } = await server.editAndAsk(uri, edit, 'hubwright/builds', { uri, variant: null });
    if (!answer) throw new Error(`${server.name} builds nothing`);
    times.push(ms);
    await rest(1);
  }
  return times;
}
