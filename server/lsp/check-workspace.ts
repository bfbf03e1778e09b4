import type { Severity } from '../checks/check.ts';
import type { CheckAnswer } from '../protocol/requests.ts';
import { refreshAll } from './file-handlers.ts';
import type { Session } from './session.ts';

export const emptyCheck: CheckAnswer = {
  files: 0,
  withFindings: 0,
  counts: { error: 0, warning: 0, information: 0, hint: 0 },
  summary: 'The workspace could not be checked; the log of the language server says why.',
};

/** Checks every spec file there is and from then on shows the findings of files that are not open, too. */
export async function checkWorkspace(session: Session): Promise<CheckAnswer> {
  const { workspace, host } = session;
  const counts = { error: 0, warning: 0, information: 0, hint: 0 };
  let [files, withFindings, since] = [0, 0, host.now()];
  session.everywhere = true;
  for (const file of workspace.files()) {
    const findings = workspace.snapshot(file)?.findings.findings;
    if (!findings) continue;
    files += 1;
    if (findings.length > 0) withFindings += 1;
    for (const { severity } of findings) counts[severity] += 1;
    // Typing goes on meanwhile: what arrived is dealt with in between.
    if (20 < host.now() - since) {
      await new Promise<void>((resolve) => host.schedule(resolve, 0));
      since = host.now();
    }
  }
  refreshAll(session);
  return { files, withFindings, counts, summary: summarise(files, withFindings, counts) };
}

function summarise(files: number, withFindings: number, counts: Readonly<Record<Severity, number>>): string {
  const checked = `${amount(files, 'spec file')} checked`;
  if (files === 0) return 'No spec files are in the workspace.';
  if (withFindings === 0) return `${checked}: nothing was found.`;
  const kinds = [
    amount(counts.error, 'error'),
    amount(counts.warning, 'warning'),
    ...(counts.information > 0 ? [`${counts.information} for information`] : []),
    ...(counts.hint > 0 ? [amount(counts.hint, 'hint')] : []),
  ];
  return `${checked}: ${kinds.join(', ')} in ${amount(withFindings, 'file')}.`;
}

const amount = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
