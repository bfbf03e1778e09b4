/** What a command comes to: an exit code and what goes to the two outputs. A command writes nothing itself. */
export interface Outcome {
  /** 0 clean, 1 something was found, 2 the command line cannot be followed. */
  readonly exit: 0 | 1 | 2;
  readonly out: string;
  /** Messages for people; never part of the result. */
  readonly err: string;
}

/** One command of the command line. */
export interface Command {
  readonly name: string;
  /** The line that shows how it is called. */
  readonly usage: string;
  readonly summary: string;
  /** Options beside `--json` and `--help`: what each takes (nothing for a switch) and what it does. */
  readonly options: Readonly<Record<string, CommandOption>>;
  readonly run: (given: Given, cwd: string) => Outcome;
}

export interface CommandOption {
  /** `FILE`, `SEVERITY`; null for a switch. */
  readonly takes: string | null;
  readonly short?: string;
  readonly choices?: readonly string[];
  readonly summary: string;
}

/** The arguments of one call. */
export interface Given {
  readonly words: readonly string[];
  /** Options by name; a switch is an empty text. */
  readonly options: ReadonlyMap<string, string>;
  readonly json: boolean;
}

/** A command line that cannot be followed, with what would be. */
export interface Misuse {
  readonly misuse: string;
}
