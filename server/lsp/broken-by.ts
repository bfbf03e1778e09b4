import type { Finding } from '../checks/check.ts';

/** Faults of the text that leave parts of it unread: the drawing then shows less than was meant. */
const breaking = new Set([
  'yaml-syntax',
  'tab-indentation',
  'conflict-markers',
  'file-too-large',
  'empty-file',
]);

/** Why a text could not be read whole; null where it was. */
export function brokenBy(findings: readonly Finding[]): string | null {
  return findings.find(({ code, severity }) => breaking.has(code) && severity === 'error')?.message ?? null;
}
