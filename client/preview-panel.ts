import * as vscode from 'vscode';
import {
  type BuildsAnswer,
  buildsRequest,
  type Conditions,
  type SectionAnswer,
  type SectionParams,
  type Stretch,
  sectionRequest,
} from '../server/protocol/requests.ts';
import { previewPage } from './preview-page.ts';
import type { ServerLine } from './server-line.ts';

/** The one panel that shows the section of a hub, or a wheel, beside its text. */
export interface Preview {
  open(uri: vscode.Uri): void;
}

const viewType = 'hubwright.section';

/** Languages of the files that can be drawn. */
export const drawnLanguages: ReadonlySet<string> = new Set(['hub-spec', 'wheel-spec']);

/** Pause after the last drawing before builds are asked for, ms. */
const pause = 100;

/** What the page in the panel may send. */
interface FromPage {
  readonly type: 'ready' | 'variant' | 'width' | 'conditions' | 'reveal';
  readonly variant?: string | null;
  /** Room for the drawing, mm of its sheet. */
  readonly width?: number;
  /** Temperature and clamp set on the page. */
  readonly conditions?: Conditions;
  readonly range?: Stretch;
  readonly focus?: boolean;
}

interface Shown {
  readonly panel: vscode.WebviewPanel;
  uri: vscode.Uri;
  variant: string | null;
  width: number | undefined;
  conditions: Conditions | undefined;
  asking: boolean;
  again: boolean;
}

export function registerPreview(context: vscode.ExtensionContext, line: ServerLine): Preview {
  let shown: Shown | null = null;
  let building: ReturnType<typeof setTimeout> | undefined;

  /** Asks for the section; what comes in meanwhile is asked for once more, afterwards. */
  const refresh = async (): Promise<void> => {
    const now = shown;
    if (!now) return;
    if (now.asking || !now.panel.visible) {
      now.again = true;
      return;
    }
    now.asking = true;
    now.again = false;
    const { uri, variant, width, conditions } = now;
    clearTimeout(building);
    try {
      const params: SectionParams = {
        uri: line.uri(uri),
        variant,
        ...(width === undefined ? {} : { width }),
        ...(conditions === undefined ? {} : { conditions }),
      };
      const answer = await line.ask<SectionAnswer | null>(sectionRequest, params);
      now.panel.title = answer ? `Section: ${answer.title}` : 'Section';
      await now.panel.webview.postMessage({ type: 'section', uri: uri.toString(), answer });
      // Thousands of builds take a while: they wait for a pause, and what is changed meanwhile calls them off.
      if (shown === now && !now.again) building = setTimeout(() => void build(now, params), pause);
    } finally {
      now.asking = false;
      if (now.again && now.panel.visible) void refresh();
    }
  };

  const build = async (now: Shown, params: SectionParams): Promise<void> => {
    const uri = now.uri.toString();
    const answer = await line.ask<BuildsAnswer | null>(buildsRequest, params);
    const current = shown === now && !now.asking && now.uri.toString() === uri;
    if (current) await now.panel.webview.postMessage({ type: 'builds', uri, answer });
  };

  const adopt = (panel: vscode.WebviewPanel, uri: vscode.Uri, variant: string | null): void => {
    const mine: Shown = {
      panel,
      uri,
      variant,
      width: undefined,
      conditions: undefined,
      asking: false,
      again: false,
    };
    shown = mine;
    panel.webview.options = {
      enableScripts: true,
      localResourceRoots: [vscode.Uri.joinPath(context.extensionUri, 'client', 'media')],
    };
    panel.webview.html = previewPage(panel.webview, context.extensionUri);
    panel.webview.onDidReceiveMessage((message: FromPage) => {
      if (message.type === 'variant') mine.variant = message.variant ?? null;
      if (typeof message.width === 'number') mine.width = message.width;
      if (message.conditions) mine.conditions = message.conditions;
      if (message.type === 'reveal' && message.range)
        void reveal(mine.uri, message.range, message.focus === true);
      else void refresh();
    });
    panel.onDidChangeViewState(() => void (mine.again && refresh()));
    panel.onDidDispose(() => {
      clearTimeout(building);
      if (shown === mine) shown = null;
    });
  };

  const turnTo = (uri: vscode.Uri): void => {
    if (!shown || shown.uri.toString() === uri.toString()) return;
    shown.uri = uri;
    shown.variant = null;
    shown.conditions = undefined;
    void refresh();
  };

  context.subscriptions.push(
    line.onChanged((uri) => void (shown && line.uri(shown.uri) === uri && refresh())),
    vscode.window.onDidChangeActiveTextEditor((editor) => {
      if (editor && drawnLanguages.has(editor.document.languageId)) turnTo(editor.document.uri);
    }),
    vscode.window.registerWebviewPanelSerializer(viewType, {
      deserializeWebviewPanel: async (
        panel,
        state: { uri?: string; variant?: string | null } | undefined,
      ) => {
        if (typeof state?.uri === 'string') adopt(panel, vscode.Uri.parse(state.uri), state.variant ?? null);
        else panel.dispose();
      },
    }),
  );

  return {
    open: (uri) => {
      if (shown) {
        shown.panel.reveal(undefined, true);
        turnTo(uri);
        return;
      }
      const where = { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true };
      adopt(vscode.window.createWebviewPanel(viewType, 'Section', where, {}), uri, null);
    },
  };
}

/** Shows a place in the text; the cursor only goes there when the user asked for it with the keyboard. */
async function reveal(uri: vscode.Uri, { start, end }: Stretch, focus: boolean): Promise<void> {
  const range = new vscode.Range(start.line, start.character, end.line, end.character);
  const open = vscode.window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === uri.toString(),
  );
  const viewColumn = open?.viewColumn ?? vscode.ViewColumn.One;
  const editor = await vscode.window.showTextDocument(uri, { viewColumn, preserveFocus: !focus });
  editor.selection = new vscode.Selection(range.start, range.end);
  editor.revealRange(range, vscode.TextEditorRevealType.InCenterIfOutsideViewport);
}
