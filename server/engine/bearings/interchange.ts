import { decodeBearing } from './decode-bearing.ts';
import type { DecodedBearing } from './decoded-bearing.ts';
import { bearingsOfSize } from './known-bearings.ts';
import { type Spelled, spell, spelledBearing } from './spell-bearing.ts';

/** What a bearing is fitted as instead. */
export type Exchange =
  | 'sealed'
  | 'lightly sealed'
  | 'shielded'
  | 'open'
  | 'more clearance'
  | 'less clearance'
  | 'full complement'
  | 'hybrid'
  | 'stainless'
  | 'other kind';

/** A bearing of the same size that differs in one thing. */
export interface Alternative {
  readonly exchange: Exchange;
  readonly code: string;
  readonly bearing: DecodedBearing;
  /** What it costs and what it gives, each a short sentence. */
  readonly price: readonly string[];
}

/** Other codes of the same bearing, whole, beside the one written. */
export function spellings(bearing: DecodedBearing): readonly string[] {
  const same = bearingsOfSize(bearing.bore, bearing.outside, bearing.width).filter(
    ({ basic }) => basic.kind === bearing.kind,
  );
  const codes = same
    .flatMap(({ basic }) => [basic.trade, basic.key])
    .map((basic) => spell(spelledBearing({ ...bearing, basic })));
  return [...new Set(codes)].filter((code) => {
    const read = decodeBearing(code);
    if (!('bearing' in read) || read.bearing.basic === bearing.basic) return false;
    return isAlike(read.bearing, bearing) && differences(read.bearing, bearing).length === 0;
  });
}

/**
 * Bearings of the same boundary dimensions that differ in one thing, each with its price in plain words. Only codes
 * that read back to the same size are given. Facts of practice (`common practice`) unless a rating is named.
 */
export function alternatives(bearing: DecodedBearing): readonly Alternative[] {
  if (bearing.basis === 'size') return [];
  return offers(bearing).flatMap(({ exchange, code, price }) => {
    const read = decodeBearing(code);
    if (!('bearing' in read)) return [];
    const other = read.bearing;
    if (!isAlike(other, bearing)) return [];
    const differing = differences(other, bearing);
    // A cage goes with the balls of a full complement, and another kind comes with what its code says.
    const wanted = exchange === 'full complement' ? differing.filter((key) => key !== 'cage') : differing;
    if (exchange === 'other kind' ? !differing.includes('kind') : wanted.length !== 1) return [];
    return [{ exchange, code, bearing: other, price }];
  });
}

/** The same boundary dimensions, mm. */
function isAlike(one: DecodedBearing, other: DecodedBearing): boolean {
  return one.bore === other.bore && one.outside === other.outside && one.width === other.width;
}

/** What two bearings of one size differ in. */
function differences(one: DecodedBearing, other: DecodedBearing): readonly string[] {
  const [a, b] = [facts(one), facts(other)];
  return (Object.keys(a) as (keyof typeof a)[]).filter((key) => a[key] !== b[key]);
}

const facts = (of: DecodedBearing) => ({
  closure: `${of.closure} ${of.closedSides} ${of.rubs}`,
  clearance: of.clearance.group,
  full: of.fullComplement,
  material: of.material,
  kind: `${of.kind} ${of.contactAngle}`,
  class: of.toleranceClass,
  cage: of.cage,
});

interface Offer {
  readonly exchange: Exchange;
  readonly code: string;
  readonly price: readonly string[];
}

function offers(bearing: DecodedBearing): readonly Offer[] {
  const { closure, rubs, material, fullComplement, kind } = bearing;
  const code = (change: Partial<Spelled>): string => spell({ ...spelledBearing(bearing), ...change });
  const rubbing = closure === 'seal' && rubs !== false;
  const list: Offer[] = [];
  if (!rubbing || bearing.closedSides === 1)
    list.push({
      exchange: 'sealed',
      code: code({ closed: '-2RS' }),
      price: ['keeps water and grit out and the grease in', 'the lips rub: it turns harder, most when new'],
    });
  if (closure !== 'seal' || rubs !== false)
    list.push({
      exchange: 'lightly sealed',
      code: code({ closed: '-2RZ' }),
      price: ['turns lighter than with rubbing lips', 'keeps out less water: for dry use, serviced earlier'],
    });
  if (closure !== 'shield')
    list.push({
      exchange: 'shielded',
      code: code({ closed: '-2Z' }),
      price: ['turns lightly', 'keeps out coarse dirt, no water'],
    });
  list.push(...clearanceOffers(bearing, code));
  if (!fullComplement && kind === 'deep-groove')
    list.push({ exchange: 'full complement', code: code({ full: ' V', cage: '' }), price: fullPrice });
  if (material !== 'hybrid')
    list.push({
      exchange: 'hybrid',
      code: code({ material: ' HC' }),
      price: [
        'balls of silicon nitride: light, hard, they do not rust; the rings still do',
        'dynamic rating as in steel; the static one lower, since stiffer balls press the grooves harder',
      ],
    });
  if (material === 'steel')
    list.push({
      exchange: 'stainless',
      code: code({ prefix: 'S' }),
      price: [
        'rings and balls that rust less',
        'softer steel: it carries less than the ratings of the steel version',
      ],
    });
  list.push(...otherKinds(bearing));
  return list;
}

/** The same size with another way of carrying. */
function otherKinds(bearing: DecodedBearing): readonly Offer[] {
  const found = bearingsOfSize(bearing.bore, bearing.outside, bearing.width).find(
    ({ basic }) => basic.kind !== bearing.kind && basic.basis !== 'digits',
  );
  if (!found) return [];
  const angular = found.basic.kind === 'angular-contact';
  const { closed } = spelledBearing(bearing);
  return [
    {
      exchange: 'other kind',
      code: `${found.basic.trade}${angular ? 'AC' : ''}${closed}`,
      price: angular
        ? [
            'carries along the axle one way only: always two, turned the right way round',
            'stiff under a side force once it is set; it has no play of its own and wants a light preload',
          ]
        : ['carries both ways along the axle', 'less stiff along the axle than an angular-contact pair'],
    },
  ];
}

const groups: readonly string[] = ['C2', 'N', 'C3', 'C4', 'C5'];

function clearanceOffers(
  bearing: DecodedBearing,
  code: (change: Partial<Spelled>) => string,
): readonly Offer[] {
  const at = groups.indexOf(bearing.clearance.group);
  if (at < 0 || bearing.kind !== 'deep-groove') return [];
  const [tighter, wider] = [groups[at - 1], groups[at + 1]];
  const group = (name: string): string => code({ clearance: name === 'N' ? '' : ` ${name}` });
  return [
    ...(wider
      ? [
          {
            exchange: 'more clearance' as const,
            code: group(wider),
            price: [
              'stands a tighter seat and more cold',
              'more play before the clamp, more knock at the rim',
            ],
          },
        ]
      : []),
    ...(tighter
      ? [
          {
            exchange: 'less clearance' as const,
            code: group(tighter),
            price: ['less play', 'a tight seat or cold uses the clearance up sooner'],
          },
        ]
      : []),
  ];
}

/** More balls carry more at rest; without a cage they rub on each other. */
const fullPrice: readonly string[] = [
  'more balls without a cage: a higher static rating, where the ball is as large',
  'the balls rub on each other: made for joints that swing, it drags and wears at the speed of a wheel; a filling slot bears no side load',
];
