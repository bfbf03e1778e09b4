import type { ResolvedHub } from '../../assembly/variants.ts';
import { clampForce } from '../../engine/play/clamp-compression.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Workshop } from '../../spec/workshop-model.ts';
import { readThread } from './read-thread.ts';

/** The force that squeezes the stack. */
export interface Clamp {
  /** N */
  readonly force: number;
  readonly path: SpecPath;
  /** What was taken for granted on the way from a torque, or from the workshop. */
  readonly assumed: readonly string[];
}

/** Friction of thread and head where none is written: dry to lightly greased steel. */
export const usualFriction = 0.15;

/** The clamp of a hub: `instead` where one is given, its own force, its own torque turned into one, or the workshop's; null where nobody says. */
export function clampOf(hub: ResolvedHub, workshop: Workshop | null, instead: number | null): Clamp | null {
  if (instead !== null)
    return {
      force: instead,
      path: hub.clamp?.path ?? hub.path,
      assumed: [`clamp ${(instead / 1000).toFixed(1)} kN as asked`],
    };
  const written = hub.clamp?.values;
  if (hub.clamp && written?.force)
    return { force: written.force.value.value, path: written.force.path, assumed: [] };
  if (hub.clamp && written?.torque && written.thread) {
    const thread = readThread(written.thread.value);
    if (thread) {
      const friction = written.friction?.value ?? usualFriction;
      const head = written['head-friction']?.value ?? friction;
      const force = clampForce({
        torque: written.torque.value.value,
        ...thread,
        threadFriction: friction,
        headFriction: head,
      });
      const said = [
        `clamp force ${(force / 1000).toFixed(1)} kN from ${written.torque.value.written} on ${written.thread.value}, head friction at 0.65 of the thread`,
        ...(written.friction ? [] : [`friction of the clamp taken as ${usualFriction}`]),
      ];
      return { force, path: written.torque.path, assumed: said };
    }
  }
  const shop = workshop?.defaults.clamp;
  if (!shop || hub.clamp) return null;
  return {
    force: shop.value.value,
    path: hub.path,
    assumed: [`clamp ${shop.value.written}, the workshop's own`],
  };
}
