import { setValue } from '../../spec/edit.ts';
import { readSpec } from '../../spec/read-spec.ts';
import { type Analysis, analyze, type VariantAnalysis } from '../analyze.ts';
import { lifeOf } from '../life/life-of.ts';
import { isClosed, isWorked } from '../mechanics/pair-mechanics.ts';

/** What a bearing comes to in its hub: mm, N, km; null where it is not worked out. */
export interface InHub {
  readonly mounted: number | null;
  readonly playClamped: number | null;
  readonly ballLoad: number | null;
  readonly kilometres: number | null;
}

/** The same bearing place with one code and with another. */
export interface Exchanged {
  readonly address: string;
  readonly variant: string | null;
  readonly before: InHub;
  readonly after: InHub;
}

/** Changes that write another code for a bearing; null where the file gives it by its size or a house code alone. */
export function codeChange(analysis: Analysis, address: string, code: string) {
  const part = analysis.spec.hub?.stack.find((one) => one.address === address);
  const written = part?.values.code;
  if (!written) return null;
  return setValue(analysis.spec, written.path, code);
}

/** The hub with another code in some of its bearings, worked out anew as the file would be; null where it cannot be written. */
export function withCode(analysis: Analysis, addresses: readonly string[], code: string): Analysis | null {
  const changes = addresses.flatMap((address) => codeChange(analysis, address, code) ?? []);
  if (changes.length === 0) return null;
  const text = [...changes]
    .sort((a, b) => b.span.start - a.span.start)
    .reduce(
      (before, { span, text: put }) => before.slice(0, span.start) + put + before.slice(span.end),
      analysis.spec.text,
    );
  return analyze(readSpec(text, 'hub'), analysis.surroundings);
}

/** What bearings come to in a hub before and after all of them were exchanged, in every variant that has them. */
export function exchanged(
  analysis: Analysis,
  addresses: readonly string[],
  code: string,
): readonly Exchanged[] {
  const other = withCode(analysis, addresses, code);
  if (!other) return [];
  return analysis.variants.flatMap((variant, index) => {
    const after = other.variants[index];
    if (!after) return [];
    return addresses
      .filter((address) => variant.assembly.bearings.some((bearing) => bearing.address === address))
      .map((address) => ({
        address,
        variant: variant.name,
        before: inHub(variant, analysis, address),
        after: inHub(after, other, address),
      }));
  });
}

/** Addresses of the bearings of a hub that are written with a code of this one. */
export function placesOf(analysis: Analysis, normalised: string): readonly string[] {
  return (analysis.variants[0]?.assembly.bearings ?? [])
    .filter(({ bearing, part }) => bearing?.normalised === normalised && part.values.code)
    .map(({ address }) => address);
}

/** What one bearing comes to, as built. */
export function inHub(variant: VariantAnalysis, { workshop }: Analysis, address: string): InHub {
  const { bearings, pairs, clamp } = variant.mechanics('built');
  const bearing = bearings.find((one) => one.address === address);
  const pair = pairs
    .filter(isWorked)
    .find(({ left, right }) => left.address === address || right.address === address);
  const closed = pair && clamp && isClosed(pair) ? pair.result : null;
  const life = lifeOf(variant, workshop, { how: 'built', rider: null }).bearings.find(
    (one) => one.address === address,
  );
  return {
    mounted: bearing?.contactAngle ? null : (bearing?.mounted?.mean ?? null),
    playClamped: closed?.playClamped ?? null,
    ballLoad: closed?.ballLoad ?? null,
    kilometres: life?.kilometres ?? null,
  };
}
