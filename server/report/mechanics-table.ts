import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { ResolvedLimits } from '../analysis/limits.ts';
import { anglesInBrief } from '../analysis/mechanics/angular-contact.ts';
import type { Clamp } from '../analysis/mechanics/clamp-of.ts';
import { clampedInBrief, leaveInBrief } from '../analysis/mechanics/cones-in-brief.ts';
import { type ConeMechanics, isConeWorked } from '../analysis/mechanics/cup-cone.ts';
import { geometryRange } from '../analysis/mechanics/geometry-range.ts';
import type { LineMechanics } from '../analysis/mechanics/line-mechanics.ts';
import type { MountedBearing, RingFit } from '../analysis/mechanics/mounted-bearing.ts';
import { isWorked, type PairMechanics } from '../analysis/mechanics/pair-mechanics.ts';
import { endsInBrief } from '../analysis/mechanics/range-in-brief.ts';
import { settingInBrief } from '../analysis/mechanics/setting-in-brief.ts';
import { force, micrometres, stress } from '../engine/base/figures.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Gravity } from './loop-table.ts';

/** A table as people read it; the first cell of a row names it. */
export interface MechanicsTable {
  readonly titles: readonly string[];
  readonly rows: readonly MechanicsRow[];
}

export interface MechanicsRow {
  readonly cells: readonly string[];
  readonly gravity: Gravity | null;
  /** The value to look at first. */
  readonly path: SpecPath;
}

/** Play and load of each pair of a variant; a pair that could not be worked out says what it lacks. */
export function playTable(variant: VariantAnalysis, limits: ResolvedLimits): MechanicsTable {
  const { pairs, clamp, lines, cups } = variant.mechanics('built');
  const mostPlay = limits.value('play-clamped');
  return {
    titles: ['Pair', 'Verdict', 'Play on the bench', 'Clamped', 'Clamp shortens', 'Load', 'Contact stress'],
    rows: [
      ...pairs.map((pair, index): MechanicsRow => {
        const loop = variant.pairs[index]?.loop;
        const set = isWorked(pair) ? pair.setting?.path : undefined;
        const path =
          set ?? loop?.inner.find(({ key }) => key === 'length')?.path ?? loop?.terms[0]?.path ?? [];
        const name = loop?.bearings.join(' to ') ?? '';
        if (!isWorked(pair))
          return { cells: [name, `needs ${pair.missing}`, '', '', '', '', ''], gravity: null, path };
        const { said, gravity } = playVerdict(pair, clamp, mostPlay);
        return { cells: [name, said, ...playCells(pair, clamp)], gravity, path };
      }),
      ...lines.map((line) => lineRow(variant, line, clamp)),
      ...(isConeWorked(cups) ? [coneRow(cups, clamp, mostPlay)] : []),
    ],
  };
}

/** A hub set by cones. */
function coneRow(cones: ConeMechanics, clamp: Clamp | null, mostPlay: number): MechanicsRow {
  const { races, set, result, leave, missing, setAt: path } = cones;
  const name = races.join(' to ');
  const bench = set ? micrometres(set.play) : '';
  if (!clamp || !result) {
    const needs = set ? `needs ${missing.join(', ')}` : leaveInBrief(cones);
    const said = clamp ? needs : 'no clamp is written to reckon with';
    return { cells: [name, said, bench, '', clamp ? micrometres(leave) : '', '', ''], gravity: null, path };
  }
  const pair = { result, setting: null };
  const { said, gravity } = playVerdict(pair, clamp, mostPlay);
  const [, ...cells] = playCells(pair, clamp);
  return {
    cells: [name, result.ballLoad > 0 ? (clampedInBrief(cones, clamp) ?? said) : said, bench, ...cells],
    gravity,
    path,
  };
}

/** All bearings of a housing with more than two. */
function lineRow(variant: VariantAnalysis, line: LineMechanics, clamp: Clamp | null): MechanicsRow {
  const { bearings, housing, playUnclamped, playClampedSigned, stops } = line;
  const path =
    [variant.assembly.shell, variant.assembly.freehub].find((filled) => filled?.housing.name === housing)
      ?.housing.path ?? [];
  const name = `all ${bearings.length} of the ${housing}`;
  const bench = sayLinePlay(playUnclamped);
  if (!clamp)
    return {
      cells: [name, 'no clamp is written to reckon with', bench, '', '', '', ''],
      gravity: null,
      path,
    };
  const load = Math.max(...bearings.map(({ force: one }) => Math.abs(one)));
  const isOpen = !Number.isFinite(playClampedSigned);
  const tight = playClampedSigned < 0;
  const said = isOpen
    ? 'nothing closes the line'
    : tight
      ? `tightest between ${stops.left} and ${stops.right}`
      : 'the balls run free';
  const most = Math.max(...bearings.map(({ contactStress }) => contactStress));
  return {
    cells: [
      name,
      said,
      bench,
      sayLinePlay(playClampedSigned),
      '',
      load > 0 ? force(load) : 'none',
      load > 0 ? stress(most) : '',
    ],
    gravity: isOpen ? 'error' : tight ? 'warning' : null,
    path,
  };
}

function sayLinePlay(play: number): string {
  if (!Number.isFinite(play)) return 'nothing closes it';
  return play < 0 ? 'none' : micrometres(play);
}

function playVerdict(
  { result, setting }: Pick<PairMechanics, 'result' | 'setting'>,
  clamp: Clamp | null,
  mostPlay: number,
): { readonly said: string; readonly gravity: Gravity | null } {
  if (!Number.isFinite(result.playClampedSigned))
    return { said: 'nothing closes the pair', gravity: 'error' };
  if (setting?.kind === 'spring') return { said: settingInBrief(setting), gravity: null };
  if (!clamp) return { said: 'no clamp is written to reckon with', gravity: null };
  const { playClamped } = result;
  const tightness = tightWords(result);
  if (tightness !== null) return { said: tightness, gravity: 'warning' };
  if (mostPlay < playClamped) {
    const over = micrometres(playClamped - mostPlay);
    return { said: `${over} over the most wanted, ${micrometres(mostPlay)}`, gravity: 'warning' };
  }
  return { said: 'the balls run free', gravity: null };
}

/** What leaves a pair no play; null where there is some. */
function tightWords({ ballLoad, loadedBy, spacerReached, slid }: PairMechanics['result']): string | null {
  if (!spacerReached) return 'the balls carry the whole clamp: the rings do not reach the spacer';
  if (slid !== 'no') return 'the outer rings are pushed along their seats';
  if (ballLoad <= 0) return null;
  return `loaded: the inner rings are pressed ${loadedBy === 'short' ? 'together' : 'apart'}`;
}

function playCells(
  { result, setting }: Pick<PairMechanics, 'result' | 'setting'>,
  clamp: Clamp | null,
): readonly string[] {
  const { playUnclamped, playClamped, clampShortening, ballLoad, slid, left, right } = result;
  const bench = Number.isFinite(playUnclamped) ? micrometres(playUnclamped) : 'nothing closes it';
  if (setting?.kind === 'spring')
    return [
      'taken up',
      'taken up',
      '',
      force(ballLoad),
      stress(Math.max(left.contactStress, right.contactStress)),
    ];
  if (!clamp) return [bench, '', '', '', ''];
  const free = Number.isFinite(playUnclamped) ? micrometres(playClamped) : 'nothing closes it';
  const clamped = ballLoad > 0 || slid !== 'no' ? 'none' : free;
  const loaded =
    ballLoad > 0
      ? [force(ballLoad), stress(Math.max(left.contactStress, right.contactStress))]
      : ['none', ''];
  return [bench, clamped, micrometres(clampShortening), ...loaded];
}

/** Fits and clearance of each bearing of a variant. */
export function fitTable(variant: VariantAnalysis): MechanicsTable {
  return {
    titles: [
      'Bearing',
      'Mounted clearance',
      'Along the axle',
      'Before mounting',
      'Taken by the fits',
      'Outer ring tight by',
      'Seat pressure',
      'Inner ring tight by',
    ],
    rows: variant.mechanics('built').bearings.map((bearing) => ({
      cells: [bearing.address, ...fitCells(bearing)],
      gravity: null,
      path: bearing.stack.from,
    })),
  };
}

function fitCells(bearing: MountedBearing): readonly string[] {
  const { mounted, free, axial, outerFit, innerFit, contactAngle } = bearing;
  const estimated = geometryRange(bearing)?.axial;
  const taken = (outerFit?.fit.clearanceLoss ?? 0) + (innerFit?.fit.clearanceLoss ?? 0);
  return [
    contactAngle ? anglesInBrief(contactAngle) : mounted ? spread(mounted) : 'not in the tables',
    axial === null ? '' : `${micrometres(axial)}${estimated ? ` (${endsInBrief(estimated)})` : ''}`,
    free && !contactAngle ? range(free.lo, free.hi) : '',
    micrometres(taken),
    tight(outerFit),
    outerFit ? stress(outerFit.fit.pressure) : '',
    tight(innerFit),
  ];
}

const tight = (fit: RingFit | null): string => (fit ? spread(fit.interference) : '');

function spread({
  least,
  mean,
  most,
}: {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}): string {
  return `${micrometres(mean)} (${range(least, most)})`;
}

const range = (lo: number, hi: number): string =>
  `${micrometres(lo).replace(' µm', '')} to ${micrometres(hi)}`;
