import type { WheelLoad } from '../../engine/life/wheel-loads.ts';
import { chainPull, rotorForce } from '../../engine/life/wheel-loads.ts';
import type { Quantity } from '../../spec/model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { VariantAnalysis } from '../analyze.ts';

/** What is ridden, as far as it is written, with what was taken for granted. */
export interface Duty {
  /** Vertical load of the wheel, N. */
  readonly vertical: number;
  /** mm */
  readonly circumference: number;
  readonly assumed: readonly string[];
}

/** One way of riding and the share of the way it takes. */
export interface WheelCase {
  readonly name: 'straight on' | 'leaning left' | 'leaning right' | 'braking';
  readonly share: number;
  readonly load: Omit<WheelLoad, 'plane' | 'span' | 'others'>;
  /** Force of a rotor on the hub, upwards, N; where the rotor stands is the hub's business. */
  readonly rotorUp: number;
}

/** m/s² */
export const gravity = 9.80665;

/** What is taken where nothing is written; from memory, for comparison only. */
export const usual = {
  /** kg */
  rider: 85,
  bicycle: 12,
  /** Share of the weight on each wheel. */
  share: { front: 0.45, rear: 0.55 },
  /** mm */
  circumference: 2150,
  /** Of the vertical load, while the bicycle is steered or rocked, and the share of the way each side takes. */
  side: 0.1,
  sideShare: 0.1,
  /** Brake force over the vertical load of the wheel, and the share of the way that is braked. */
  braking: 0.3,
  brakingShare: 0.02,
  /** Radius on which pads work, mm. */
  rotor: 75,
  /** Power at the pedals, W, speed, m/s, and teeth of the sprocket. */
  power: 150,
  speed: 25 / 3.6,
  teeth: 17,
} as const;

/** The duty of a hub: its own `duty`, else the workshop's rider, else what is usual, said so. */
export function dutyOf(
  { assembly }: VariantAnalysis,
  workshop: Workshop | null,
  riderMass: number | null,
): Duty {
  const { values, duty } = assembly.hub;
  const written = duty?.values;
  const assumed: string[] = [];
  const mass = (placed: Quantity | undefined, otherwise: number, what: string): number => {
    if (placed) return placed.value;
    assumed.push(`${what} taken as ${otherwise} kg`);
    return otherwise;
  };
  const rider =
    riderMass ??
    mass(written?.rider?.value ?? workshop?.defaults.rider?.value ?? undefined, usual.rider, 'rider');
  const bicycle = mass(written?.bicycle?.value, usual.bicycle, 'bicycle');
  const position = values.position?.value ?? 'front';
  const share = written?.share?.value ?? usual.share[position];
  if (!written?.share) assumed.push(`${Math.round(share * 100)} % of the weight taken to rest on this wheel`);
  const circumference = written?.circumference?.value.nominal ?? usual.circumference;
  if (!written?.circumference) assumed.push(`circumference of the tyre taken as ${circumference} mm`);
  assumed.push(
    `a side force of ${usual.side * 100} % of the wheel's load on ${usual.sideShare * 100} % of the way to each side; no bumps`,
  );
  return { vertical: (rider + bicycle) * share * gravity, circumference, assumed };
}

/** How the wheel is loaded along the way; `braked` where a rotor is written. */
export function wheelCases({ vertical, circumference }: Duty, braked: boolean): readonly WheelCase[] {
  const tyreRadius = circumference / (2 * Math.PI);
  const ride = { vertical, lateral: 0, forward: 0, tyreRadius };
  const side = usual.side * vertical;
  const slowing = braked ? usual.brakingShare : 0;
  const force = usual.braking * vertical;
  const cases: readonly WheelCase[] = [
    { name: 'straight on', share: 1 - 2 * usual.sideShare - slowing, load: ride, rotorUp: 0 },
    { name: 'leaning left', share: usual.sideShare, load: { ...ride, lateral: -side }, rotorUp: 0 },
    { name: 'leaning right', share: usual.sideShare, load: { ...ride, lateral: side }, rotorUp: 0 },
    {
      name: 'braking',
      share: slowing,
      load: { ...ride, forward: -force },
      // Pads behind the axle meet a rotor that comes up there, and press it down.
      rotorUp: -rotorForce(force, tyreRadius, usual.rotor),
    },
  ];
  return cases.filter(({ share }) => 0 < share);
}

/** Said where a rotor is written. */
export const brakingAssumed = `braking with ${usual.braking} of the wheel's load on ${usual.brakingShare * 100} % of the way, pads behind the axle on a radius of ${usual.rotor} mm`;

/** Steady pull of the chain, N, at usual power and speed. */
export function steadyChainPull(circumference: number): number {
  const drive = usual.power / usual.speed;
  const pitchDiameter = 12.7 / Math.sin(Math.PI / usual.teeth);
  return chainPull(drive * (circumference / (2 * Math.PI)), pitchDiameter);
}

/** Said where a chain pulls. */
export const chainAssumed = `chain pull of ${usual.power} W at ${usual.speed * 3.6} km/h on a sprocket of ${usual.teeth} teeth in the middle of the freehub`;
