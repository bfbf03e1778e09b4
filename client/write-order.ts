import * as vscode from 'vscode';
import { type OrderAnswer, orderRequest } from '../server/protocol/requests.ts';
import type { ServerLine } from './server-line.ts';

/** Opens the list of what to order for every hub and wheel of the workspace in an editor of its own. */
export async function writeOrder(line: ServerLine): Promise<void> {
  const order = await vscode.window.withProgress(
    { location: vscode.ProgressLocation.Window, title: 'Listing what to order' },
    () => line.ask<OrderAnswer | null>(orderRequest, {}),
  );
  if (!order) {
    void vscode.window.showInformationMessage(
      'No hub or wheel files are in the workspace: nothing to order.',
    );
    return;
  }
  const document = await vscode.workspace.openTextDocument({ language: 'markdown', content: order.markdown });
  await vscode.window.showTextDocument(document);
}
