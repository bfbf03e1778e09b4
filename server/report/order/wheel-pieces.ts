import { plain } from '../../engine/base/figures.ts';
import type { Snapshot } from '../../workspace/workspace.ts';
import type { Piece, Unlisted } from './order-pieces.ts';

/** Spokes and nipples of a wheel, by length and profile: as written, else the length that is proposed. */
export function wheelPieces({ document, analysis }: Snapshot): readonly (Piece | Unlisted)[] {
  const wheel = analysis.wheel();
  const written = document.wheel;
  if (!wheel || !written || wheel.groups.length === 0)
    return [{ part: 'spokes', why: 'too little is known of the wheel to count them' }];
  const spokes = wheel.groups.map((group): Piece | Unlisted => {
    const { side, head, count, fit } = group;
    if (!fit) return { part: `${side} spokes, ${head.replace('-', ' ')}`, why: 'their length is not known' };
    const own = wheel.sides.find((one) => one.side === side);
    const values = written.spokes[side]?.values;
    const said = [
      values?.material?.value,
      values?.thread?.value,
      head === 'straight-pull' ? 'straight-pull' : undefined,
      own && !values?.profile ? 'profile not written' : undefined,
      fit.length.written ? undefined : 'length proposed, none is written',
      stocked(analysis, own?.profile.written ?? '', fit.length.chosen),
    ];
    return {
      kind: 'spoke',
      size: plain(fit.length.chosen),
      code: own?.profile.written ?? null,
      written: values?.profile?.value.written ?? null,
      matters: said.filter((text) => text !== undefined).join(', '),
      count,
    };
  });
  const count = wheel.sides.reduce((sum, side) => sum + side.count, 0);
  const nipples = written.nipples?.values;
  if (!nipples?.length) return [...spokes, { part: 'nipples', why: 'their length is not written' }];
  return [
    ...spokes,
    {
      kind: 'nipple',
      size: nipples.length.value.written,
      code: null,
      written: null,
      matters: nipples.material?.value ?? 'material not written',
      count,
    },
  ];
}

/** Lengths on the shelf are not counted; whether this one is among them is said where the workshop lists the profile. */
function stocked({ workshop }: Snapshot['analysis'], profile: string, length: number): string | undefined {
  const lengths = workshop?.stock.spokes[profile]?.value;
  if (!lengths) return undefined;
  return lengths.includes(length)
    ? 'this length is on the shelf, not counted'
    : 'not among the lengths on the shelf';
}
