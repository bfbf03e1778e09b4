import * as vscode from 'vscode';

const pattern = '*.{hub,wheel,workshop}.{yaml,yml}';
const specName = /\.(hub|wheel|workshop)\.ya?ml$/i;
const atMost = 20_000;

/** The text of a file, wherever the editor keeps it; null when there is none. */
export async function readFile(uri: string): Promise<{ text: string | null }> {
  try {
    const bytes = await vscode.workspace.fs.readFile(vscode.Uri.parse(uri, true));
    return { text: new TextDecoder().decode(bytes) };
  } catch {
    return { text: null };
  }
}

/** Spec files in a folder. Where the editor cannot search, the folders are walked. */
export async function findFiles(folder: string, deep: boolean): Promise<readonly vscode.Uri[]> {
  const base = vscode.Uri.parse(folder, true);
  if (deep) {
    const search = new vscode.RelativePattern(base, `**/${pattern}`);
    const found = await vscode.workspace.findFiles(search, undefined, atMost).then(
      (uris) => uris,
      () => [],
    );
    if (found.length > 0) return found;
  }
  const found: vscode.Uri[] = [];
  await walk(base, deep ? 4 : 0, found);
  return found;
}

async function walk(folder: vscode.Uri, depth: number, found: vscode.Uri[]): Promise<void> {
  const entries = await vscode.workspace.fs.readDirectory(folder).then(
    (list) => list,
    () => [],
  );
  for (const [name, type] of entries) {
    const at = vscode.Uri.joinPath(folder, name);
    if (type === vscode.FileType.File && specName.test(name)) found.push(at);
    const inside = type === vscode.FileType.Directory && !name.startsWith('.') && name !== 'node_modules';
    if (inside && depth > 0) await walk(at, depth - 1, found);
  }
}
