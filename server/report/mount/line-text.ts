import type { LineLoad, LineMechanics } from '../../analysis/mechanics/line-mechanics.ts';
import { force, micrometres, stress } from '../../engine/base/figures.ts';
import { textTable } from '../text-table.ts';

/** More than two bearings of one housing together: play, and what each of them carries once clamped. */
export function lineLines(line: LineMechanics, isClamped: boolean): readonly string[] {
  const { housing, bearings, playUnclamped, playClampedSigned, stops } = line;
  const between = stops.left && stops.right && stops.left !== stops.right;
  const limiting = between ? `, limited by ${stops.left} and ${stops.right}` : '';
  const rows = [
    ['play before clamping', sayPlay(playUnclamped)],
    ...(isClamped
      ? [
          ['play once clamped', `${sayPlay(playClampedSigned)}${limiting}`],
          ...bearings.map((bearing) => [`  on the balls of ${bearing.address}`, sayLineLoad(bearing)]),
        ]
      : []),
  ];
  return [`  all ${bearings.length} bearings of the ${housing} together`, ...textTable(rows, { indent: 4 })];
}

/** `215 N to the right, contact stress 1 530 MPa, its outer ring pushed along` */
export function sayLineLoad({ force: load, contactStress, slid }: LineLoad): string {
  const pushed = slid ? ', its outer ring pushed along its seat' : '';
  if (load === 0) return `none${pushed}`;
  return `${force(Math.abs(load))} to the ${0 < load ? 'right' : 'left'}, contact stress ${stress(contactStress)}${pushed}`;
}

function sayPlay(play: number): string {
  if (!Number.isFinite(play)) return 'nothing closes the line';
  return play < -0.0005 ? `none, ${micrometres(-play)} are missing` : micrometres(Math.max(0, play));
}
