import * as vscode from 'vscode';
import { equal, holds, until } from './expect.ts';

type EditorTest = readonly [title: string, body: () => Promise<void>];

const extensionId = 'hubwright.hubwright';
/** The sample with planted faults, and the code in it that is no bearing. */
const faulty = 'faulty-front.hub.yaml';
const sound = 'dunlin-front.hub.yaml';
const strangeCode = '6893-2RS';

function sample(name: string): vscode.Uri {
  const folder = vscode.workspace.workspaceFolders?.[0];
  if (!folder) throw new Error('no folder is open');
  return vscode.Uri.joinPath(folder.uri, name);
}

async function open(name: string): Promise<vscode.TextDocument> {
  const document = await vscode.workspace.openTextDocument(sample(name));
  await vscode.window.showTextDocument(document);
  return document;
}

/** The findings whose place in the text reads `words`. */
const findingsAt = (document: vscode.TextDocument, words: string) =>
  vscode.languages.getDiagnostics(document.uri).filter((d) => document.getText(d.range).includes(words));

const strangeCodeFinding = (document: vscode.TextDocument) =>
  until(`a finding at ${strangeCode}`, () => findingsAt(document, strangeCode)[0]);

const position = (document: vscode.TextDocument, words: string) =>
  document.positionAt(document.getText().indexOf(words) + 1);

const quickFixes = (document: vscode.TextDocument, range: vscode.Range) =>
  vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider',
    document.uri,
    range,
    vscode.CodeActionKind.QuickFix.value,
    50, // This many are resolved, so that their edits are there.
  );

export const editorTests: readonly EditorTest[] = [
  [
    'the extension activates',
    async () => {
      // The web worker host connects its view of the folder with the first look into it.
      await vscode.workspace.fs.stat(sample(faulty));
      const extension = vscode.extensions.getExtension(extensionId);
      if (!extension) throw new Error(`${extensionId} is not installed`);
      await extension.activate();
      equal(extension.isActive, true);
      console.log(
        `extension host: ${typeof process === 'object' ? 'node' : 'web'}, VS Code ${vscode.version}`,
      );
    },
  ],
  [
    'each kind of file has its own language',
    async () => {
      for (const kind of ['hub', 'wheel', 'workshop']) {
        const uri = sample(`language-probe.${kind}.yaml`);
        await vscode.workspace.fs.writeFile(uri, new TextEncoder().encode(`${kind}: Knot\n`));
        const document = await vscode.workspace.openTextDocument(uri);
        equal(document.languageId, `${kind}-spec`);
        await vscode.workspace.fs.delete(uri);
      }
    },
  ],
  [
    'a code that is no bearing is found where it stands, with code and source',
    async () => {
      const faultyDocument = await open(faulty);
      const finding = await strangeCodeFinding(faultyDocument);
      equal(finding.source, 'hubwright');
      equal(faultyDocument.getText(finding.range), strangeCode);
      holds(finding.message, /^6893 reads as /);
      const code = typeof finding.code === 'object' ? finding.code.value : finding.code;
      holds(String(code), /^[a-z]+(-[a-z]+)+$/);
    },
  ],
  [
    'a sound hub has no errors and no warnings',
    async () => {
      const document = await open(sound);
      await until('an answer about the sound hub', async () => {
        const symbols = await vscode.commands.executeCommand<unknown[]>(
          'vscode.executeDocumentSymbolProvider',
          document.uri,
        );
        return (symbols?.length ?? 0) > 0;
      });
      const { Warning } = vscode.DiagnosticSeverity; // Error is the graver, lesser number.
      const bad = vscode.languages.getDiagnostics(document.uri).filter((d) => d.severity <= Warning);
      equal(
        bad.map((d) => d.message),
        [],
      );
    },
  ],
  [
    'the hover over a bearing code says its sizes',
    async () => {
      const document = await open(sound);
      const code = /code:\s*(\S+)/.exec(document.getText())?.[1] ?? '';
      const text = await until('a hover', async () => {
        const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
          'vscode.executeHoverProvider',
          document.uri,
          position(document, code),
        );
        return hovers.flatMap((h) => h.contents.map((c) => (typeof c === 'string' ? c : c.value))).join('\n');
      });
      holds(text, code);
      holds(text, /17\D+26\D+5|mm/);
    },
  ],
  [
    'completion after "code:" offers bearing codes',
    async () => {
      const document = await open(sound);
      const after = document.positionAt(document.getText().indexOf('code:') + 'code: '.length);
      const list = await vscode.commands.executeCommand<vscode.CompletionList>(
        'vscode.executeCompletionItemProvider',
        document.uri,
        after,
      );
      const labels = list.items.map((item) =>
        typeof item.label === 'string' ? item.label : item.label.label,
      );
      holds(labels.join(' '), /\b6[0-9]{3}/);
    },
  ],
  [
    'a quick fix silences its finding and keeps the comments',
    async () => {
      const document = await open(faulty);
      const finding = await strangeCodeFinding(document);
      const comments = document.getText().match(/#.*/g);
      const fix = await until('a quick fix with an edit', async () => {
        // The editor gives up a question about a document that it still brings to the screen.
        const fixes = await quickFixes(document, finding.range).then(
          (found) => found,
          (error) => (/Cancell?ed/.test(String(error)) ? [] : Promise.reject(error)),
        );
        return fixes.find(({ edit }) => edit);
      });
      if (!fix.edit) throw new Error(`no edit in ${fix.title}`);
      equal(await vscode.workspace.applyEdit(fix.edit), true);
      await until('the finding to go', () => findingsAt(document, strangeCode).length === 0);
      equal(document.getText().match(/#.*/g), comments);
      await vscode.commands.executeCommand('workbench.action.files.revert');
    },
  ],
  [
    'the commands are there',
    async () => {
      const all = await vscode.commands.getCommands(true);
      for (const name of ['openPreview', 'checkWorkspace', 'newHub', 'writeOrder', 'explainFinding']) {
        equal([name, all.includes(`hubwright.${name}`)], [name, true]);
      }
    },
  ],
  [
    'checking the workspace finds the fault in a file that is not open',
    async () => {
      await vscode.commands.executeCommand('workbench.action.closeAllEditors');
      await vscode.commands.executeCommand('hubwright.checkWorkspace');
      await until(
        'findings in the faulty sample',
        () => vscode.languages.getDiagnostics(sample(faulty)).length > 0,
      );
    },
  ],
  [
    'the section opens in a panel beside the text',
    async () => {
      await open(sound);
      await vscode.commands.executeCommand('hubwright.openPreview');
      const tab = await until('the tab of the section', () =>
        vscode.window.tabGroups.all
          .flatMap((group) => group.tabs)
          .find((t) => t.input instanceof vscode.TabInputWebview && t.input.viewType.includes('hubwright')),
      );
      equal(tab.group.viewColumn, vscode.ViewColumn.Two);
    },
  ],
];
