/** All that the server needs of the machine it runs on; each platform, and each test, brings its own. */
export interface Host {
  /** The text of a file; null when there is none or it cannot be read. */
  readFile(uri: string): Promise<string | null>;
  /** Spec files in a folder, and below it when `deep`. */
  findFiles(folder: string, deep: boolean): Promise<readonly string[]>;
  /** Runs `work` once after `ms`, with 0 as soon as what already arrived is dealt with; the answer calls it off. */
  schedule(work: () => void, ms: number): () => void;
  /** A clock that only runs forward, ms. */
  now(): number;
}

/** What is read through a host or through a client that offers its own files. */
export type Files = Pick<Host, 'readFile' | 'findFiles'>;
