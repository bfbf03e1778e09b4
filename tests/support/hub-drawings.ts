import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { VariantAnalysis } from '../../server/analysis/analyze.ts';
import type { FaultMark } from '../../server/drawing/fault-mark.ts';
import { createWorkspace } from '../../server/workspace/workspace.ts';

/** A variant of a hub file with the findings that hold for it. */
export interface HubDrawing {
  /** `family`, `family-thru-15` */
  readonly name: string;
  readonly variant: VariantAnalysis;
  readonly asWritten: VariantAnalysis;
  readonly faults: readonly FaultMark[];
}

/** Every variant of every hub file in a folder. */
export function hubsIn(folder: string): readonly HubDrawing[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  const workspace = createWorkspace();
  workspace.setRoots([folder]);
  for (const name of files) workspace.setFile(join(folder, name), readFileSync(join(folder, name), 'utf8'));
  return files
    .filter((name) => name.endsWith('.hub.yaml'))
    .flatMap((name) => variantsOf(join(folder, name), name.replace('.hub.yaml', ''), workspace.snapshot));
}

/** The hub of a text, as written. */
export function hubOf(text: string): HubDrawing {
  const workspace = createWorkspace();
  workspace.setFile('/spec/test.hub.yaml', text);
  const [first] = variantsOf('/spec/test.hub.yaml', 'test', workspace.snapshot);
  if (!first) throw new Error('the text holds no hub');
  return first;
}

function variantsOf(
  file: string,
  name: string,
  snapshot: ReturnType<typeof createWorkspace>['snapshot'],
): readonly HubDrawing[] {
  const found = snapshot(file);
  const asWritten = found?.analysis.variants[0];
  if (!found || !asWritten) return [];
  return found.analysis.variants.map((variant) => ({
    name: variant.name === null ? name : `${name}-${variant.name}`,
    variant,
    asWritten,
    faults: found.findings.findings.filter(
      ({ severity, variants }) =>
        severity !== 'hint' && (variants.length === 0 || variants.includes(variant.name)),
    ),
  }));
}
