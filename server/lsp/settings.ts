import type { ClientCapabilities, InitializeParams } from 'vscode-languageserver';
import type { ClientOptions } from '../protocol/requests.ts';

/** What is known of the client, with what it may leave out filled in. */
export interface Settings {
  readonly options: Required<ClientOptions>;
  readonly snippetEdits: boolean;
  readonly snippetCompletions: boolean;
  readonly watchesFiles: boolean;
  /** The client asks for hints again when told to. */
  readonly refreshesHints: boolean;
  readonly workspaceFolders: boolean;
}

export const initialSettings: Settings = settingsOf({ capabilities: {} });

/** Reads what a client says of itself; anything odd counts as not said. */
export function settingsOf(params: Partial<InitializeParams>): Settings {
  const capabilities: ClientCapabilities = isObject(params.capabilities) ? params.capabilities : {};
  const { workspace, textDocument } = capabilities;
  return {
    options: optionsOf(params.initializationOptions),
    snippetEdits: workspace?.workspaceEdit?.snippetEditSupport === true,
    snippetCompletions: textDocument?.completion?.completionItem?.snippetSupport === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    workspaceFolders: workspace?.workspaceFolders === true,
  };
}

function optionsOf(given: unknown): Required<ClientOptions> {
  const options: Record<string, unknown> = isObject(given) ? given : {};
  const yes = (key: keyof ClientOptions): boolean => options[key] === true;
  return {
    files: yes('files'),
    explain: yes('explain'),
    suggestAgain: yes('suggestAgain'),
    changed: yes('changed'),
    check: options.check === 'workspace' ? 'workspace' : 'open',
  };
}

/** The settings after a change of configuration: `{ hubwright: { check } }`. */
export function reconfigured(settings: Settings, changed: unknown): Settings {
  const section = isObject(changed) ? changed.hubwright : null;
  if (!isObject(section) || !('check' in section)) return settings;
  const check = section.check === 'workspace' ? 'workspace' : 'open';
  return { ...settings, options: { ...settings.options, check } };
}

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
