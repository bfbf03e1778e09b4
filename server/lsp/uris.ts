/** One name for each file, however a client writes its URI: references are resolved against it. */
export interface Uris {
  /** The file's name in the workspace: its URI without percent signs. */
  file(uri: string): string;
  /** The URI a client knows the file by. */
  uri(file: string): string;
}

export function createUris(): Uris {
  const written = new Map<string, string>();
  return {
    file: (uri) => {
      const file = decoded(uri);
      if (file !== uri) written.set(file, uri);
      return file;
    },
    uri: (file) => written.get(file) ?? encodeURI(file).replaceAll('#', '%23').replaceAll('?', '%3F'),
  };
}

function decoded(uri: string): string {
  try {
    return decodeURIComponent(uri);
  } catch {
    return uri;
  }
}
