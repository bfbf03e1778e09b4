import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import { renameKey, setValue } from '../../spec/edit.ts';
import type { TextChange } from '../../spec/problem.ts';
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

/** Changes that write another code for a bearing, in place of its size or house code where it has no code. */
export function codeChange({ spec }: Analysis, address: string, code: string): readonly TextChange[] | null {
  const values = spec.hub?.stack.find((one) => one.address === address)?.values;
  if (values?.code) return setValue(spec, values.code.path, code);
  const instead = values?.['house-code'] ?? values?.size;
  if (!instead) return null;
  return [...renameKey(spec, instead.path, 'code'), ...setValue(spec, instead.path, code)];
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

/** Addresses of the bearings of a hub that are this one, by a code or by a code of the house. */
export function placesOf(analysis: Analysis, like: DecodedBearing): readonly string[] {
  return (analysis.variants[0]?.assembly.bearings ?? [])
    .filter(({ bearing }) => bearing?.normalised === like.normalised && bearing.cage === like.cage)
    .map(({ address }) => address);
}

/** Addresses of the bearings that a hub gives by a size alone, which this one has: it may be the one that is there. */
export function placesOfSize(analysis: Analysis, like: DecodedBearing): readonly string[] {
  return (analysis.variants[0]?.assembly.bearings ?? [])
    .filter(
      ({ bearing }) => bearing?.material === 'unknown' && sizeKeys.every((key) => bearing[key] === like[key]),
    )
    .map(({ address }) => address);
}

const sizeKeys = ['bore', 'outside', 'width'] as const;

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
    // Stainless steel carries less than the ratings of bearing steel, by how much its maker alone knows.
    kilometres: bearing?.stack.bearing?.material === 'stainless' ? null : (life?.kilometres ?? null),
  };
}
