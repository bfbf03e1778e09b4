import type { Workshop } from '../spec/workshop-model.ts';

/** Workshop files beside and above a spec as one: the nearest wins, key by key. Null where there is none. */
export function mergeWorkshops(nearestFirst: readonly Workshop[]): Workshop | null {
  if (nearestFirst.length <= 1) return nearestFirst[0] ?? null;
  return nearestFirst.reduceRight((above, nearer) => ({
    limits: { ...above.limits, ...nearer.limits },
    measuring: nearer.measuring ?? above.measuring,
    bearings: { ...above.bearings, ...nearer.bearings },
    materials: { ...above.materials, ...nearer.materials },
    stock: {
      bearings: { ...above.stock.bearings, ...nearer.stock.bearings },
      spokes: { ...above.stock.spokes, ...nearer.stock.spokes },
      shims: nearer.stock.shims ?? above.stock.shims,
    },
    drivers: nearer.drivers.length > 0 ? nearer.drivers : above.drivers,
    defaults: {
      clamp: nearer.defaults.clamp ?? above.defaults.clamp,
      temperature: nearer.defaults.temperature ?? above.defaults.temperature,
      rider: nearer.defaults.rider ?? above.defaults.rider,
    },
  }));
}
