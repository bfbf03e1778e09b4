/** The sound cup-and-cone hub that the pages of these checks spoil and mend. */
const sound = `hub: Avocet front
position: front
width: 100 ±0.2
axle: { material: steel, diameter: 9, bore: 5.2 }
clamp: { force: 4 kN, through: axle }
shell:
  cups:
    left: { ball-circle: 17.4, contact-angle: 45 }
    right: { ball-circle: 17.4, contact-angle: 45 }
stack:
  - { locknut: left, length: 6 ±0.05 }
  - { cone: left, length: 11 ±0.05, thread: M9x1, balls: 10 × 3/16 in }
  - { cone: right, length: 11 ±0.05, thread: M9x1, balls: 10 × 3/16 in, set: 0.06 ±0.01 }
  - { locknut: right, length: 6 ±0.05 }
`;

/** The sound hub with some of its words replaced, each pair once and in turn. */
export function pageConeHub(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => text.replace(from, () => to), sound);
}
