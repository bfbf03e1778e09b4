import { specKindOf } from '../spec/read-spec.ts';
import { nameOf } from '../workspace/location.ts';

/** One name for each file, however a client writes its URI: references are resolved against it. */
export interface Uris {
  /** The file's name in the workspace: its URI without percent signs. */
  file(uri: string): string;
  /** The URI a client knows the file by. */
  uri(file: string): string;
  /** A file that has no name of its own yet is known by its language: `untitled:Untitled-1` in `hub-spec`. */
  named(uri: string, languageId: unknown): void;
}

export function createUris(): Uris {
  const written = new Map<string, string>();
  const given = new Map<string, string>();
  return {
    file: (uri) => {
      const file = given.get(uri) ?? decoded(uri);
      if (file !== uri) written.set(file, uri);
      return file;
    },
    uri: (file) => written.get(file) ?? encodeURI(file).replaceAll('#', '%23').replaceAll('?', '%3F'),
    named: (uri, languageId) => {
      const kind = /^(hub|wheel|workshop)-spec$/.exec(String(languageId))?.[1];
      if (kind && !specKindOf(nameOf(decoded(uri)))) given.set(uri, `${decoded(uri)}.${kind}.yaml`);
    },
  };
}

function decoded(uri: string): string {
  try {
    return decodeURIComponent(uri);
  } catch {
    return uri;
  }
}
