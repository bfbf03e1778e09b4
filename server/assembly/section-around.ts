import type { Side } from '../spec/model.ts';
import type { Assembly } from './assemble.ts';
import type { LinePart } from './line.ts';

/** The bearing nearest in the line says what an undimensioned sleeve has to fit. */
export function neighbour(part: LinePart, assembly: Assembly) {
  const index = assembly.line.indexOf(part);
  const near = assembly.line
    .map((other, at) => ({ other, far: Math.abs(at - index) }))
    .filter(({ other }) => other.bearing?.bore)
    .sort((a, b) => a.far - b.far)[0]?.other.bearing;
  const axle = assembly.hub.axle?.values.diameter?.value.nominal;
  const bore = axle ?? near?.bore?.drawn.nominal ?? 15;
  return {
    bearing: near ?? null,
    bore,
    innerOutside: near?.innerOutside?.value ?? bore + 6,
    boreSource:
      axle !== undefined ? "the axle's diameter" : near ? `the bore of ${near.address}` : 'a usual size',
    outsideSource: near ? `the inner ring of ${near.address}, as far as its shoulder` : 'a usual wall',
  };
}

/** The side of the hub a part at the end of the line looks to. */
export function outward(part: LinePart, assembly: Assembly): Side {
  return assembly.line.indexOf(part) < assembly.line.length / 2 ? 'left' : 'right';
}
