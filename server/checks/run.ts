import type { Analysis } from '../analysis/analyze.ts';
import type { Allowance, SpecDocument } from '../spec/document.ts';
import { lineOf, nextLine } from '../spec/lines.ts';
import type { Span } from '../spec/place.ts';
import { allowFix } from './allow-fix.ts';
import { brief } from './brief.ts';
import type { Check, Draft, Finding } from './check.ts';
import { settledFirst } from './settled-first.ts';

/** What a run of the checks found; allowed findings are kept apart, they still stand on sheets. */
export interface Findings {
  readonly findings: readonly Finding[];
  readonly allowed: readonly { readonly finding: Finding; readonly reason: string }[];
  /** Checks that failed to run: a fault of ours, never of the file. */
  readonly broken: readonly { readonly code: string; readonly error: unknown }[];
}

/** Runs every check over an analysis. One root cause in several variants is one finding that names them. */
export function runChecks(analysis: Analysis, checks: readonly Check[]): Findings {
  const found: Finding[] = [];
  const broken: { code: string; error: unknown }[] = [];
  for (const check of checks) {
    try {
      found.push(...merge(check, [...check.run(analysis)], analysis));
    } catch (error) {
      broken.push({ code: check.code, error });
    }
  }
  return { ...applyAllowances(analysis.spec, found, checks), broken };
}

/** Drafts of one check at one place are one finding; what differs by variant is said. */
function merge(check: Check, drafts: readonly Draft[], analysis: Analysis): readonly Finding[] {
  const byPlace = new Map<string, [Draft, ...Draft[]]>();
  for (const draft of drafts) {
    const key = JSON.stringify([draft.path, draft.part ?? 'value', draft.span ?? null]);
    const same = byPlace.get(key);
    if (same) same.push(draft);
    else byPlace.set(key, [draft]);
  }
  return [...byPlace.values()].map((same) => toFinding(check, same, analysis));
}

function toFinding(check: Check, same: readonly [Draft, ...Draft[]], analysis: Analysis): Finding {
  const [first] = same;
  const { spec } = analysis;
  const variants = same.flatMap((draft) => (draft.variant === undefined ? [] : [draft.variant]));
  const everywhere = variants.length === 0 || variants.length === analysis.variants.length;
  const message = everywhere ? first.message : `${first.message} (${variantNames(variants)})`;
  return {
    code: check.code,
    group: check.group,
    severity: worst(same.map((draft) => draft.severity ?? check.severity)),
    message: brief(message),
    path: first.path,
    span: first.span ?? spec.span(first.path, first.part ?? 'value'),
    related: (first.related ?? []).map(({ path, part, message: text, span }) => ({
      path,
      span: span ?? spec.span(path, part ?? 'value'),
      message: brief(text),
    })),
    data: variants.length > 0 ? { ...first.data, variants } : (first.data ?? {}),
    fixes: (first.fixes ?? []).map((fix) => ({ ...fix, title: brief(fix.title) })),
    doubts: same.flatMap((draft) => draft.doubts ?? []),
    variants,
  };
}

function variantNames(variants: readonly (string | null)[]): string {
  const named = variants.filter((name) => name !== null);
  const written = variants.includes(null) ? ['the hub as written'] : [];
  return `in ${[...written, ...named].join(', ')}`;
}

const order = ['error', 'warning', 'information', 'hint'] as const;

function worst(severities: readonly Finding['severity'][]): Finding['severity'] {
  return order.find((severity) => severities.includes(severity)) ?? 'information';
}

function applyAllowances(
  spec: SpecDocument,
  found: readonly Finding[],
  checks: readonly Check[],
): Pick<Findings, 'findings' | 'allowed'> {
  const used = new Set<Allowance>();
  const findings: Finding[] = [];
  const allowed: { finding: Finding; reason: string }[] = [];
  for (const finding of found) {
    const allowance = spec.allowances.find((item) => silences(item, finding));
    if (allowance) {
      used.add(allowance);
      allowed.push({ finding, reason: allowance.reason });
    } else {
      findings.push({ ...finding, fixes: [...finding.fixes, ...allowFix(spec, finding)] });
    }
  }
  const unused = checks.find((check) => check.code === 'allow-unused');
  for (const allowance of spec.allowances) {
    if (!unused || used.has(allowance) || allowance.reason === '') continue;
    findings.push(unusedAllowance(unused, spec, allowance, checks));
  }
  return { findings: settledFirst(findings).toSorted((a, b) => a.span.start - b.span.start), allowed };
}

function silences(allowance: Allowance, finding: Finding): boolean {
  if (allowance.code !== finding.code || allowance.reason === '') return false;
  return allowance.target.start <= finding.span.start && finding.span.start <= allowance.target.end;
}

function unusedAllowance(
  check: Check,
  spec: SpecDocument,
  allowance: Allowance,
  checks: readonly Check[],
): Finding {
  const known = checks.some((other) => other.code === allowance.code);
  const what = known ? 'silences nothing here' : 'names no finding there is';
  return {
    code: check.code,
    group: check.group,
    severity: check.severity,
    message: brief(`allow ${allowance.code} ${what} — remove the comment`),
    path: [],
    span: allowance.span,
    related: [],
    data: { allowed: allowance.code, known },
    fixes: [
      {
        title: brief(`Remove the comment that allows ${allowance.code}`),
        changes: [{ span: withItsLine(spec.text, allowance.span), text: '' }],
        preferred: true,
      },
    ],
    doubts: [],
    variants: [],
  };
}

/** The line a comment stands on alone; behind something else only the comment. */
function withItsLine(text: string, { start, end }: Span): Span {
  const line = lineOf(text, start);
  const before = text.slice(line.start, start);
  if (before.replace('\ufeff', '').trim() !== '') return { start: line.start + before.trimEnd().length, end };
  return { start: line.start + (before.startsWith('\ufeff') ? 1 : 0), end: nextLine(text, start) };
}
