/** The sound wheel that the pages of the checks spoil and mend; its hub is the one of `pageHub` with its flanges. */
const sound = `wheel: Dunlin touring front
hub: ./dunlin-front.hub.yaml
rim: { bead-seat: 622, erd: 596.5 ±0.5, erd-to: nipple-seat, holes: 32, tension-limit: 1250 N, area: 82, radial-stiffness: 110 N·m², lateral-stiffness: 190 N·m², torsional-stiffness: 25 N·m² }
lacing:
  left: { crosses: 3, heads: alternate }
  right: { crosses: 3, heads: alternate }
spokes:
  left: { length: 292, profile: 2.0/1.8/2.0, material: stainless }
  right: { length: 292, profile: 2.0/1.8/2.0, material: stainless }
nipples: { length: 12, material: brass }
tension: { side: right, value: 1000 ±100 N }
rider: { mass: 85 kg }
`;

/** The flanges that the wheel of the pages is laced to. */
export const pageFlanges: readonly [from: string, to: string] = [
  '  seats:',
  `  flanges:
    left: { holes: 16, circle: 40, from-centre: 30, hole: 2.6, thickness: 3.2 }
    right: { holes: 16, circle: 40, from-centre: 30, hole: 2.6, thickness: 3.2 }
  seats:`,
];

/** The sound wheel with some of its words replaced: each pair is what stands there and what stands there instead. */
export function pageWheel(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => text.replace(from, () => to), sound);
}
