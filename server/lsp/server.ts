import { type Connection, ErrorCodes, type InitializeResult, ResponseError } from 'vscode-languageserver';
import { readSpec } from '../spec/read-spec.ts';
import { capabilities } from './capabilities.ts';
import { listenToDocuments } from './document-handlers.ts';
import { listenToFiles, loadFolders } from './file-handlers.ts';
import type { Host } from './host.ts';
import { answerLanguageRequests } from './language-handlers.ts';
import { answerOwnRequests } from './own-handlers.ts';
import { createSession } from './session.ts';
import { settingsOf } from './settings.ts';

/** Serves one client until it says `exit`. The same on every platform; the host brings what differs. */
export function startServer(connection: Connection, host: Host): void {
  const session = createSession(connection, host);
  let folders: readonly string[] = [];

  connection.onInitialize((params): InitializeResult | ResponseError<never> => {
    if (session.life !== 'waiting') {
      return new ResponseError(ErrorCodes.InvalidRequest, 'initialize was answered before');
    }
    session.life = 'running';
    session.settings = settingsOf(params);
    session.everywhere = session.settings.options.check === 'workspace';
    folders = (params.workspaceFolders ?? []).map(({ uri }) => uri);
    if (folders.length === 0 && typeof params.rootUri === 'string') folders = [params.rootUri];
    // The first parse costs many times the following ones: it is done while nobody waits.
    host.schedule(() => session.guard.run('the first reading', warmUp), 0);
    return { capabilities: capabilities(session.settings), serverInfo: { name: 'hubwright' } };
  });
  connection.onInitialized(() => session.guard.run('the start', () => loadFolders(session, folders)));
  connection.onShutdown(() => {
    session.life = 'stopped';
  });

  listenToDocuments(session);
  listenToFiles(session);
  answerLanguageRequests(session);
  answerOwnRequests(session);
  connection.listen();
}

const smallHub = 'hub: x\nposition: front\nwidth: 100 ±0.1\nstack:\n  - bearing: left\n    code: 6803-2RS\n';

function warmUp(): void {
  readSpec(smallHub, 'hub');
}
