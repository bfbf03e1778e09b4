import type { Check } from '../checks/check.ts';
import { checks } from '../checks/registry.ts';
import { nearestOf } from '../spec/nearest.ts';
import { changedLines } from './changed-lines.ts';

/** A finding by its code, however it was typed. */
const checkOf = (code: string): Check | undefined =>
  checks.find((other) => other.code === code.toLowerCase());

/** The page of a finding as markdown; null for a code there is not. */
export function explanation(code: string): string | null {
  const check = checkOf(code);
  return check ? pageOf(check) : null;
}

/** What `explain CODE --json` prints. */
export function explanationJson(code: string) {
  const check = checkOf(code);
  if (!check) {
    const near = nearestOf(
      code,
      checks.map((other) => other.code),
      4,
    );
    return { code, error: `${code} is the code of no finding`, didYouMean: near === null ? [] : [near] };
  }
  const { group, severity, summary, page } = check;
  return { code: check.code, group, severity, summary, ...page, markdown: pageOf(check) };
}

/** Every finding there is, by group, in the order of the groups. */
export function findingCodes(): readonly Pick<Check, 'code' | 'group' | 'severity' | 'summary'>[] {
  return checks.map(({ code, group, severity, summary }) => ({ code, group, severity, summary }));
}

function pageOf({ code, group, severity, summary, page }: Check): string {
  const spec = (text: string): string => `\`\`\`yaml\n${text.trimEnd()}\n\`\`\``;
  return `${[
    `# ${code}`,
    `**${summary}** Usually of severity ${severity}; group ${group}.`,
    page.why,
    ...difference(page),
    '## Reported',
    spec(page.bad),
    '## Not reported',
    spec(page.good),
    '## Silenced',
    silencing(code, group),
    '## Sources',
    page.sources.map((source) => `- ${source}`).join('\n'),
  ].join('\n\n')}\n`;
}

/** What the examples differ in, where it is little: in two whole files it would have to be searched for. */
function difference({ bad, good }: Check['page']): readonly string[] {
  const lines = bad.trim() === '' ? [] : changedLines(bad, good);
  if (lines.length === 0 || 12 < lines.length) return [];
  return ['## The difference', `\`\`\`diff\n${lines.join('\n')}\n\`\`\``];
}

function silencing(code: string, group: Check['group']): string {
  if (group === 'text' || group === 'reference') {
    return 'It is mended rather than allowed: while it stands, the file is not read as it was meant.';
  }
  return `Where it is meant to be so, say why on the line above: \`# allow ${code} because …\`. The reason is required.`;
}
