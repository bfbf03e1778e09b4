import { writeFileSync } from 'node:fs';

/** Writes a file; the reason in plain words where that is not possible. */
export function writeFile(file: string, text: string): string | null {
  try {
    writeFileSync(file, text);
    return null;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason';
    return reasons[code] ?? code;
  }
}

/** What the system's codes mean to whoever named the file. */
const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'its folder is not there',
  ENOTDIR: 'its folder is not there',
  EISDIR: 'a folder has that name',
  EACCES: 'it is not yours to write',
  EPERM: 'it is not yours to write',
  EROFS: 'it is not yours to write',
  ENOSPC: 'the disk is full',
};
