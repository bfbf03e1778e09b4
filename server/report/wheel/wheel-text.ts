import type { WheelAnalysis, WheelGroup } from '../../analysis/wheel/analyze-wheel.ts';
import type { WheelStrength } from '../../analysis/wheel/wheel-strength.ts';
import type { WheelTension } from '../../analysis/wheel/wheel-tension.ts';
import { millimetres, plain, signed } from '../../engine/base/figures.ts';
import { outOfTrueShare } from '../../engine/tables/wheel-limits.ts';
import type { Side } from '../../spec/model.ts';
import { textTable } from '../text-table.ts';
import { measuredLines } from './measured-text.ts';
import { sayTension } from './say-tension.ts';

/** One wheel for people. */
export function wheelText(title: string, wheel: WheelAnalysis): string {
  const { tension, strength, measured } = wheel;
  return [
    title,
    ...spokeTable(wheel.groups),
    ...crossingLines(wheel.groups),
    ...(tension ? section('Tension', tensionLines(tension)) : []),
    ...(measured ? section('Measured', measuredLines(measured)) : []),
    ...(strength ? section('Stiffness and strength, to compare wheels with', strengthLines(strength)) : []),
    ...section(
      'Not worked out',
      wheel.unchecked.map(({ what, missing }) => `${what}: wants ${missing}`),
    ),
    ...section('Assumed', wheel.assumed),
  ].join('\n');
}

function section(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}

function spokeTable(groups: readonly WheelGroup[]): readonly string[] {
  if (groups.length === 0) return [];
  const head = ['spokes', 'count', 'exact', 'at tension', 'chosen', 'end in slot', 'engaged', 'angle'];
  const rows = groups.map(({ side, head: way, direction, count, angle, fit }) => [
    `${side}, ${way.replace('-', ' ')}${direction === 'both' ? '' : `, ${direction}`}`,
    String(count),
    ...(fit
      ? [
          millimetres(fit.length.exact, 1),
          millimetres(fit.length.corrected, 1),
          `${plain(fit.length.chosen)} mm${fit.length.written === null ? ' proposed' : ''}`,
          `${signed(fit.nipple.end, 1)} mm`,
          millimetres(fit.nipple.engagement, 1),
        ]
      : ['unknown', '', '', '', '']),
    `${((angle * 180) / Math.PI).toFixed(1)}°`,
  ]);
  const other = groups.flatMap(({ side, head: way, fit }) =>
    fit?.length.written && (fit.nipple.end < fit.band.lo || fit.band.hi < fit.nipple.end)
      ? [
          `${side}, ${way.replace('-', ' ')}: ${plain(fit.length.chosen)} mm is ${millimetres(Math.abs(fit.nipple.end), 1)} too ${fit.nipple.end < 0 ? 'short' : 'long'}; ${plain(fit.length.proposed)} mm fits`,
        ]
      : [],
  );
  return [
    '',
    ...textTable([head, ...rows], { indent: 2, right: [1, 2, 3, 4, 5, 6, 7] }),
    ...section('Lengths to change', other),
  ];
}

function crossingLines(groups: readonly WheelGroup[]): readonly string[] {
  const lines = groups.flatMap(({ side, crossing }) =>
    crossing && crossing.verdict !== 'free'
      ? [
          `${side}: ${crossing.crosses} crossings ${crossing.verdict === 'past the tangent' ? 'lean the spokes past the tangent' : `lay a spoke ${crossing.verdict}`}, ${millimetres(crossing.neighbour, 1)} from its centre; ${crossing.most} lie free`,
        ]
      : [],
  );
  return section('Crossings', [...new Set(lines)]);
}

function tensionLines(tension: WheelTension): readonly string[] {
  const { set, sides, ratio } = tension;
  const spread = set.spread === null ? '' : ` ±${sayTension(set.spread)}`;
  const line = (side: Side): string => {
    const { value, most, mostFrom, least, withTyre } = sides[side];
    const tyre = withTyre
      ? `; ${sayTension(withTyre.lo)} to ${sayTension(withTyre.hi)} with the tyre inflated`
      : '';
    return `${side} ${sayTension(value)}${side === set.side ? spread : ''}; at most ${sayTension(most)} by ${mostFrom}, mean at least ${sayTension(least)}${tyre}`;
  };
  const { taut } = tension;
  const share = taut === 'right' ? ratio : 1 / ratio;
  const slack = taut === 'right' ? 'left' : 'right';
  return [
    line('left'),
    line('right'),
    share < 0.9995
      ? `balance: ${slack} ${(share * 100).toFixed(1)} % of ${taut}`
      : 'balance: both sides alike',
    `rim pressed together with ${sayTension(tension.rimCompression)}`,
  ];
}

function strengthLines({ stiffness, buckling, slackLoad }: WheelStrength): readonly string[] {
  const { ridden } = slackLoad;
  const rate = (value: number): string => `${Number(value.toPrecision(3))} N/mm`;
  const left = (side: Side): string =>
    ridden[side] > 0
      ? `${sayTension(ridden[side])} are left`
      : `spokes go slack, ${sayTension(-ridden[side])} short`;
  return [
    `sideways ${rate(stiffness.lateral)}, radially ${rate(stiffness.radial)}, round the axle ${rate(stiffness.tangential)}, at the rim`,
    ...(buckling
      ? [
          `folds in ${buckling.mode} waves at a mean tension of ${sayTension(buckling.tension)}; this one has ${(buckling.share * 100).toFixed(0)} % of it, ${outOfTrueShare * 100} % already shows`,
        ]
      : []),
    `first spoke slack, ${slackLoad.radialSide}, under ${sayTension(slackLoad.radial)} on the wheel; under a side force of ${sayTension(slackLoad.lateral.left)} to the left or ${sayTension(slackLoad.lateral.right)} to the right`,
    `ridden with ${sayTension(ridden.weight)} on it: pushed left by ${sayTension(ridden.sideForce)}, on the left ${left('left')}; pushed right, on the right ${left('right')}`,
    'wheels as built measure about a third less sideways: compare, do not predict',
  ];
}
