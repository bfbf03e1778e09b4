import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';

/** The folder of the project. */
export const projectFolder = join(import.meta.dirname, '..', '..');

/** Every TypeScript file below some folders of the project, as paths from the project with forward slashes. */
export function sourceFiles(...folders: readonly string[]): readonly string[] {
  const found: string[] = [];
  const visit = (folder: string): void => {
    for (const name of readdirSync(folder)) {
      if (name === 'node_modules') continue;
      const path = join(folder, name);
      if (statSync(path).isDirectory()) visit(path);
      else if (name.endsWith('.ts')) found.push(relative(projectFolder, path).replaceAll('\\', '/'));
    }
  };
  for (const folder of folders) visit(join(projectFolder, folder));
  return found.sort();
}

/** The text of a file of the project. */
export function sourceText(path: string): string {
  return readFileSync(join(projectFolder, path), 'utf8');
}

/** What a file imports, type-only imports too, as written. */
export function importsOf(text: string): readonly string[] {
  const statement = /(?:^|\n)\s*(?:import|export)\b(?:[^'"`;]*?\bfrom\s*)?\s*['"]([^'"]+)['"]/g;
  const dynamic = /\bimport\(\s*['"]([^'"]+)['"]\s*\)/g;
  return [...text.matchAll(statement), ...text.matchAll(dynamic)].map(([, path = '']) => path);
}
