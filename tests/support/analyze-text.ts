import { type Analysis, analyze, type VariantAnalysis } from '../../server/analysis/analyze.ts';
import { readSpec } from '../../server/spec/read-spec.ts';

/** The analysis of a hub's text with nothing around it but, when given, a workshop. */
export function analyzeText(text: string, workshop?: string): Analysis {
  const workshops = workshop === undefined ? [] : [{ file: 'w', document: readSpec(workshop, 'workshop') }];
  return analyze(readSpec(text, 'hub'), { workshops, references: [] });
}

/** The hub as written, worked out. */
export function asWritten(text: string, workshop?: string): VariantAnalysis {
  const [first] = analyzeText(text, workshop).variants;
  if (!first) throw new Error('the text is no hub');
  return first;
}
