export interface SanderlingChanges {
  readonly code?: string;
  readonly bore?: string;
  readonly spacer?: string;
  readonly clamp?: string;
  /** Outside of the sleeve. */
  readonly outside?: string;
  readonly temperature?: string;
}

/** A front hub with balls and grooves of its own, so that every number of its mechanics can be worked by hand. */
export function sanderling(changes: SanderlingChanges = {}): string {
  const {
    code = '6803-2RS',
    bore = '26 N7',
    spacer = '62.06 ±0.01',
    clamp,
    outside = '19.5',
    temperature,
  } = changes;
  const bearing = (side: string) =>
    `  - { bearing: ${side}, code: ${code}, seat: shell.${side}, balls: 13 × 2.778, groove: 0.52 }`;
  return `hub: Sanderling
position: front
width: 100 ±0.2
shell:
  material: aluminium 6061-T6
  outside: 34
  between-shoulders: 62.05 ±0.02
  through: 22.5
  length: 72.25
  seats:
    left: { bore: ${bore}, depth: 5.1 }
    right: { bore: ${bore}, depth: 5.1 }
axle: { material: aluminium 7075-T6, diameter: 17 h6, bore: 12.1, length: 87.5 }
stack:
  - { end-cap: left, length: 14.03 }
${bearing('left')}
  - { spacer: centre, length: ${spacer}, inside: 17.1, outside: ${outside}, material: aluminium 7075-T6 }
${bearing('right')}
  - { end-cap: right, length: 14.03 }
${clamp === undefined ? '' : `clamp: ${clamp}\n`}${temperature === undefined ? '' : `temperature: ${temperature}\n`}`;
}
