import { type Assembly, type AssemblyLimits, assemble } from '../../assembly/assemble.ts';
import { flangeOf, flangePlaces } from '../../assembly/flange-places.ts';
import { resolveVariants } from '../../assembly/variants.ts';
import type { FlangeValues, Named, Position, Side } from '../../spec/model.ts';
import type { Wheel } from '../../spec/wheel-model.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import type { Surroundings } from '../analyze.ts';
import { lacks, type Notes, type Size, sizeOf } from './notes.ts';

/** One flange as the wheel needs it. */
export interface WheelFlange {
  readonly side: Side;
  readonly flange: Named<FlangeValues>;
  readonly holes: number | null;
  /** Middle of the flange from the middle between the dropouts, towards its own side, mm. */
  readonly offset: Size | null;
  readonly circle: Size | null;
  readonly hole: Size | null;
  readonly thickness: Size | null;
  readonly pair: Size | null;
  /** Straight-pull: circle of the heads and how far a head sits behind the point of touch, mm. */
  readonly headCircle: Size | null;
  readonly setback: Size | null;
  readonly straightPull: boolean;
}

/** The hub a wheel is built on. */
export interface WheelHub {
  readonly file: string;
  readonly name: string;
  readonly variant: string | null;
  readonly position: Position | null;
  readonly assembly: Assembly;
  readonly flanges: Readonly<Record<Side, WheelFlange | null>>;
}

/** Follows the wheel to its hub and reads the flanges of the variant; null where the hub or the variant is not there. */
export function hubOfWheel(
  wheel: Wheel,
  surroundings: Surroundings,
  workshop: Workshop | null,
  limits: AssemblyLimits,
  notes: Notes,
): WheelHub | null {
  const state = surroundings.references.find(({ path }) => path[0] === 'hub')?.state;
  const hub = state?.kind === 'found' ? state.document.hub : undefined;
  if (state?.kind !== 'found' || !hub) {
    lacks(notes, 'the whole wheel', 'a hub file that can be read', wheel.values.hub?.path ?? []);
    return null;
  }
  const [written, ...variants] = resolveVariants(hub);
  const wanted = wheel.values.variant;
  const resolved = wanted ? variants.find(({ name }) => name === wanted.value) : written;
  if (!written || !resolved) {
    lacks(notes, 'the whole wheel', `variant ${wanted?.value ?? ''} in the hub file`, wanted?.path ?? []);
    return null;
  }
  const asWritten = assemble(written, workshop, limits);
  const assembly = resolved === written ? asWritten : assemble(resolved, workshop, limits);
  const places = flangePlaces(assembly, asWritten);
  // Other end caps move the shell; only a bearing whose seat is known says how far.
  const placed =
    assembly === asWritten || (assembly.shell?.seats.some(({ contact }) => contact?.at) ?? false);
  if (!placed)
    lacks(
      notes,
      `where the flanges of ${resolved.name ?? ''} stand`,
      'seat: shell.left or shell.right of a bearing in the hub file',
      wanted?.path ?? [],
    );
  const flangeAt = (side: Side): WheelFlange | null => {
    const place = flangeOf(places, side);
    if (!place) {
      lacks(notes, `the ${side} side`, `shell.flanges.${side} in the hub file`, wheel.values.hub?.path ?? []);
      return null;
    }
    return wheelFlange(side, place.flange, placed ? place.fromMiddle : null, assembly);
  };
  return {
    file: state.file,
    name: hub.values.hub?.value ?? '',
    variant: resolved.name,
    position: resolved.values.position?.value ?? null,
    assembly,
    flanges: { left: flangeAt('left'), right: flangeAt('right') },
  };
}

function wheelFlange(
  side: Side,
  flange: Named<FlangeValues>,
  fromMiddle: number | null,
  { rules }: Assembly,
): WheelFlange {
  const { values } = flange;
  const written = sizeOf(values['from-centre'], rules);
  return {
    side,
    flange,
    holes: values.holes?.value ?? null,
    offset:
      fromMiddle === null || written === null
        ? null
        : { value: side === 'right' ? fromMiddle : -fromMiddle, stray: written.stray },
    circle: sizeOf(values.circle, rules),
    hole: sizeOf(values.hole, rules),
    thickness: sizeOf(values.thickness, rules),
    pair: sizeOf(values['pair-distance'], rules),
    headCircle: sizeOf(values['head-circle'], rules),
    setback: sizeOf(values['head-setback'], rules),
    straightPull: values.kind?.value === 'straight-pull',
  };
}
