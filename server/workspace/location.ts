/** Places of files, as URIs or slash-separated paths; nothing here touches a disk. */

/** The folder a file is in, without the last slash. */
export function folderOf(file: string): string {
  return file.slice(0, Math.max(file.lastIndexOf('/'), 0));
}

/** The last part of a file's place. */
export function nameOf(file: string): string {
  return file.slice(file.lastIndexOf('/') + 1);
}

/** A relative reference written in a file; null where it climbs above the top. Absolute ones stay as they are. */
export function resolveReference(fromFile: string, reference: string): string | null {
  const written = reference.replaceAll('\\', '/');
  if (/^([a-z][a-z0-9+.-]*:|\/)/i.test(written)) return written;
  const parts = folderOf(fromFile).split('/');
  const fixed = /^[a-z][a-z0-9+.-]*:\/\//i.test(fromFile) ? 3 : 1;
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.length <= fixed) return null;
    else parts.pop();
  }
  return parts.join('/');
}

/** Whether a file lies in a folder or below it. */
export function isInside(folder: string, file: string): boolean {
  return file.startsWith(folder.endsWith('/') ? folder : `${folder}/`);
}

/** A file's place as written from a folder: for messages. */
export function relativeTo(folder: string, file: string): string {
  return isInside(folder, file) ? file.slice(folder.length).replace(/^\//, '') : file;
}
