import type { WheelAnalysis } from '../../../server/analysis/wheel/analyze-wheel.ts';
import { createWorkspace } from '../../../server/workspace/workspace.ts';

/** A hub with two flanges and end caps that bear; `more` is added at the end. */
export function hubText(left: string, right: string, more = ''): string {
  return `hub: Knot
position: rear
width: 100.12
shell:
  between-shoulders: 62
  seats:
    left:  { bore: 26 N7, depth: 5.2 }
    right: { bore: 26 N7, depth: 5.2 }
  flanges:
    left:  { ${left} }
    right: { ${right} }
stack:
  - end-cap: left
    length: 14.03
    face: 19.4
  - bearing: left
    code: 6803-2RS
    seat: shell.left
  - spacer: centre
    length: 62.06
  - bearing: right
    code: 6803-2RS
    seat: shell.right
  - end-cap: right
    length: 14.03
    face: 19.4
${more}`;
}

/** The analysis of a wheel on a hub, both as text; a workshop file beside them where one is given. */
export function wheelOn(hub: string, wheel: string, workshop = ''): WheelAnalysis {
  const workspace = createWorkspace();
  workspace.setRoots(['/bench']);
  workspace.setFile('/bench/knot.hub.yaml', hub);
  workspace.setFile('/bench/knot.wheel.yaml', `wheel: Knot\nhub: ./knot.hub.yaml\n${wheel}`);
  if (workshop !== '') workspace.setFile('/bench/bench.workshop.yaml', workshop);
  const answer = workspace.snapshot('/bench/knot.wheel.yaml')?.analysis.wheel();
  if (!answer) throw new Error('no wheel could be read');
  return answer;
}

/** Length by geometry of the first group of a side, mm. */
export function exactOf(wheel: WheelAnalysis, side: 'left' | 'right', at = 0): number {
  return wheel.groups.filter((group) => group.side === side)[at]?.fit?.length.exact ?? Number.NaN;
}
