import type { SettlingRules } from '../../assembly/settle.ts';
import { endBand, nippleFacts, spokeThreads } from '../../engine/tables/spoke-facts.ts';
import { elasticLength } from '../../engine/wheel/elastic-length.ts';
import { type NippleFit, nippleFit, nippleThread } from '../../engine/wheel/nipple-thread.ts';
import { lengthSensitivity, spokeLength } from '../../engine/wheel/spoke-line.ts';
import { millimetreSteps, stockedLength } from '../../engine/wheel/stocked-length.ts';
import type { SpecPath } from '../../spec/place.ts';
import { readSpokeProfile } from '../../spec/spoke-profile.ts';
import type { SpokeProfile, Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { assumes, type Notes, sizeOf } from './notes.ts';
import type { WheelRim } from './rim-of-wheel.ts';
import type { SpokeGroup, WheelSide } from './wheel-spokes.ts';

/** Length of the spokes of one group, mm. Its end is wanted level with the bottom of the slot. */
export interface GroupLength {
  /** By geometry alone. */
  readonly exact: number;
  /** With the stretch of the spoke and the draw of the rim at the tension wanted. */
  readonly corrected: number;
  /** What is written, else what is proposed. */
  readonly chosen: number;
  /** The nearest that is in stock, or in steps of a millimetre. */
  readonly proposed: number;
  /** Where the length stands in the file; null where none is written. */
  readonly written: { readonly value: number; readonly path: SpecPath } | null;
  /** How far the exact length may stray with the sizes it comes from, ±. */
  readonly stray: number;
  /** Whether the lengths to choose from are those of the workshop file. */
  readonly fromStock: boolean;
}

/** Length and nipple of one group. */
export interface GroupFit {
  readonly length: GroupLength;
  readonly nipple: NippleFit;
  /** How far the end may stand below (−) or above the bottom of the slot, mm. */
  readonly band: { readonly lo: number; readonly hi: number };
}

/** Loads and surroundings that lengths are worked out with. */
interface FitContext {
  /** N */
  readonly tension: number;
  /** Of the rim's radius, mm. */
  readonly shrinkage: number;
  readonly workshop: Workshop | null;
  readonly rules: SettlingRules;
  readonly notes: Notes;
}

/**
 * Lengths of the groups of one side and how they sit in their nipples, in the order of its groups. One length is
 * proposed for the whole side where every group can take it.
 */
export function sideFits(
  wheel: Wheel,
  side: WheelSide,
  rim: WheelRim,
  context: FitContext,
): readonly GroupFit[] {
  const { rules, notes, workshop } = context;
  const band = bandOf(wheel, notes);
  const thread = threadOf(wheel, side, rules, notes);
  const inside = threadInside(wheel, rules, notes);
  const stock = stockOf(side.profile, workshop);
  const lengths = side.groups.map((group) => bareLength(side, group, rim, context));
  const nearest = (ideal: number): number =>
    stockedLength(ideal, stock ?? millimetreSteps(ideal), band)?.length ?? ideal;
  const middle = lengths.reduce((sum, { corrected }) => sum + corrected, 0) / lengths.length;
  const one = nearest(middle);
  const forAll = lengths.every(({ corrected }) => band.lo <= one - corrected && one - corrected <= band.hi);
  return side.groups.map((group, at): GroupFit => {
    const length = lengths[at] ?? { exact: middle, corrected: middle, stray: 0 };
    const proposed = forAll ? one : nearest(length.corrected);
    const written = writtenLength(wheel, group);
    const chosen = written?.value ?? proposed;
    return {
      length: { ...length, chosen, proposed, written, fromStock: stock !== null },
      nipple: nippleFit(chosen - length.corrected, thread, inside),
      band,
    };
  });
}

function bareLength(
  side: WheelSide,
  group: SpokeGroup,
  rim: WheelRim,
  { tension, shrinkage, notes }: FitContext,
): Pick<GroupLength, 'exact' | 'corrected' | 'stray'> {
  const line = { ...group.line, rimRadius: rim.slotRadius.value };
  const hole = group.head === 'straight-pull' ? 0 : holeOf(side, notes);
  const slopes = lengthSensitivity(line);
  const circle = group.head === 'straight-pull' ? side.flange.headCircle : side.flange.circle;
  return {
    exact: spokeLength(line, hole),
    corrected: elasticLength(line, hole, { tension, shrinkage, axial: group.axial }).length,
    stray:
      Math.abs(slopes.rimDiameter * 2 * rim.slotRadius.stray) +
      Math.abs(slopes.holeCircle * (circle?.stray ?? 0)) +
      Math.abs(slopes.flangeOffset * (side.flange.offset?.stray ?? 0)),
  };
}

function bandOf(wheel: Wheel, notes: Notes): GroupFit['band'] {
  const material = wheel.nipples?.values.material?.value;
  if (material === undefined) assumes(notes, 'nipples taken as brass: material is not written');
  return /brass/i.test(material ?? 'brass') ? endBand.brass : endBand.aluminium;
}

function holeOf(side: WheelSide, notes: Notes): number {
  const written = side.flange.hole?.value;
  if (written !== undefined) return written;
  const wire = side.profile.diameters[0] ?? 2;
  const hole = wire + 0.5;
  assumes(
    notes,
    `spoke holes of the ${side.side} flange taken as ${hole.toFixed(1)} mm: hole is not written`,
  );
  return hole;
}

function threadOf(wheel: Wheel, { side }: WheelSide, rules: SettlingRules, notes: Notes): number {
  const written = sizeOf(wheel.spokes[side]?.values['thread-length'], rules);
  if (!written) assumes(notes, `thread of the spokes taken as ${nippleFacts.threadLength} mm long`);
  return written?.value ?? nippleFacts.threadLength;
}

function threadInside(wheel: Wheel, rules: SettlingRules, notes: Notes): number {
  const written = sizeOf(wheel.nipples?.values.length, rules);
  if (!written) assumes(notes, 'nipples taken as 12 mm long: length is not written');
  const inside = nippleThread(written?.value ?? 12);
  assumes(notes, `nipples taken to have ${inside} mm of thread below the slot`);
  return inside;
}

function writtenLength(wheel: Wheel, { side, head }: SpokeGroup): GroupLength['written'] {
  const values = wheel.spokes[side]?.values;
  const own = head === 'straight-pull' ? undefined : values?.[`${head}-length`];
  const placed = own ?? values?.length;
  return placed ? { value: placed.value.nominal, path: placed.path } : null;
}

/** Lengths of the workshop file for a profile, however it is spelled there; null where it lists none. */
function stockOf(profile: SpokeProfile, workshop: Workshop | null): readonly number[] | null {
  const key = ({ diameters, blade }: SpokeProfile): string => JSON.stringify([diameters, blade]);
  for (const [written, { value }] of Object.entries(workshop?.stock.spokes ?? {})) {
    const reading = readSpokeProfile(written);
    if ('value' in reading && key(reading.value) === key(profile) && value.length > 0) return value;
  }
  return null;
}

/** Pitch of the thread of a side's spokes, mm: as written, else by the wire at their end. */
export function threadPitch(wheel: Wheel, side: WheelSide): number {
  const name = wheel.spokes[side.side]?.values.thread?.value ?? 'FG 2.3';
  return spokeThreads[name].pitch;
}
