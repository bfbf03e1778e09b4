import type { Analysis } from '../../analysis/analyze.ts';
import { micrometres } from '../../engine/base/figures.ts';
import { clampedPair } from '../../engine/play/clamped-pair.ts';
import { materials } from '../../engine/tables/materials.ts';
import { setValue } from '../../spec/edit.ts';
import type { Fix } from '../../spec/problem.ts';
import { type LocatedPair, leastTravel } from './located-pair.ts';

/** A light alloy spacer made of steel instead, where that leaves the play wanted; null where it does not. */
export function stifferFix(analysis: Analysis, { variant, pair }: LocatedPair): Fix | null {
  const [sleeve, ...others] = pair.squeezed;
  const part = variant.assembly.line.find(({ address }) => address === sleeve?.address)?.part;
  const { steel } = materials;
  if (!sleeve || others.length > 0 || part?.kind !== 'spacer' || steel.E <= sleeve.E) return null;
  const { input } = pair;
  const spacerCompliance = (input.spacerCompliance * sleeve.E) / steel.E;
  const { playClampedSigned: play } = clampedPair({ ...input, spacerCompliance });
  if (play <= leastTravel || analysis.limits.value('play-clamped') < play) return null;
  return {
    title: `Make ${sleeve.address} of steel: the clamp takes ${micrometres(input.clampForce * spacerCompliance)}, ${micrometres(play)} of play once clamped`,
    changes: setValue(analysis.spec, [...part.path, 'material'], 'steel'),
  };
}
