import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { StackBearing } from '../assembly/bearings.ts';
import { asBuilt, type Settled, sizeRange } from '../assembly/settle.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { escaped, signedWhole } from './markdown.ts';
import { samePath } from './section-at.ts';

/** What stands in a bore or on a shaft, with the clearance or interference between the two. */
export function fitWords({ analysis }: Snapshot, path: SpecPath, settled: Settled): readonly string[] {
  const said = new Set<string>();
  for (const variant of analysis.variants) {
    for (const bearing of outerRingsIn(variant, path)) {
      const ring = bearing.outside;
      if (ring) said.add(between(settled, ring, `outside of ${bearing.address}`));
    }
    for (const bearing of innerRingsOn(variant, path)) {
      const ring = bearing.bore;
      if (ring) said.add(between(ring, settled, `bore of ${bearing.address}`));
    }
  }
  return [...said];
}

/** Bearings whose outer ring stands in the seat this bore belongs to. */
function outerRingsIn({ assembly }: VariantAnalysis, path: SpecPath): readonly StackBearing[] {
  const seats = [assembly.shell, assembly.freehub].flatMap((housing) => housing?.seats ?? []);
  const seat = seats.find(({ seat: { values } }) => values.bore && samePath(values.bore.path, path));
  return seat?.bearings.flatMap(({ bearing }) => bearing ?? []) ?? [];
}

/** Bearings whose inner ring stands on this axle or journal. */
function innerRingsOn({ assembly }: VariantAnalysis, path: SpecPath): readonly StackBearing[] {
  const axle = assembly.hub.axle?.values.diameter;
  const onAxle = axle !== undefined && samePath(axle.path, path);
  return assembly.bearings.filter(({ part: { values } }) =>
    values.journal ? samePath(values.journal.path, path) : onAxle,
  );
}

function between(hole: Settled, shaft: Settled, ring: string): string {
  const [holeLo, holeHi] = sizeRange(asBuilt(hole));
  const [shaftLo, shaftHi] = sizeRange(asBuilt(shaft));
  const [least, most] = [(holeLo - shaftHi) * 1000, (holeHi - shaftLo) * 1000];
  const name = escaped(ring);
  if (0 <= least) return `clearance to the ${name}: ${whole(least)} to ${whole(most)} µm`;
  if (most <= 0) return `interference with the ${name}: ${whole(-most)} to ${whole(-least)} µm`;
  return `against the ${name}: from ${whole(-least)} µm interference to ${whole(most)} µm clearance`;
}

const whole = (value: number): string => signedWhole(value).replace('+', '');
