import type { Finding, Severity } from './check.ts';

const order: readonly Severity[] = ['error', 'warning', 'information', 'hint'];

/**
 * Leaves out what rests on a value that another finding doubts and takes at least as seriously: one cause, one
 * finding. What is left out comes back when the doubt is settled or allowed.
 */
export function settledFirst(findings: readonly Finding[]): readonly Finding[] {
  const doubters = findings.filter(({ doubts }) => doubts.length > 0);
  if (doubters.length === 0) return findings;
  const kept: Finding[] = [];
  for (const finding of doubters) if (!restsOnAny(finding, kept)) kept.push(finding);
  return findings.filter((finding) => kept.includes(finding) || !restsOnAny(finding, kept));
}

function restsOnAny(finding: Finding, doubters: readonly Finding[]): boolean {
  return doubters.some((doubter) => doubter.code !== finding.code && restsOn(finding, doubter));
}

function restsOn(finding: Finding, doubter: Finding): boolean {
  // A fault of the text rests on nothing: it is what the others rest on.
  if (finding.group === 'text') return false;
  if (order.indexOf(finding.severity) < order.indexOf(doubter.severity)) return false;
  const places = [finding.path, ...finding.related.map(({ path }) => path)].map((path) =>
    JSON.stringify(path),
  );
  return doubter.doubts.some((path) => places.includes(JSON.stringify(path)));
}
