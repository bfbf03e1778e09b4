import type { Analysis, FollowedReference } from '../../analysis/analyze.ts';

type State<K extends FollowedReference['state']['kind']> = Extract<FollowedReference['state'], { kind: K }>;

/** The references of a file that ended in one way. */
export function referencesThat<K extends FollowedReference['state']['kind']>(
  analysis: Analysis,
  kind: K,
): readonly (Omit<FollowedReference, 'state'> & { readonly state: State<K> })[] {
  return analysis.surroundings.references.flatMap((reference) => {
    const { state } = reference;
    return isKind(state, kind) ? [{ ...reference, state }] : [];
  });
}

function isKind<K extends FollowedReference['state']['kind']>(
  state: FollowedReference['state'],
  kind: K,
): state is State<K> {
  return state.kind === kind;
}
