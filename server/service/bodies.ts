import type { VariantAnalysis } from '../analysis/analyze.ts';
import { section } from '../assembly/section.ts';
import type { SectionPart } from '../assembly/section-shape.ts';
import { type Body, type Tube, tubeOf } from './body.ts';

/** A diameter that decides what passes what and that nobody wrote. */
export interface ToMeasure {
  readonly address: string;
  readonly what: 'inside' | 'outside';
  /** `bore through the shell`, `inside of spacer.centre`. */
  readonly words: string;
}

/** The pieces of a hub in their places, with what was taken for granted and what to measure to be sure. */
export interface Bodies {
  readonly bodies: readonly Body[];
  /** Sentences, one for each thing assumed. */
  readonly assumed: readonly string[];
  /** Dimensions nobody wrote that the order of work rests on. */
  readonly measure: readonly ToMeasure[];
}

/** Cuts a variant into the pieces that come apart: collars stay on their axle, a bearing is one piece. */
export function bodiesOf(variant: VariantAnalysis): Bodies {
  const cut = section(variant.assembly);
  const parts = cut.parts.filter(({ kind }) => kind !== 'rotor-face' && kind !== 'driver-face');
  const collars = parts.filter(({ kind }) => kind === 'collar');
  const drawnAxle = parts.find(({ kind }) => kind === 'axle');
  const axle = drawnAxle ?? collars[0];
  const assumed = [...cut.assumed];
  if (!drawnAxle && axle)
    assumed.push('a collar is part of an axle that is not written: it carries the whole stack');
  const bodies = parts.flatMap((part): readonly Body[] => {
    if (part === axle) return [axleBody(part, collars, drawnAxle ? [] : core(parts))];
    if (part.kind === 'collar' || part.kind === 'axle') return [];
    return [
      bodyOf(
        part,
        tubesOf(part, parts),
        part.kind === 'retaining-ring' ? { squeezed: squeezed(part, variant) } : {},
      ),
    ];
  });
  return { bodies: named(bodies), assumed, measure: toMeasure(parts) };
}

/** Two parts of one name are a fault that is said elsewhere; here each needs a name of its own. */
function named(bodies: readonly Body[]): readonly Body[] {
  const seen = new Map<string, number>();
  return bodies.map((body) => {
    const count = (seen.get(body.address) ?? 0) + 1;
    seen.set(body.address, count);
    return count === 1 ? body : { ...body, address: `${body.address} (${count})` };
  });
}

function bodyOf(part: SectionPart, tubes: readonly Tube[], more: Partial<Body> = {}): Body {
  const { address, kind, path } = part;
  return {
    address,
    kind,
    path,
    tubes: tubes.filter(({ left, right }) => left < right),
    with: [],
    squeezed: null,
    part,
    ...more,
  };
}

/** A ring for bores is closed until it passes the bore of its seat; its inside gives way by as much. */
function squeezed(part: SectionPart, { assembly }: VariantAnalysis): Tube | null {
  const [ring] = part.steps;
  const seats = [assembly.shell, assembly.freehub].flatMap((housing) => housing?.seats ?? []);
  const seat = seats.find(({ address }) => part.address === `${address}.retaining-ring`);
  if (!ring || !seat) return null;
  const bearing = seat.contact?.bearing?.outside?.drawn.nominal ?? ring.outside;
  const bore = Math.min(ring.outside, seat.seat.values.bore?.value.nominal ?? bearing);
  return { ...tubeOf(ring), outside: bore, inside: ring.inside - (ring.outside - bore) };
}

function axleBody(axle: SectionPart, collars: readonly SectionPart[], more: readonly Tube[]): Body {
  const own = axle.kind === 'axle' ? axle.steps.map(tubeOf) : [];
  return bodyOf(axle, [...own, ...more, ...collars.flatMap(({ steps }) => steps.map(tubeOf))], {
    address: 'axle',
    kind: 'axle',
    with: collars.map(({ address }) => address),
  });
}

/** What a collar without an axle is turned from: a rod through everything, as thick as the smallest bore lets it be. */
function core(parts: readonly SectionPart[]): readonly Tube[] {
  const bearings = parts.flatMap(({ bearing }) => bearing ?? []);
  if (bearings.length === 0) return [];
  const outside = Math.min(...bearings.map(({ inner }) => inner.inside));
  const left = Math.min(...bearings.map(({ inner }) => inner.left));
  const right = Math.max(...bearings.map(({ inner }) => inner.right));
  return [{ left, right, inside: 0, outside }];
}

function tubesOf(part: SectionPart, parts: readonly SectionPart[]): readonly Tube[] {
  const { bearing } = part;
  if (bearing) {
    const { inner, outer } = bearing;
    const left = Math.max(inner.left, outer.left);
    const right = Math.min(inner.right, outer.right);
    return [tubeOf(inner), { left, right, inside: inner.outside, outside: outer.inside }, tubeOf(outer)];
  }
  const steps = [...part.steps, ...part.detached].map(tubeOf);
  return part.kind === 'shell' ? [...steps, ...parts.flatMap((cone) => cup(cone, part))] : steps;
}

/** The cup that the balls of a cone run in: it stands in the cone's way inwards. */
function cup({ coneBall, left, right }: SectionPart, shell: SectionPart): readonly Tube[] {
  if (!coneBall || shell.bearing) return [];
  const { circle, diameter, inward } = coneBall;
  const tube = { inside: circle - 0.4 * diameter, outside: shell.steps[0]?.outside ?? circle + 2 * diameter };
  return [
    inward === 'right'
      ? { ...tube, left: right, right: right + diameter }
      : { ...tube, left: left - diameter, right: left },
  ];
}

/** Diameters of the pieces that nobody wrote; what is outside of a housing decides nothing. */
function toMeasure(parts: readonly SectionPart[]): readonly ToMeasure[] {
  return parts.flatMap(({ address, kind, steps, bearing }): readonly ToMeasure[] => {
    if (bearing || kind === 'retaining-ring') return [];
    const housing = kind === 'shell' || kind === 'freehub';
    const name = housing || kind === 'axle' ? `the ${address}` : address;
    const inside = steps.some(({ guessed }) => guessed?.inside);
    const outside = !housing && steps.some(({ guessed }) => guessed?.outside);
    return [
      ...(inside
        ? [{ address, what: 'inside' as const, words: `${housing ? 'bore through' : 'inside of'} ${name}` }]
        : []),
      ...(outside ? [{ address, what: 'outside' as const, words: `outside of ${name}` }] : []),
    ];
  });
}
