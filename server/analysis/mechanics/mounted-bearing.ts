import type { StackBearing } from '../../assembly/bearings.ts';
import type { FilledHousing, FilledSeat } from '../../assembly/housings.ts';
import { asBuilt, type Limits, type Settled, type SettlingRules, settle } from '../../assembly/settle.ts';
import { type BallGeometry, grooveCentreDistance } from '../../engine/contact/ball-geometry.ts';
import { axialClearance } from '../../engine/play/axial-clearance.ts';
import type { VaryingPart } from '../../engine/play/build-clearance.ts';
import { type InnerGeometry, innerGeometry } from '../../engine/play/inner-geometry.ts';
import { interferenceSpread, type Spread, spreadOf } from '../../engine/seats/interference-spread.ts';
import { type ClearanceTaker, mountedClearance } from '../../engine/seats/mounted-clearance.ts';
import { type RangedValue, slidingForce } from '../../engine/seats/mounting-force.ts';
import { lossFactor, type PressFit, pressFit, type RingSeat } from '../../engine/seats/press-fit.ts';
import { effectiveInterference, type Finish } from '../../engine/seats/smoothing.ts';
import { type ExpansionPair, interferenceAt, thermalClearanceLoss } from '../../engine/seats/thermal.ts';
import { materials } from '../../engine/tables/materials.ts';
import type { Dimension } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import { angleAtClearance, angularContact, clearanceAtAngle } from './angular-contact.ts';
import { compoundHold } from './compound-hold.ts';
import type { Temperatures } from './conditions.ts';
import type { PartMaterial } from './material-of.ts';
import { mountedAssumptions } from './mounted-assumptions.ts';

/** One fit of a bearing, worked out at the means. */
export interface RingFit {
  /** Interference that works, after smoothing, mm; negative is clearance. */
  readonly interference: Spread;
  /** At the mean interference. */
  readonly fit: PressFit;
  readonly taker: ClearanceTaker;
  readonly seat: RingSeat;
  /** Interference as made, at 20 °C and before smoothing, mm; negative is clearance. */
  readonly made: Spread;
  readonly expansion: ExpansionPair;
  /** Yield of the seat's wall or of the axle, MPa; null where it is not known. */
  readonly wallYield: number | null;
  /** The two diameters that make it, each with its own straying. */
  readonly parts: readonly VaryingPart[];
}

/** A bearing in its seat and on its axle. Lengths in mm, pressures in MPa, forces in N. */
export interface MountedBearing {
  readonly address: string;
  readonly stack: StackBearing;
  readonly inner: InnerGeometry;
  readonly geometry: BallGeometry;
  /** Radial clearance before mounting, or that of a deep groove bearing with the same contact angle; null where no table has it. */
  readonly free: { readonly lo: number; readonly hi: number } | null;
  readonly outerFit: RingFit | null;
  readonly innerFit: RingFit | null;
  /** Radial clearance that temperature takes from rings and balls alone; negative where it adds to it. */
  readonly thermalLoss: number;
  /** Radial clearance when mounted; null where the clearance before is not known. */
  readonly mounted: Spread | null;
  /** Axial clearance from the mean mounted clearance; null where that is not known, and where one side alone carries. */
  readonly axial: number | null;
  /** Contact angle as made and as mounted, rad; null for a bearing that carries both ways. */
  readonly contactAngle: { readonly nominal: number; readonly mounted: number } | null;
  /** Width of the outer ring: what grips in the seat. */
  readonly width: number;
  /** Axial force the outer ring's grip in its seat holds, with a retaining compound where one is written. */
  readonly grip: number;
  /** What the compound adds to the grip; null where none is written. */
  readonly compound: RangedValue | null;
  readonly assumed: readonly string[];
}

/** What stands around a bearing. */
export interface Around {
  readonly housing: FilledHousing | null;
  readonly seat: FilledSeat | null;
  readonly shell: PartMaterial | null;
  /** Between shell and ring; its outside diameter, mm. */
  readonly sleeve: { readonly outside: number; readonly material: PartMaterial } | null;
  readonly journal: Placed<Dimension> | null;
  readonly axleBore: number;
  readonly axle: PartMaterial;
  readonly rules: SettlingRules;
  /** Of outer ring and seat, and of inner ring and axle. */
  readonly temperatures: Temperatures;
  /** Published K of its series, mm^½. */
  readonly factor: number | null;
}

const steel = materials['bearing steel'];

/** Works out the fits of one bearing and the clearance they leave; null where its code and size are unknown. */
export function mountBearing(
  stack: StackBearing,
  around: Around,
  how: 'drawn' | 'built',
): MountedBearing | null {
  const decoded = stack.bearing;
  if (!decoded) return null;
  const { balls, groove } = stack.part.values;
  const inner = innerGeometry({
    bore: decoded.bore,
    outside: decoded.outside,
    ownBalls: balls?.value ?? null,
    publishedBalls: decoded.balls,
    ownGroove: groove?.value ?? null,
    publishedFactor: around.factor,
  });
  const { geometry } = inner;
  const outerFit = outerRing(stack, around, geometry, how);
  const innerFit = innerRing(stack, around, geometry, how);
  const angular = angularContact(stack);
  const free = angular ? freeAtAngle(geometry, angular.angle) : freeByTable(decoded.clearance);
  const thermalLoss = thermalClearanceLoss(geometry.pitch, geometry.diameter, {
    ...around.temperatures,
    ringExpansion: steel.expansion,
    ballExpansion: (decoded.material === 'hybrid' ? materials['silicon nitride'] : steel).expansion,
  });
  const mounted = free
    ? mountedClearance({
        clearance: free,
        outer: outerFit?.taker ?? null,
        inner: innerFit?.taker ?? null,
        thermalLoss,
      }).clearance
    : null;
  const axial =
    mounted && !angular ? axialClearance(grooveCentreDistance(geometry), mounted.mean).axial : null;
  const nominal = angular?.angle ?? null;
  const contactAngle =
    nominal === null || !mounted ? null : { nominal, mounted: angleAtClearance(geometry, mounted.mean) };
  const width = stack.outerWidth ? asBuilt(stack.outerWidth).nominal : decoded.width;
  const compound = around.seat?.seat.values.compound?.value ? compoundHold(decoded.outside, width) : null;
  const pressed = outerFit
    ? slidingForce({ pressure: outerFit.fit.pressure, diameter: decoded.outside, length: width }).typical
    : 0;
  return {
    address: stack.address,
    stack,
    inner,
    geometry,
    free,
    outerFit,
    innerFit,
    thermalLoss,
    mounted,
    axial,
    contactAngle,
    width,
    grip: pressed + (compound?.typical ?? 0),
    compound,
    assumed: mountedAssumptions(stack, around, inner, outerFit !== null, compound),
  };
}

type Free = MountedBearing['free'];

function freeByTable({ minUm, maxUm }: { minUm: number | null; maxUm: number | null }): Free {
  return minUm === null || maxUm === null ? null : { lo: minUm / 1000, hi: maxUm / 1000 };
}

function freeAtAngle(geometry: BallGeometry, angle: number | null): Free {
  if (angle === null) return null;
  const clearance = clearanceAtAngle(geometry, angle);
  return { lo: clearance, hi: clearance };
}

function outerRing(
  stack: StackBearing,
  around: Around,
  geometry: BallGeometry,
  how: 'drawn' | 'built',
): RingFit | null {
  const bore = around.seat?.seat.values.bore;
  const wall = around.housing?.housing.values.outside;
  const { outside } = stack;
  if (
    !bore ||
    !wall ||
    !outside ||
    !around.shell ||
    (bore.value.tolerance.kind === 'none' && !bore.value.measured)
  )
    return null;
  const hole = settle(bore, around.rules);
  if (!areMates(hole, outside)) return null;
  const [ring, seatBore] = [deviations(outside, outside, how), deviations(hole, outside, how)];
  const made = interferenceSpread(ring, seatBore);
  const expansion = { inside: steel.expansion, outside: around.shell.expansion };
  const seat: RingSeat = {
    ring: 'outer',
    diameter: outside.drawn.nominal,
    raceway: geometry.pitch + geometry.diameter,
    material: steel,
    walls: wallsOf(around, wall.value.nominal, around.shell),
  };
  const basis = { made, expansion, wallYield: (around.sleeve?.material ?? around.shell).yield };
  return ringFit(seat, basis, around.temperatures.outer, 'turned', [
    varying(`outside of ${stack.address}`, 1, ring),
    varying(`bore of ${around.seat?.address}`, -1, seatBore),
  ]);
}

/** What the ring is pressed into: the shell, or a sleeve in it; the two are one body, held together before. */
function wallsOf({ sleeve }: Around, to: number, shell: PartMaterial): RingSeat['walls'] {
  const outermost = { to, E: shell.E, nu: shell.nu };
  if (!sleeve || to <= sleeve.outside) return [outermost];
  return [{ to: sleeve.outside, E: sleeve.material.E, nu: sleeve.material.nu }, outermost];
}

function innerRing(
  stack: StackBearing,
  around: Around,
  geometry: BallGeometry,
  how: 'drawn' | 'built',
): RingFit | null {
  const { journal } = around;
  const { bore } = stack;
  if (!journal || !bore || (journal.value.tolerance.kind === 'none' && !journal.value.measured)) return null;
  const axle = settle(journal, around.rules);
  if (!areMates(axle, bore)) return null;
  const [shaft, ring] = [deviations(axle, bore, how), deviations(bore, bore, how)];
  const made = interferenceSpread(shaft, ring);
  const expansion = { inside: around.axle.expansion, outside: steel.expansion };
  const seat: RingSeat = {
    ring: 'inner',
    diameter: bore.drawn.nominal,
    raceway: geometry.pitch - geometry.diameter,
    material: steel,
    walls: [{ to: around.axleBore, E: around.axle.E, nu: around.axle.nu }],
  };
  const basis = { made, expansion, wallYield: around.axle.yield };
  return ringFit(seat, basis, around.temperatures.inner, 'ground', [
    varying(`axle under ${stack.address}`, 1, shaft),
    varying(`bore of ${stack.address}`, -1, ring),
  ]);
}

/** Diameters that differ by more than this, mm, belong to another size: that is said, and no fit is reckoned. */
const otherSize = 0.5;

const areMates = (seat: Settled, ring: Settled): boolean =>
  Math.abs(seat.drawn.nominal - ring.drawn.nominal) <= otherSize;

function atTemperature(
  made: Spread,
  diameter: number,
  expansion: ExpansionPair,
  temperature: number,
): Spread {
  const at = (value: number): number => interferenceAt(value, diameter, expansion, temperature);
  return { ...made, least: at(made.least), mean: at(made.mean), most: at(made.most) };
}

const varying = (
  id: string,
  weight: 1 | -1,
  { lower, upper }: { lower: number; upper: number },
): VaryingPart => ({
  id,
  weight,
  sigma: spreadOf(lower, upper).sigma,
});

function ringFit(
  seat: RingSeat,
  basis: Pick<RingFit, 'made' | 'expansion' | 'wallYield'>,
  temperature: number,
  finish: Finish,
  parts: readonly VaryingPart[],
): RingFit {
  const made = atTemperature(basis.made, seat.diameter, basis.expansion, temperature);
  const works = (value: number): number => effectiveInterference(value, seat.diameter, finish);
  const interference = { ...made, least: works(made.least), mean: works(made.mean), most: works(made.most) };
  const taker = { interference: made, diameter: seat.diameter, finish, lossFactor: lossFactor(seat) };
  return { ...basis, interference, fit: pressFit(seat, interference.mean), taker, seat, parts };
}

/** Deviations from the nominal of the ring that both mating parts are referred to, mm. */
function deviations(part: Settled, ring: Settled, how: 'drawn' | 'built'): { lower: number; upper: number } {
  const limits: Limits = how === 'built' ? asBuilt(part) : part.drawn;
  const off = limits.nominal - ring.drawn.nominal;
  return { lower: off + limits.lower, upper: off + limits.upper };
}
