import { nippleFacts } from '../tables/spoke-facts.ts';

/** How a spoke sits in its nipple. */
export interface NippleFit {
  /** Length of thread inside thread, mm. */
  readonly engagement: number;
  /** End of the spoke above (+) or below (−) the bottom of the slot, mm. */
  readonly end: number;
  /** How much further the nipple can be turned on before the thread of the spoke ends, mm; negative: it cannot come so far. */
  readonly threadLeft: number;
}

/**
 * Engagement of a spoke whose end stands `end` above the bottom of the slot (mm), with `threadLength` of thread and
 * `nippleThread` of thread in the nipple below the slot. Above the slot nothing is threaded.
 */
export function nippleFit(end: number, threadLength: number, nippleThread: number): NippleFit {
  const lower = Math.max(end - threadLength, -nippleThread);
  return {
    engagement: Math.max(0, Math.min(end, 0) - lower),
    end,
    threadLeft: threadLength - nippleThread - end,
  };
}

/** Thread inside a nipple, mm, by its length: a longer nipple has more plain entry, not more thread. */
export function nippleThread(length: number): number {
  return Math.max(0, Math.min(nippleFacts.nippleThread, length - nippleFacts.plainPart));
}

/** Core diameter of a cycle thread of 60°, major − 1.0654·P, mm (source `din-79012`). */
export function coreDiameter(major: number, pitch: number): number {
  return major - 1.0654 * pitch;
}

/** Tension that one turn of one nipple adds on a rim that does not give, EA/L·P, N. */
export function tensionPerTurn(axial: number, length: number, pitch: number): number {
  return (axial / length) * pitch;
}

/** Tension that one turn of every nipple adds, the rim drawing in, P/(L/EA + N·c2²·R/(2π·E·A of the rim)), N. */
export function tensionPerTurnOfAll(
  spoke: { readonly axial: number; readonly length: number; readonly radial: number },
  rim: { readonly spokes: number; readonly radius: number; readonly axial: number },
  pitch: number,
): number {
  const rimGive = (rim.spokes * spoke.radial ** 2 * rim.radius) / (2 * Math.PI * rim.axial);
  return pitch / (spoke.length / spoke.axial + rimGive);
}
