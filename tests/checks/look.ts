import type { Finding } from '../../server/checks/check.ts';
import { pageHub } from '../../server/checks/page-hub.ts';
import { createWorkspace, type Snapshot } from '../../server/workspace/workspace.ts';
import { applied, mending } from './apply.ts';

export { pageHub };

/** What is found in a hub file, with other files beside it. */
export function look(
  text: string,
  others: Readonly<Record<string, string>> = {},
  name = 'knot.hub.yaml',
): Snapshot {
  const workspace = createWorkspace();
  workspace.setRoots(['/bench']);
  for (const [other, content] of Object.entries(others)) workspace.setFile(`/bench/${other}`, content);
  workspace.setFile(`/bench/${name}`, text);
  const snapshot = workspace.snapshot(`/bench/${name}`);
  if (!snapshot) throw new Error(`${name} is no spec file`);
  return snapshot;
}

/** Codes of what is found, in the order of the text. */
export const codesIn = (text: string, others?: Readonly<Record<string, string>>): readonly string[] =>
  look(text, others).findings.findings.map(({ code }) => code);

/** The one finding of a code. */
export function finding(text: string, code: string, others?: Readonly<Record<string, string>>): Finding {
  const found = look(text, others).findings.findings.filter((item) => item.code === code);
  if (!found[0] || found.length !== 1) throw new Error(`${code} is found ${found.length} times`);
  return found[0];
}

/** The text with the nth fix of a finding, and what is found then. */
export function afterFix(
  text: string,
  code: string,
  index = 0,
): { readonly text: string; readonly codes: readonly string[] } {
  const fix = mending(finding(text, code))[index];
  if (!fix) throw new Error(`${code} offers no fix ${index}`);
  const mended = applied(text, fix);
  return { text: mended, codes: codesIn(mended) };
}

/** What a finding covers. */
export const covered = (text: string, { span }: Finding): string => text.slice(span.start, span.end);
