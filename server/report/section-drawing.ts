import type { VariantAnalysis } from '../analysis/analyze.ts';
import { drawSection } from '../drawing/draw-section.ts';
import type { Snapshot } from '../workspace/workspace.ts';

/** The section of one variant as an SVG file, with the findings of that variant marked where they are. */
export function sectionDrawing(snapshot: Snapshot, variant: VariantAnalysis): ReturnType<typeof drawSection> {
  const faults = snapshot.findings.findings
    .filter(({ variants }) => variants.length === 0 || variants.includes(variant.name))
    .map(({ code, path, severity, message }) => ({ code, path, severity, message }));
  // Flanges keep the place they have in the hub as written.
  const asWritten = snapshot.analysis.variants[0];
  return drawSection(variant, faults, { standalone: true, ...(asWritten ? { asWritten } : {}) });
}
