import * as vscode from 'vscode';
import { type SheetAnswer, sheetRequest } from '../server/protocol/requests.ts';
import type { ServerLine } from './server-line.ts';

/** Asks for the service sheet of the hub, or the build sheet of the wheel, in the editor and puts it beside the file, or into an editor of its own. */
export async function writeSheet(line: ServerLine, given: unknown): Promise<void> {
  const uri = given instanceof vscode.Uri ? given : vscode.window.activeTextEditor?.document.uri;
  const sheet =
    uri && (await line.ask<SheetAnswer | null>(sheetRequest, { uri: uri.toString(), variant: null }));
  if (!uri || !sheet) {
    void vscode.window.showInformationMessage(
      'Open a hub file (NAME.hub.yaml) to write its service sheet, or a wheel file (NAME.wheel.yaml) for its build sheet.',
    );
    return;
  }
  const chosen = await chooseVariant(line, uri, sheet);
  if (!chosen) return;
  const target = uri.with({ path: uri.path.replace(/(\.hub)?\.ya?ml$/i, '.sheet.html') });
  if (uri.scheme === 'untitled' || target.path === uri.path) {
    const document = await vscode.workspace.openTextDocument({
      language: 'markdown',
      content: chosen.markdown,
    });
    await vscode.window.showTextDocument(document);
    return;
  }
  if (!(await mayWrite(target))) return;
  await vscode.workspace.fs.writeFile(target, new TextEncoder().encode(chosen.html));
  const open = 'Open to Print';
  const answer = await vscode.window.showInformationMessage(
    `Sheet of ${chosen.title} written to ${target.path.split('/').at(-1)}`,
    open,
  );
  if (answer === open) await vscode.env.openExternal(target);
}

async function chooseVariant(
  line: ServerLine,
  uri: vscode.Uri,
  sheet: SheetAnswer,
): Promise<SheetAnswer | null> {
  if (sheet.variants.length < 2) return sheet;
  const picks = sheet.variants.map((variant) => ({ label: variant ?? 'the hub as written', variant }));
  const pick = await vscode.window.showQuickPick(picks, {
    title: 'Service Sheet',
    placeHolder: 'Which variant is on the stand',
  });
  if (!pick) return null;
  if (pick.variant === null) return sheet;
  return line.ask<SheetAnswer | null>(sheetRequest, { uri: uri.toString(), variant: pick.variant });
}

/** Whether the file may be written: it is not there, or whoever asked says so. */
async function mayWrite(target: vscode.Uri): Promise<boolean> {
  try {
    await vscode.workspace.fs.stat(target);
  } catch {
    return true;
  }
  const replace = 'Replace';
  const name = target.path.split('/').at(-1);
  return (
    (await vscode.window.showWarningMessage(`${name} is there already.`, { modal: true }, replace)) ===
    replace
  );
}
