/** How the face of a seat or journal was made. */
export type Finish = 'ground' | 'turned';

/** Share of the interference that is left when the peaks are pressed flat, at a diameter in mm. */
export function smoothingFactor(diameter: number, finish: Finish): number {
  return diameter / (diameter + (finish === 'ground' ? 2 : 3));
}

/**
 * Interference that works, after the peaks of both faces are flattened, mm: d/(d+2) for ground and d/(d+3) for
 * turned or bored faces, diameter in mm (source `nsk-e1102e`, fits; exact form from memory). A clearance is not
 * smoothed.
 */
export function effectiveInterference(interference: number, diameter: number, finish: Finish): number {
  return interference > 0 ? interference * smoothingFactor(diameter, finish) : interference;
}
