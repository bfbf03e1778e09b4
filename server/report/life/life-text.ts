import type { BearingLife, HubLife } from '../../analysis/life/life-of.ts';
import { sayKilometres } from '../../analysis/life/say-kilometres.ts';
import { force, share } from '../../engine/base/figures.ts';
import { textTable } from '../text-table.ts';

/** The lives of one variant for people. */
export function lifeText(title: string, life: HubLife): string {
  const head = ['bearing', 'C', 'C0', 'mean load', 'most of C0', 'nine in ten reach'];
  const rows = life.bearings.map(({ address, ratings, equivalent, staticShare, kilometres }) => [
    address,
    force(ratings.dynamic),
    force(ratings.static),
    force(equivalent),
    share(staticShare),
    sayKilometres(kilometres),
  ]);
  return [
    title,
    ...(rows.length > 0 ? ['', ...textTable([head, ...rows], { indent: 2, right: [1, 2, 3, 4, 5] })] : []),
    ...(life.kilometres === null
      ? []
      : ['', `  all of them together: ${sayKilometres(life.kilometres)} in nine hubs of ten`]),
    ...list('Loads, radial and axial', life.bearings.map(sayCases)),
    ...list('Not reckoned', life.missing),
    ...list('Assumed', [
      'for comparison only: grease, water, dirt and dents end most hub bearings long before fatigue does',
      ...life.assumed,
    ]),
  ].join('\n');
}

function sayCases({ address, cases, preload }: BearingLife): string {
  const loads = cases.map(({ name, load }) => `${name} ${force(load.radial)} and ${force(load.axial)}`);
  return `${address}: ${loads.join('; ')}${0 < preload ? `; ${force(preload)} of preload is in it` : ''}`;
}

function list(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}
