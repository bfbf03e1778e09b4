import { createContext, Script } from 'node:vm';

const context = createContext({ work: () => undefined });
const script = new Script('work()');

/**
 * What the work gives. One that goes on for longer than the time given (ms) is ended, though it never waits, and the
 * name of what it was about is said: a hang is a failed test and not a run that never ends.
 */
export function watched<T>(what: string, work: () => T, longest = 40_000): T {
  context.work = work;
  try {
    return script.runInContext(context, { timeout: longest }) as T;
  } catch (error) {
    // The error of an ended script comes from the other side: it is no `Error` of this one.
    const code = (error as { readonly code?: unknown } | null)?.code;
    if (code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') throw new Error(`no answer within ${longest} ms: ${what}`);
    throw error;
  } finally {
    context.work = () => undefined;
  }
}
