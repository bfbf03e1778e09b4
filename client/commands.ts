import * as vscode from 'vscode';
import {
  type CheckAnswer,
  checkWorkspaceRequest,
  explainCommand,
  type SkeletonAnswer,
  skeletonRequest,
} from '../server/protocol/requests.ts';
import { measureHub } from './measure-hub.ts';
import { pageUri } from './pages.ts';
import { drawnLanguages, type Preview } from './preview-panel.ts';
import type { ServerLine } from './server-line.ts';
import { writeOrder } from './write-order.ts';
import { writeSheet } from './write-sheet.ts';

/** One command, one request. */
export function registerCommands(context: vscode.ExtensionContext, line: ServerLine, preview: Preview): void {
  const command = (name: string, run: (...given: unknown[]) => unknown): void => {
    context.subscriptions.push(vscode.commands.registerCommand(name, run));
  };
  command('hubwright.openPreview', (uri) => openPreview(preview, uri));
  command('hubwright.checkWorkspace', () => checkWorkspace(line));
  command('hubwright.newHub', () => newHub(line));
  command('hubwright.measureHub', () => measureHub(line));
  command('hubwright.writeOrder', () => writeOrder(line));
  command('hubwright.writeSheet', (uri) => writeSheet(line, uri));
  command(explainCommand, (code) => explain(code));
}

function openPreview(preview: Preview, given: unknown): void {
  const editor = vscode.window.activeTextEditor;
  const uri = given instanceof vscode.Uri ? given : editor?.document.uri;
  const isDrawn = given instanceof vscode.Uri || drawnLanguages.has(editor?.document.languageId ?? '');
  if (uri && isDrawn) preview.open(uri);
  else
    void vscode.window.showInformationMessage(
      'Open a hub file (NAME.hub.yaml) to see its section, or a wheel file (NAME.wheel.yaml).',
    );
}

async function checkWorkspace(line: ServerLine): Promise<void> {
  const answer = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Window, title: 'Checking spec files' },
    () => line.ask<CheckAnswer>(checkWorkspaceRequest, {}),
  );
  void vscode.window.showInformationMessage(answer.summary);
  if (answer.withFindings > 0) await vscode.commands.executeCommand('workbench.actions.view.problems');
}

async function newHub(line: ServerLine): Promise<void> {
  const name = await vscode.window.showInputBox({
    title: 'New Hub',
    prompt: 'Name of the hub',
    placeHolder: 'Dunlin front',
  });
  if (name === undefined) return;
  const position = await vscode.window.showQuickPick(['front', 'rear'], {
    title: 'New Hub',
    placeHolder: 'Which wheel it is for',
  });
  if (position === undefined) return;
  const skeleton = await line.ask<SkeletonAnswer | null>(skeletonRequest, { name, position });
  if (!skeleton) return;
  const editor = emptyHubEditor() ?? (await newHubEditor());
  await editor.insertSnippet(new vscode.SnippetString(skeleton.snippet), new vscode.Position(0, 0));
}

function emptyHubEditor(): vscode.TextEditor | null {
  const editor = vscode.window.activeTextEditor;
  const empty = editor?.document.languageId === 'hub-spec' && editor.document.getText().trim() === '';
  return editor && empty ? editor : null;
}

async function newHubEditor(): Promise<vscode.TextEditor> {
  return vscode.window.showTextDocument(await vscode.workspace.openTextDocument({ language: 'hub-spec' }));
}

/** Opens the page of a finding: the one given, else the one at the cursor. */
async function explain(given: unknown): Promise<void> {
  const code = typeof given === 'string' ? given : codeAtCursor();
  if (!code) {
    void vscode.window.showInformationMessage('No finding of Hubwright is at the cursor.');
    return;
  }
  const uri = pageUri(code);
  const commands = await vscode.commands.getCommands(true);
  if (commands.includes('markdown.showPreview'))
    await vscode.commands.executeCommand('markdown.showPreview', uri);
  else await vscode.window.showTextDocument(uri, { preview: true });
}

function codeAtCursor(): string | null {
  const editor = vscode.window.activeTextEditor;
  if (!editor) return null;
  const here = vscode.languages
    .getDiagnostics(editor.document.uri)
    .find(({ source, range }) => source === 'hubwright' && range.contains(editor.selection.active));
  const code = typeof here?.code === 'object' ? here.code.value : here?.code;
  return code === undefined ? null : String(code);
}
