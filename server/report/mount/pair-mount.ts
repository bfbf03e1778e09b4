import { turningTorque } from '../../analysis/life/turning-torque.ts';
import type { Clamp } from '../../analysis/mechanics/clamp-of.ts';
import type { MountedBearing } from '../../analysis/mechanics/mounted-bearing.ts';
import { isClosed, type PairMechanics } from '../../analysis/mechanics/pair-mechanics.ts';
import { asBuilt } from '../../assembly/settle.ts';
import { grooveCentreDistance } from '../../engine/contact/ball-geometry.ts';
import { type RockedBearing, rimRock } from '../../engine/play/rim-rock.ts';

/** A pair as it is felt: mm, N, MPa. What needs a clamp is null without one. */
export interface PairMount {
  readonly housing: string;
  readonly bearings: readonly [string, string];
  /** δ at the means and at the temperature asked for. */
  readonly delta: number;
  readonly axialClearance: number | null;
  /** Signed; null where nothing closes the pair. */
  readonly playUnclamped: number | null;
  readonly playShoulders: number | null;
  readonly playClamped: number | null;
  readonly clampShortening: number | null;
  readonly ballLoad: number | null;
  readonly spacerLoad: number | null;
  readonly contactStress: number | null;
  /** Greatest force of a ball over the one that dents its groove for good. */
  readonly dentShare: number | null;
  /** Torque that starts the pair against its load, and that of its rubbing seals, N·mm; null where the series has no constants. */
  readonly turningTorque: { readonly load: number; readonly seals: number | null } | null;
  /** Axial load as a static equivalent load over C0 of the weaker bearing. */
  readonly staticShare: number | null;
  /** What loads the bearings: nothing, inner rings driven together, or inner rings driven apart. */
  readonly loadedBy: 'nothing' | 'short' | 'long' | null;
  /** Axial force at which an outer ring leaves its place, the weaker of the two grips. */
  readonly grip: number;
  readonly slid: 'no' | 'left' | 'right' | 'either';
  /** Travel of a rim of `rimRadius` from side to side, before clamping; null where it is not worked out. */
  readonly rimRock: number | null;
  /** Set by hand, or sprung; null where the parts between the rings set the distance. */
  readonly setting: PairMechanics['setting'];
  readonly assumed: readonly string[];
}

/** Half the bead seat diameter of 622 mm, which most wheels have; ISO 5775-1. */
export const rimRadius = 311;

/** Gathers what a pair comes to. */
export function pairMount(pair: PairMechanics, clamp: Clamp | null): PairMount {
  const { result, loop, input, left, right } = pair;
  // A spring presses whether or not anything is clamped.
  const clamped = clamp || pair.setting?.kind === 'spring' ? result : null;
  const torque = clamped ? turningTorque(pair) : null;
  return {
    housing: loop.housing,
    bearings: loop.bearings,
    delta: input.mismatch,
    axialClearance: pair.axial,
    playUnclamped: finite(result.playUnclamped),
    playShoulders: finite(result.playShoulders),
    playClamped: isClosed(pair) ? finite(clamped?.playClamped) : null,
    clampShortening: finite(clamped?.clampShortening),
    ballLoad: finite(clamped?.ballLoad),
    spacerLoad: finite(clamped?.spacerLoad),
    contactStress: clamped ? Math.max(clamped.left.contactStress, clamped.right.contactStress) : null,
    dentShare: clamped ? Math.max(clamped.left.dentShare, clamped.right.dentShare) : null,
    turningTorque: torque && { load: torque.load, seals: torque.seals },
    staticShare: torque?.staticShare ?? null,
    loadedBy: clamped?.loadedBy ?? null,
    grip: Math.min(left.grip, right.grip),
    slid: clamped?.slid ?? 'no',
    rimRock: rockOf(pair),
    setting: pair.setting,
    assumed: pair.assumed,
  };
}

/** Rock before clamping of two deep groove bearings; angular ones are left out, their groove centres stand apart. */
function rockOf(pair: PairMechanics): number | null {
  const { left, right, input, loop } = pair;
  if (input.left.carries !== 'both' || input.right.carries !== 'both') return null;
  const inner = loop.inner.reduce(
    (sum, { sign, count, settled }) => sum + sign * count * asBuilt(settled).nominal,
    0,
  );
  const half = (inner + (left.width + right.width) / 2) / 2;
  const one = rocked(left, -half, -input.mismatch / 2);
  const other = rocked(right, half, input.mismatch / 2);
  return one && other ? rimRock([one, other], rimRadius).travel : null;
}

function rocked({ geometry, mounted }: MountedBearing, at: number, offset: number): RockedBearing | null {
  if (!mounted) return null;
  const reach = grooveCentreDistance(geometry);
  return { at, offset, reach, centres: reach - mounted.mean / 2, radius: geometry.pitch / 2 };
}

const finite = (value: number | undefined): number | null =>
  value !== undefined && Number.isFinite(value) ? value : null;
