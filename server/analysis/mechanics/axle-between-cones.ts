import type { Assembly } from '../../assembly/assemble.ts';
import { type LinePart, meanContribution } from '../../assembly/line.ts';
import { isMissing } from '../../assembly/loop.ts';
import { meanOf, settle } from '../../assembly/settle.ts';
import type { Stretch } from '../../engine/play/clamp-compression.ts';
import { threadStressDiameter } from '../../engine/play/cup-and-cone.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { type AxleThread, readAxleThread } from './axle-thread.ts';
import { materialOf } from './material-of.ts';

/** The axle between the inner races, and the shell between the cups. */
export interface BetweenCones {
  readonly axle: Stretch;
  /** Null where the diameters of the shell are not written: it then counts as rigid. */
  readonly shell: Stretch | null;
  readonly thread: AxleThread | null;
  readonly assumed: readonly string[];
}

/**
 * What of the axle the clamp shortens: from the middle of one cone's thread to the middle of the other's, or to the
 * inner face of a cartridge bearing. Cones are set by hand, so the distance is what the width leaves between the
 * parts outside of them. A name says what is missing.
 */
export function axleBetweenCones(
  assembly: Assembly,
  left: LinePart,
  right: LinePart,
  workshop: Workshop | null,
): BetweenCones | { readonly missing: string } {
  const { hub, line, rules } = assembly;
  const { width, axle, shell } = {
    width: hub.values.width,
    axle: hub.axle?.values,
    shell: hub.shell?.values,
  };
  if (!width) return { missing: 'width' };
  const outside = [...line.slice(0, line.indexOf(left) + 1), ...line.slice(line.indexOf(right))];
  const unknown = outside.find(({ length }) => isMissing(length));
  if (unknown) return { missing: `length of ${unknown.address}` };
  const total = meanOf(settle(width, rules).drawn);
  const between = outside.reduce(
    (rest, { length }) => rest - (isMissing(length) ? 0 : meanContribution(length)),
    total,
  );
  const halves = [left, right].map(({ part, length }) =>
    part.kind === 'cone' && !isMissing(length) ? meanContribution(length) / 2 : 0,
  );
  const long = halves.reduce((sum, half) => sum + half, between);
  if (!(0 < between)) return { missing: 'a width that leaves room between the inner races' };
  const written = [left, right].map(({ part }) => part.values.thread).find((thread) => thread !== undefined);
  const thread = written ? readAxleThread(written.value) : null;
  const outer = thread
    ? threadStressDiameter(thread.diameter, thread.pitch)
    : (axle?.diameter?.value.nominal ?? null);
  if (outer === null) return { missing: `thread of ${(left.part.kind === 'cone' ? left : right).address}` };
  const inner = axle?.bore?.value.nominal ?? 0;
  if (!(inner < outer)) return { missing: 'a bore of the axle that is smaller than its thread' };
  const material = materialOf('the axle', axle?.material, 'steel', workshop);
  const shellMaterial = materialOf('the shell', shell?.material, 'aluminium 6061-T6', workshop);
  const tube = [shell?.outside?.value.nominal, shell?.through?.value.nominal] as const;
  const isTube = tube[0] !== undefined && tube[1] !== undefined && tube[1] < tube[0];
  return {
    axle: { length: long, outer, inner, E: material.E },
    shell: isTube
      ? { length: between, outer: tube[0] as number, inner: tube[1] as number, E: shellMaterial.E }
      : null,
    thread,
    assumed: [
      ...(material.assumed ? [material.assumed] : []),
      ...(thread ? [`axle threaded all along, as stiff as a bar of ${outer.toFixed(2)} mm`] : []),
      'half of each cone counts as axle that is shortened: the cone grips it from the middle of its thread',
      isTube
        ? (shellMaterial.assumed ?? '')
        : 'the shell between the cups taken as rigid: its diameters are not written',
    ].filter((text) => text !== ''),
  };
}
