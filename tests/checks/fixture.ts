import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';
import { type Mark, readExpected, readMarks } from './marks.ts';

/** The three files every check has: one with the fault, the same one mended, and one that never had it. */
export type Role = 'invalid' | 'fixed' | 'valid';

/** One file of a fixture folder, the marks taken out of its text. */
export interface FixtureFile {
  readonly name: string;
  readonly text: string;
  readonly marks: readonly Mark[];
}

export interface Fixture {
  readonly code: string;
  readonly invalid: FixtureFile;
  readonly fixed: FixtureFile;
  readonly valid: FixtureFile;
  /** Files that stand beside all three: a workshop, another hub. */
  readonly others: readonly FixtureFile[];
}

const folderOf = (code: string): string => join(import.meta.dirname, code);

/** Whether the folder of a check is there. */
export function hasFixture(code: string): boolean {
  return existsSync(folderOf(code));
}

/**
 * Reads the folder of a check. Marks stand under the text they speak of, or, where the fault leaves no room for
 * a comment, in `expected.txt`; a line `continued to N characters` there has the text go on in comment lines.
 */
export function readFixture(code: string): Fixture {
  const names = readdirSync(folderOf(code)).sort();
  const expected = names.includes('expected.txt') ? read(code, 'expected.txt') : null;
  const file = (role: Role): FixtureFile => {
    const name = names.find((other) => other.startsWith(`${role}.`));
    if (name === undefined) throw new Error(`tests/checks/${code} has no ${role} file`);
    const text = read(code, name);
    if (role !== 'invalid' || expected === null) return { name, ...readMarks(text) };
    return { name, text: continued(text, expected), marks: readExpected(expected) };
  };
  const own = /^(?:invalid|fixed|valid)\.(?:hub|wheel|workshop)\.yaml$|^expected\.txt$/;
  const others = names.filter((name) => !own.test(name));
  return {
    code,
    invalid: file('invalid'),
    fixed: file('fixed'),
    valid: file('valid'),
    others: others.map((name) => ({ name, ...readMarks(read(code, name)) })),
  };
}

const read = (code: string, name: string): string => readFileSync(join(folderOf(code), name), 'utf8');

function continued(text: string, expected: string): string {
  const length = Number(/^continued to (\d+) characters$/m.exec(expected)?.[1] ?? 0);
  const line = `#${'-'.repeat(78)}\n`;
  return text + line.repeat(Math.max(0, Math.ceil((length - text.length) / line.length)));
}

/** A file of a fixture as the workspace sees it, its text given, with the others of the folder around it. */
export function inspect(fixture: Fixture, file: FixtureFile, text: string = file.text): Snapshot {
  const workspace = createWorkspace();
  const root = `/fixtures/${fixture.code}`;
  workspace.setRoots([root]);
  for (const other of fixture.others) workspace.setFile(`${root}/${other.name}`, other.text);
  workspace.setFile(`${root}/${file.name}`, text);
  const snapshot = workspace.snapshot(`${root}/${file.name}`);
  if (!snapshot) throw new Error(`${file.name} is no spec file`);
  return snapshot;
}
