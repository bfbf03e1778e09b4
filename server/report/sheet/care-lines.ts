import type { VariantAnalysis } from '../../analysis/analyze.ts';
import type { FilledHousing } from '../../assembly/housings.ts';
import type { DecodedBearing } from '../../engine/bearings/decoded-bearing.ts';
import { list } from '../plan/step-words.ts';

/** Some lines under a title. */
export interface SheetBlock {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Grease by place, torque, seals, and what is done after the first rides. Facts of practice unless said otherwise. */
export function careLines(variant: VariantAnalysis): readonly SheetBlock[] {
  return [
    { title: 'Grease by place', lines: greaseLines(variant) },
    { title: 'Torque', lines: torqueLines(variant) },
    { title: 'Seals', lines: sealLines(variant) },
    {
      title: 'After the first ride, and again after 100 to 200 km',
      lines: [
        'play, rotor bolts and axle looked at once more; new seals drag for the first 50 to 100 km',
        'a notch, a knock at the rim or a cap that has come loose: off the road, apart again',
      ],
    },
  ];
}

function greaseLines({ assembly }: VariantAnalysis): readonly string[] {
  const { shell, freehub, line, hub } = assembly;
  const housings = [shell, freehub].filter((housing): housing is FilledHousing => housing !== null);
  const seats = housings.flatMap(({ housing, seats: filled }) =>
    filled.map(({ address, seat }) => {
      if (seat.values.compound?.value)
        return `${address}: clean and dry, retaining compound by its own data sheet, no grease`;
      const light = /alumin|alloy|magnes/i.test(housing.values.material?.value ?? '');
      return light
        ? `${address}: clean, a thin film of assembly paste against corrosion (steel ring in light alloy)`
        : `${address}: clean, a thin film of grease`;
    }),
  );
  const threads = line.filter(({ part }) => part.values.thread || part.values.fixing?.value === 'thread');
  const cones = line.filter(({ part }) => part.kind === 'cone');
  return [
    ...seats,
    ...(hub.axle ? ['axle under the inner rings: a thin film of grease'] : []),
    ...(threads.length > 0
      ? [`threads of ${list(threads.map(({ address }) => address))}: a little grease`]
      : []),
    ...(cones.length > 0 ? ['cups: NLGI 2 water-resistant grease, balls bedded in it'] : []),
    ...(freehub
      ? [
          'ratchet or pawls of the freehub: as its maker says; stiff grease lets pawls slip, which is dangerous',
        ]
      : []),
    ...(assembly.bearings.length > 0
      ? ['sealed bearings: filled by their maker; no solvent, no jet of water']
      : ['no jet of water on the cups']),
  ];
}

/** Only what is written: a force is never turned back into a torque. */
function torqueLines({ assembly }: VariantAnalysis): readonly string[] {
  const { clamp } = assembly.hub;
  const torque = clamp?.values.torque;
  const lines = torque
    ? [`axle: ${torque.value.written}, as the spec writes it`]
    : ['axle: not in the spec; as the makers of axle and frame give it'];
  const threaded = assembly.line.filter(({ part }) => part.values.fixing?.value === 'thread');
  const set = assembly.line.flatMap(({ address, part }) =>
    part.values.set ? [`${address}: set to ${part.values.set.value.written}`] : [],
  );
  return [
    ...lines,
    ...set,
    ...threaded.map(({ address }) => `${address}: not in the spec; as its maker gives it`),
  ];
}

function sealLines({ assembly }: VariantAnalysis): readonly string[] {
  const decoded = assembly.bearings.flatMap(({ address, bearing }) =>
    bearing ? [{ address, bearing }] : [],
  );
  const kinds = [...new Set(decoded.map(({ bearing }) => costOf(bearing)))];
  const beside = assembly.hub.beside.filter(({ kind }) => kind === 'seal').map(({ address }) => address);
  return [
    ...kinds.map((cost) => {
      const of = decoded.filter(({ bearing }) => costOf(bearing) === cost).map(({ address }) => address);
      return `${list(of)}: ${cost}`;
    }),
    ...(beside.length > 0 ? [`${list(beside)}: lip undamaged and lightly greased, or new`] : []),
  ];
}

/** What taking off the closure of a bearing costs. */
function costOf({ closure, rubs }: DecodedBearing): string {
  if (closure === 'open') return 'open; nothing keeps water out but the seals of the hub';
  if (closure === 'shield')
    return 'shields; one that was lifted is bent and is not put back: the bearing then counts as open';
  const lip = rubs === false ? 'seals that do not rub' : 'rubbing seals';
  return `${lip}; lifted only at the outer edge with a thin blade, never at the lip; one lifted once holds water less well`;
}
