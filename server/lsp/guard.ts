import { type CancellationToken, ErrorCodes, ResponseError } from 'vscode-languageserver';

/** Where a session stands: nothing but `initialize` is answered before, nothing after `shutdown`. */
export type Life = 'waiting' | 'running' | 'stopped';

/** Keeps a fault of ours from becoming the user's: it is logged, and the answer is empty. */
export interface Guard {
  /** A request: the answer of `work`, or `empty` where it was cancelled or failed. */
  request<T>(
    token: CancellationToken,
    empty: T,
    work: () => T | Promise<T>,
  ): Promise<T | ResponseError<void>>;
  /** A notification, a timer: done, or logged. */
  run(what: string, work: () => void | Promise<void>): void;
}

export function createGuard(life: () => Life, log: (message: string) => void): Guard {
  const report = (what: string, error: unknown): void => {
    const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
    log(`${what}: ${detail}`);
  };
  return {
    request: async (token, empty, work) => {
      const refused = refusal(life());
      if (refused) return refused;
      if (token.isCancellationRequested) return empty;
      try {
        return await work();
      } catch (error) {
        report('a request could not be answered', error);
        return empty;
      }
    },
    run: (what, work) => {
      if (life() !== 'running') return;
      try {
        const done = work();
        if (done instanceof Promise) done.catch((error: unknown) => report(what, error));
      } catch (error) {
        report(what, error);
      }
    },
  };
}

function refusal(life: Life): ResponseError<void> | null {
  if (life === 'waiting') {
    return new ResponseError<void>(ErrorCodes.ServerNotInitialized, 'initialize comes first');
  }
  if (life === 'stopped')
    return new ResponseError<void>(ErrorCodes.InvalidRequest, 'the server was shut down');
  return null;
}
