import * as vscode from 'vscode';
import { type MeasureAnswer, measureRequest } from '../server/protocol/requests.ts';
import type { ServerLine } from './server-line.ts';

/** Asks what was measured on a hub, question by question as the server has them, and opens the file that comes of it. */
export async function measureHub(line: ServerLine): Promise<void> {
  const answers: string[] = [];
  for (;;) {
    const turn = await line.ask<MeasureAnswer | null>(measureRequest, { answers });
    if (!turn) return;
    if (turn.kind === 'file') {
      const document = await vscode.workspace.openTextDocument({ language: 'hub-spec', content: turn.text });
      await vscode.window.showTextDocument(document);
      if (turn.doubts.length > 0) void vscode.window.showWarningMessage(turn.doubts.join('; '));
      return;
    }
    const answer = await ask(turn.question);
    if (answer === undefined) return;
    answers.push(answer);
  }
}

type Question = Extract<MeasureAnswer, { kind: 'question' }>['question'];

async function ask({ text, hint, choices, problem }: Question): Promise<string | undefined> {
  if (choices) return vscode.window.showQuickPick(choices, { title: 'Write Down a Hub', placeHolder: text });
  return vscode.window.showInputBox({
    title: 'Write Down a Hub',
    prompt: `${problem === null ? '' : `${problem}. `}${text}. Empty: not known; < takes the last answer back`,
    placeHolder: hint,
    ignoreFocusOut: true,
  });
}
