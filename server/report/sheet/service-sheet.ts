import type { VariantAnalysis } from '../../analysis/analyze.ts';
import { drawNumbered } from '../../drawing/draw-numbered.ts';
import { drawStep, type StepPicture } from '../../drawing/step/draw-step.ts';
import { planOf } from '../../service/plan.ts';
import type { Step } from '../../service/step.ts';
import type { Snapshot } from '../../workspace/workspace.ts';
import { planCautions, planChecks } from '../plan/plan-text.ts';
import { list, stepWords } from '../plan/step-words.ts';
import { briefStep } from './brief-step.ts';
import { careLines, type SheetBlock } from './care-lines.ts';
import { type PartRow, partRows } from './part-rows.ts';
import { type Reading, readingsOf } from './readings.ts';

/** One step with its picture where force is used. */
export interface SheetStep {
  readonly number: number;
  readonly head: string;
  /** Whole sentences. */
  readonly details: readonly string[];
  /** The same in the few words that fit beside the picture. */
  readonly brief: readonly string[];
  readonly picture: StepPicture | null;
}

/** What whoever stands at the bench needs for one hub, ready to be set on paper. */
export interface ServiceSheet {
  readonly title: string;
  /** Name and value: position, width, revision. */
  readonly facts: readonly (readonly [string, string])[];
  readonly cautions: readonly string[];
  /** The section, as it prints in black. */
  readonly drawing: string;
  readonly parts: readonly PartRow[];
  /** Faults of the spec that stand, allowed ones with their reason. */
  readonly findings: readonly string[];
  readonly apart: readonly SheetStep[];
  readonly together: readonly SheetStep[];
  /** Said where no order takes the hub apart. */
  readonly locked: string | null;
  readonly care: readonly SheetBlock[];
  readonly readings: readonly Reading[];
  readonly checks: readonly string[];
  readonly measure: readonly string[];
  readonly assumed: readonly string[];
}

/** Room of the section on the sheet, mm. */
const drawingRoom = { width: 104, height: 46 };

/** Gathers the sheet of one variant. What is not known is asked for, never made up. */
export function serviceSheet(snapshot: Snapshot, variant: VariantAnalysis): ServiceSheet {
  const { analysis, findings } = snapshot;
  const { values } = variant.assembly.hub;
  const plan = planOf(variant, analysis);
  const asWritten = analysis.variants[0];
  const parts = partRows(variant, analysis);
  const drawing = drawNumbered(
    variant,
    asWritten,
    parts.map(({ address }) => address),
    drawingRoom,
  );
  const name = values.hub?.value ?? snapshot.file.split('/').at(-1) ?? '';
  const here = (of: readonly (string | null)[]): boolean => of.length === 0 || of.includes(variant.name);
  const steps = (kind: string, of: readonly Step[]): readonly SheetStep[] =>
    of.map((step, index) => {
      const { head, details } = stepWords(step);
      const brief = briefStep(step);
      const number = index + 1;
      const picture = drawStep(step, plan.bodies, head, `${kind}-${number}`);
      return { number, head: step.on === 'bench' ? `${head} (on the bench)` : head, details, brief, picture };
    });
  return {
    title: variant.name === null ? name : `${name}, ${variant.name}`,
    facts: [
      ['Position', values.position?.value ?? 'not written'],
      ['Width over the end caps', values.width ? `${values.width.value.written} mm` : 'not written'],
      ...(values.revision ? [['Revision', values.revision.value] as const] : []),
    ],
    cautions: planCautions,
    drawing,
    parts,
    findings: [
      ...findings.findings
        .filter(
          ({ severity, variants }) => here(variants) && (severity === 'error' || severity === 'warning'),
        )
        .map(({ code, severity, message }) => `${severity} ${code}: ${message}`),
      ...findings.allowed
        .filter(({ finding }) => here(finding.variants))
        .map(({ finding, reason }) => `allowed ${finding.code}: ${finding.message} — because ${reason}`),
    ],
    apart: steps('apart', plan.apart),
    together: steps('together', plan.together),
    locked: plan.locked
      ? `No order takes this hub apart: ${list(plan.locked)} hold each other both ways. The steps go as far as they can.`
      : null,
    care: careLines(variant),
    readings: readingsOf(variant, analysis),
    checks: planChecks,
    measure: [
      ...plan.measure.map(({ words }) => words),
      ...variant.unchecked.map(({ what, missing }) => `${missing} (for ${what})`),
    ],
    assumed: [...new Set(plan.assumed)],
  };
}
