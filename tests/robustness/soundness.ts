import type { Closed } from '../../server/analysis/close.ts';
import type { Finding } from '../../server/checks/check.ts';
import type { SpecDocument } from '../../server/spec/document.ts';
import type { Span } from '../../server/spec/place.ts';
import type { Snapshot } from '../../server/workspace/workspace.ts';

/** Words a program says when it has lost a value; a text that holds one itself may be quoted. */
const lost = /undefined|NaN|Infinity|\[object|Invalid input/;

/** Everything wrong with what was made of a text: nothing here depends on what the text says. */
export function complaints(snapshot: Snapshot): readonly string[] {
  const { document, findings, analysis } = snapshot;
  const { text } = document;
  const all = [...findings.findings, ...findings.allowed.map(({ finding }) => finding)];
  return [
    ...findings.broken.map(({ code, error }) => `${code} broke: ${stackOf(error)}`),
    ...all.flatMap((finding) => ofFinding(finding, text)),
    ...ofDocument(document),
    ...analysis.variants.flatMap(({ width, pairs, seats, gaps }) =>
      [width, ...pairs, ...seats, ...gaps].flatMap(({ drawn, built }) => [
        ...ofFigures(drawn),
        ...ofFigures(built),
      ]),
    ),
  ];
}

/** Everything wrong with what reading alone gives. */
export function ofDocument({ text, problems, allowances }: SpecDocument): readonly string[] {
  return [
    ...problems.flatMap(({ code, span, fixes }) => [
      ...outside(`problem ${code}`, span, text),
      ...fixes.flatMap(({ changes }) =>
        changes.flatMap((change) => outside(`fix of ${code}`, change.span, text)),
      ),
    ]),
    ...allowances.flatMap((item) => [
      ...outside('allowance', item.span, text),
      ...outside('target of an allowance', item.target, text),
    ]),
  ];
}

/** A message a person reads: one line, nothing lost in it. */
export function ofMessage(message: string, text: string): readonly string[] {
  const word = lost.exec(message)?.[0];
  const wrong = [];
  if (word && !text.includes(word)) wrong.push(`says ${word}: ${message}`);
  if (/[\r\n]/.test(message)) wrong.push(`goes over several lines: ${message}`);
  if (message.trim() === '') wrong.push('is empty');
  if (1_000 < message.length) wrong.push(`is ${message.length} long: ${message.slice(0, 80)}`);
  return wrong;
}

function ofFinding({ code, message, span, related, fixes }: Finding, text: string): readonly string[] {
  return [
    ...ofMessage(message, text).map((wrong) => `${code} ${wrong}`),
    ...outside(code, span, text),
    ...related.flatMap((item) => [
      ...ofMessage(item.message, text).map((wrong) => `related of ${code} ${wrong}`),
      ...outside(`related of ${code}`, item.span, text),
    ]),
    ...fixes.flatMap(({ title, changes }) => [
      ...ofMessage(title, text).map((wrong) => `title of a fix of ${code} ${wrong}`),
      ...changes.flatMap((change) => outside(`fix of ${code}`, change.span, text)),
      ...changes.flatMap((change) => {
        const word = lost.exec(change.text)?.[0];
        return word && !text.includes(word) ? [`fix of ${code} writes ${word}: ${title}`] : [];
      }),
      ...overlaps(changes.map((change) => change.span)).map((where) => `fix of ${code}: ${where}`),
    ]),
  ];
}

function outside(what: string, { start, end }: Span, text: string): readonly string[] {
  const whole = Number.isInteger(start) && Number.isInteger(end);
  return whole && 0 <= start && start <= end && end <= text.length
    ? []
    : [`${what} stands at ${start} to ${end} of ${text.length}`];
}

function overlaps(spans: readonly Span[]): readonly string[] {
  const sorted = spans.toSorted((a, b) => a.start - b.start);
  return sorted.flatMap((span, at) => {
    const next = sorted[at + 1];
    return next && next.start < span.end
      ? [`the change at ${span.start} overlaps the one at ${next.start}`]
      : [];
  });
}

function ofFigures(closed: Closed | null): readonly string[] {
  if (!closed) return [];
  const { nominal, mean, worst, rss, contributions, shareOutside } = closed;
  const figures = [nominal, mean, ...worst, ...rss, ...contributions.map(({ share }) => share)];
  const wrong = figures.some((figure) => !Number.isFinite(figure)) || worst[1] < worst[0] || rss[1] < rss[0];
  const share = shareOutside ?? 0;
  return wrong || !(0 <= share && share <= 1) ? [`a loop gives ${JSON.stringify(closed)}`] : [];
}

const stackOf = (error: unknown): string => (error instanceof Error ? (error.stack ?? '') : String(error));
