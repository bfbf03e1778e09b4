import { anglesInBrief } from '../../analysis/mechanics/angular-contact.ts';
import type { PairRange } from '../../analysis/mechanics/pair-range.ts';
import { endsInBrief, loadEndsInBrief } from '../../analysis/mechanics/range-in-brief.ts';
import { settingInBrief } from '../../analysis/mechanics/setting-in-brief.ts';
import { force, length, micrometres, millimetres, share, signed, stress } from '../../engine/base/figures.ts';
import { buildLines } from '../stack/play-text.ts';
import { textTable } from '../text-table.ts';
import { coneLines } from './cone-lines.ts';
import type { FitMount, Range } from './fit-mount.ts';
import { lineLines } from './line-text.ts';
import type { BearingMount, BuiltPair, MountAnswer } from './mount-answer.ts';
import { type PairMount, rimRadius } from './pair-mount.ts';

/** Conventions every figure here rests on. */
const conventions = [
  'fits and clearances from ISO 286, ISO 492 and ISO 5753-1; ring widths on average half their tolerance short',
  'smoothing d/(d+3) for a bored seat, d/(d+2) for a ground journal; the ring counts as a tube from raceway to seat',
  'friction of pressing 0.12 (0.08 to 0.18); balls as warm as the middle of both rings',
];

/** The mounting of one variant for people. */
export function mountText(file: string, hub: string, answer: MountAnswer): string {
  const { variant, how, clamp, bearings, pairs, lines } = answer;
  const { unworked, service, assumed, cautions } = answer;
  const name = variant === null ? hub : `${hub}, variant ${variant}`;
  const under = clamp ? `clamp ${force(clamp.force)}` : 'no clamp written';
  const title = `${name} — ${file}${how === 'built' ? ', as measured' : ''}, at ${sayTemperature(answer)}, ${under}`;
  return [
    title,
    ...(bearings.length > 0 || answer.cups ? [] : ['', '  No bearing with a known size stands in this hub.']),
    ...bearings.flatMap((bearing) => ['', ...bearingLines(bearing)]),
    ...pairs.flatMap((pair) => ['', ...pairLines(pair)]),
    ...lines.flatMap((line) => ['', ...lineLines(line, clamp !== null)]),
    ...coneLines(answer.cups, clamp, answer.mostPlay),
    ...(service.length === 0 || bearings.length === 0 ? [] : ['', ...serviceLines(answer)]),
    ...list(
      'Not worked out',
      unworked.map(({ bearings: of, missing }) => `play of ${of.join(' and ')} — missing: ${missing}`),
    ),
    ...list('Bear in mind', cautions),
    ...list('Assumed', bearings.length > 0 ? [...assumed, ...conventions] : assumed),
  ].join('\n');
}

/** `20 °C`, or inside and outside apart. */
function sayTemperature({ temperature, apart }: MountAnswer): string {
  if (!apart) return degrees(temperature);
  return `${degrees(apart.inner)} inside and ${degrees(apart.outer)} outside`;
}

function bearingLines(bearing: BearingMount): readonly string[] {
  const { address, code, outer, inner, free, mounted, axial, axialRange, seat, contactAngle, compound } =
    bearing;
  const head = [`${address} ${code}`, 'least', 'mean', 'most'];
  const rows = [
    ...(outer
      ? fitLines(outer, `in ${seat ?? 'its seat'}`)
      : [
          [`  outer ring in ${seat ?? 'no seat'}: bore of the seat or outside of its housing is not written`],
        ]),
    ...(compound
      ? [
          [
            '    its retaining compound holds',
            force(compound.least),
            force(compound.typical),
            force(compound.most),
          ],
        ]
      : []),
    ...(inner ? fitLines(inner, 'on the axle') : [['  inner ring: diameter of the axle is not written']]),
    ...(contactAngle ? [['  contact angle', '', anglesInBrief(contactAngle)]] : []),
    ...(free && !contactAngle
      ? [
          [
            '  clearance before mounting',
            ...um({ least: free.lo, mean: (free.lo + free.hi) / 2, most: free.hi }),
          ],
        ]
      : []),
    ...thermalRows(bearing),
    ...(contactAngle ? [] : [clearanceLine(mounted)]),
    ...(bearing.usedUp ? [['    without any', '', `${share(bearing.usedUp)} of builds`, '']] : []),
    ...(axial === null ? [] : [['  axial clearance', '', micrometres(axial), '']]),
    ...(axialRange && micrometres(axialRange.lo) !== micrometres(axialRange.hi)
      ? [['    as its grooves are estimated', micrometres(axialRange.lo), '', micrometres(axialRange.hi)]]
      : []),
  ];
  return textTable(wide([head, ...rows]), { indent: 2, right: [1, 2, 3] });
}

/** Rings of different warmth, or ceramic balls between warm rings. */
function thermalRows({ thermalLoss }: BearingMount): readonly (readonly string[])[] {
  if (Math.abs(thermalLoss) < 0.0005) return [];
  const what = 0 < thermalLoss ? 'takes' : 'gives';
  return [[`  clearance that warmth ${what}`, '', micrometres(Math.abs(thermalLoss)), '']];
}

function clearanceLine(mounted: BearingMount['mounted']): readonly string[] {
  return mounted
    ? ['  clearance mounted', ...um(mounted)]
    : ['  clearance mounted: not known, no table has the clearance of this bearing'];
}

/** A row of one cell would push the columns apart: its text goes into the last one. */
function wide(rows: readonly (readonly string[])[]): readonly (readonly string[])[] {
  const widest = Math.max(...rows.filter((row) => 1 < row.length).map(([first = '']) => first.length));
  return rows.map((row) => {
    const [first = ''] = row;
    if (1 < row.length || first.length <= widest) return row;
    const [what = '', why = ''] = first.split(/: (.*)/);
    return [what.slice(0, widest), '', '', `  ${why}`];
  });
}

function fitLines(fit: FitMount, where: string): readonly (readonly string[])[] {
  const grips = 0 < fit.interference.most;
  const name = `  ${fit.ring} ring ${where}`;
  const rows = [[`${name}, interference`, ...um(fit.interference)]];
  if (!grips) return rows;
  const { least, typical, most } = fit.pressForce;
  return [
    ...rows,
    ['    pressure', ...each(fit.pressure, stress)],
    ['    clearance it takes', ...um(fit.clearanceLoss)],
    ['    stress round the seat', ...each(fit.wallHoopRange, stress)],
    ['    stress in the ring', '', stress(fit.ringHoop), ''],
    ['    force to press it in', force(least), force(typical), force(most)],
    ...(fit.freeAt === null
      ? []
      : [
          [
            '    lets go at',
            degreesOr(fit.freeAtRange?.[0]),
            degrees(fit.freeAt),
            degreesOr(fit.freeAtRange?.[1]),
          ],
        ]),
    ...(fit.warming ? [['    warmer, to drop on', '', '', sayWarming(fit.warming)]] : []),
  ];
}

function sayWarming({ part, difference, to, possible }: NonNullable<FitMount['warming']>): string {
  const by = `+${Math.ceil(difference)} K`;
  return possible ? `${by}, ${part} to ${Math.ceil(to)} °C` : `${by}, not by heat`;
}

function pairLines(pair: BuiltPair): readonly string[] {
  const { bearings, delta, axialClearance, playUnclamped, playShoulders, playClamped, rimRock } = pair;
  if (pair.setting?.kind === 'spring') return springLines(pair);
  const rows = [
    ...(pair.setting ? [['set by hand', settingInBrief(pair.setting)]] : []),
    ['inner less outer distance', `${signed(delta, 3)} mm`],
    ...(axialClearance === null
      ? []
      : [['axial clearance, the tighter bearing', micrometres(axialClearance)]]),
    ['play before clamping', playUnclamped === null ? 'nothing closes the pair' : sayPlay(playUnclamped)],
    ...(playShoulders !== null && playShoulders !== playUnclamped
      ? [['  once outer rings have moved', sayPlay(playShoulders)]]
      : []),
    ...(rimRock === null ? [] : [[`  rock at a rim of ${2 * rimRadius} mm`, millimetres(rimRock)]]),
    ...(pair.clampShortening === null
      ? [['play once clamped', 'needs clamp: a force or a torque']]
      : [
          ['shortened by the clamp', micrometres(pair.clampShortening)],
          ['play once clamped', playClamped === null ? 'nothing closes the pair' : sayPlay(playClamped)],
          ['axial force through each bearing', force(pair.ballLoad ?? 0)],
          ['force left in the spacer', force(pair.spacerLoad ?? 0)],
        ]),
    ...(0 < (pair.ballLoad ?? 0) && pair.contactStress !== null
      ? [['contact stress', stress(pair.contactStress)]]
      : []),
    ...torqueRows(pair),
    ...(pair.range ? rangeRows(pair.range, pair.clampShortening !== null) : []),
    ...(pair.builds
      ? [
          [
            'of many builds',
            `${share(pair.builds.loaded)} loaded, ${share(pair.builds.playHigh)} with too much play`,
          ],
        ]
      : []),
  ];
  return [
    `  ${bearings.join(' and ')} in the ${pair.housing}`,
    ...textTable(rows, { indent: 4 }),
    ...(pair.builds ? buildLines(pair.builds).map((text) => `    ${text}`) : []),
  ];
}

/** The same parts with any balls and grooves the estimate allows. */
function rangeRows(range: PairRange, isClamped: boolean): readonly string[][] {
  return [
    ['as balls and grooves are estimated', `play ${endsInBrief(range.playUnclamped)}`],
    ...(isClamped
      ? [['  clamped', `play ${endsInBrief(range.playClamped)}, load ${loadEndsInBrief(range.ballLoad)}`]]
      : []),
  ];
}

/** A sprung pair has no play of its own to tell of. */
function springLines(pair: BuiltPair): readonly string[] {
  const { bearings, housing, setting, ballLoad, contactStress, playClamped } = pair;
  const rows = [
    ['preload', setting ? settingInBrief(setting) : ''],
    ['play', playClamped === null ? 'nothing closes the pair' : 'taken up by the spring'],
    ['axial force through each bearing', force(ballLoad ?? 0)],
    ['contact stress', stress(contactStress ?? 0)],
    ...torqueRows(pair),
  ];
  return [`  ${bearings.join(' and ')} in the ${housing}`, ...textTable(rows, { indent: 4 })];
}

/** What the fingers feel: the torque that the load adds to that of the seals. */
function torqueRows({ turningTorque: torque, staticShare, ballLoad }: BuiltPair): readonly string[][] {
  if (!torque || !(0 < (ballLoad ?? 0))) return [];
  const seals =
    torque.seals === null ? 'those of the seals not known' : `${sayTorque(torque.seals)} of seals without it`;
  return [
    ['share of C0', share(staticShare ?? 0)],
    ['to start it turning', `${sayTorque(torque.load)} more by the load, ${seals}`],
  ];
}

const sayTorque = (torque: number): string => `${Number(torque.toPrecision(2))} N·mm`;

function sayPlay(play: number): string {
  if (play < -0.0005) return `none, ${micrometres(-play)} are missing`;
  return micrometres(play);
}

function serviceLines({ service }: MountAnswer): readonly string[] {
  const [first] = service;
  const head = ['in service, on average', ...service.map(({ temperature }) => degrees(temperature))];
  const rows = (first?.bearings ?? []).flatMap(({ address }, index) => [
    [`  clearance of ${address}`, ...service.map(({ bearings }) => said(bearings[index]?.mounted ?? null))],
    ...(service.some(({ bearings }) => bearings[index]?.usedUp)
      ? [
          [
            `  builds of ${address} without clearance`,
            ...service.map(({ bearings }) => share(bearings[index]?.usedUp ?? 0)),
          ],
        ]
      : []),
    [
      `  interference of ${address} in its seat`,
      ...service.map(({ bearings }) => said(bearings[index]?.interference ?? null)),
    ],
  ]);
  const plays = (first?.pairs ?? []).map(({ bearings }, index) => [
    `  play of ${bearings.join(' and ')}`,
    ...service.map(({ pairs }) => servicePlay(pairs[index])),
  ]);
  return textTable([head, ...rows, ...plays], { indent: 2 });
}

function servicePlay(pair: PairMount | undefined): string {
  if (!pair) return '';
  if (0 < (pair.ballLoad ?? 0)) return `none, ${force(pair.ballLoad ?? 0)}`;
  const play = pair.playClamped ?? pair.playUnclamped;
  return play === null ? '' : sayPlay(play);
}

const said = (value: number | null): string => (value === null ? 'not known' : micrometres(value));

/** Nothing where the loosest build has no interference to lose. */
const degreesOr = (value: number | undefined): string => (value === undefined ? '' : degrees(value));

const degrees = (value: number): string => `${length(value, 0)} °C`;

const each = ({ least, mean, most }: Range, say: (value: number) => string): readonly string[] => [
  say(least),
  say(mean),
  say(most),
];

const um = (range: Range): readonly string[] => each(range, micrometres);

function list(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ['', `  ${title}`, ...lines.map((line) => `    ${line}`)];
}
