// The least a server of this kind can be: the same transport and library, the text parsed and read by one schema.
import { enableCompileCache } from 'node:module';
import { createConnection, TextDocumentSyncKind } from 'vscode-languageserver/node';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { type Document, isMap, isScalar, parseDocument, visit } from 'yaml';
import { floorSchema } from './floor-schema.ts';

enableCompileCache();

const connection = createConnection(process.stdin, process.stdout);
const documents = new Map<string, { text: TextDocument; tree: Document | null }>();
const waiting = new Set<string>();

connection.onInitialize(() => ({
  capabilities: {
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
    hoverProvider: true,
    completionProvider: {},
  },
}));

connection.onDidOpenTextDocument(({ textDocument: { uri, languageId, version, text } }) => {
  documents.set(uri, { text: TextDocument.create(uri, languageId, version, text), tree: null });
  later(uri);
});
connection.onDidChangeTextDocument(({ textDocument: { uri, version }, contentChanges }) => {
  const known = documents.get(uri);
  if (!known) return;
  documents.set(uri, { text: TextDocument.update(known.text, contentChanges, version), tree: null });
  later(uri);
});
connection.onDidCloseTextDocument(({ textDocument: { uri } }) => void documents.delete(uri));

/** Edits that came together are answered together. */
function later(uri: string): void {
  if (waiting.has(uri)) return;
  waiting.add(uri);
  setImmediate(() => {
    waiting.delete(uri);
    publish(uri);
  });
}

function treeOf(uri: string): Document | null {
  const known = documents.get(uri);
  if (!known) return null;
  known.tree ??= parseDocument(known.text.getText(), { prettyErrors: false });
  return known.tree;
}

function publish(uri: string): void {
  const known = documents.get(uri);
  const tree = treeOf(uri);
  if (!known || !tree) return;
  const at = (offset: number) => known.text.positionAt(offset);
  const broken = tree.errors.map(({ pos, message }) => ({
    range: { start: at(pos[0]), end: at(pos[1]) },
    message,
  }));
  const read = tree.errors.length > 0 ? null : floorSchema.safeParse(tree.toJS());
  const refused = (read?.error?.issues ?? []).map(({ path, message }) => {
    const node = tree.getIn(path, true) as { range?: [number, number, number] } | undefined;
    const [start, end] = node?.range ?? [0, 0];
    return { range: { start: at(start), end: at(end) }, message };
  });
  void connection.sendDiagnostics({
    uri,
    version: known.text.version,
    diagnostics: [...broken, ...refused],
  });
}

connection.onHover(({ textDocument: { uri }, position }) => {
  const tree = treeOf(uri);
  const offset = documents.get(uri)?.text.offsetAt(position) ?? 0;
  let found: string | null = null;
  if (tree) {
    visit(tree, (_, node) => {
      const range = isScalar(node) ? node.range : null;
      if (isScalar(node) && range && range[0] <= offset && offset <= range[1]) found = String(node.value);
      return found === null ? undefined : visit.BREAK;
    });
  }
  return found === null ? null : { contents: { kind: 'markdown', value: `\`${found}\`` } };
});

connection.onCompletion(({ textDocument: { uri } }) => {
  const tree = treeOf(uri);
  const present = isMap(tree?.contents) ? tree.contents.items.map(({ key }) => String(key)) : [];
  return Object.keys(floorSchema.shape)
    .filter((key) => !present.includes(key))
    .map((label) => ({ label }));
});

connection.listen();
