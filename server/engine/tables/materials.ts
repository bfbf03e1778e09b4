import type { SourceId } from '../base/sources.ts';

type Property = 'E' | 'nu' | 'expansion' | 'density' | 'yield';

/** What the engine needs to know of a material at room temperature. */
export interface Material {
  /** Modulus of elasticity, MPa. */
  readonly E: number;
  /** Poisson's ratio. */
  readonly nu: number;
  /** Linear thermal expansion between 20 and 100 °C, 1/K. */
  readonly expansion: number;
  /** kg/m³ */
  readonly density: number;
  /** Yield or 0.2 % proof stress, MPa; null for what is never used as a wall (rings, balls). */
  readonly yield: number | null;
  /** Other spellings that mean this material. */
  readonly aliases: readonly string[];
  /** Whether turned parts are made of it, or only rings and balls. */
  readonly use: 'part' | 'bearing';
  readonly sources: Readonly<Record<Property, SourceId>>;
}

/** Materials by the name that a spec writes. A workshop file adds its own and may replace these. */
export const materials = {
  'aluminium 6061-T6': {
    E: 68_900,
    nu: 0.33,
    expansion: 23.6e-6,
    density: 2700,
    yield: 276,
    aliases: ['6061', '6061-T6', '6061-T651'],
    use: 'part',
    sources: all('aluminium-typical'),
  },
  'aluminium 7075-T6': {
    E: 71_700,
    nu: 0.33,
    expansion: 23.4e-6,
    density: 2810,
    yield: 483,
    aliases: ['7075', '7075-T6', '7075-T651'],
    use: 'part',
    sources: { ...all('mechanics-course'), density: 'from-memory' },
  },
  'aluminium 2014-T6': {
    E: 73_100,
    nu: 0.35,
    expansion: 23e-6,
    density: 2790,
    yield: 414,
    aliases: ['2014', '2014-T6'],
    use: 'part',
    sources: all('mechanics-appendix'),
  },
  steel: {
    E: 200_000,
    nu: 0.29,
    expansion: 12e-6,
    density: 7850,
    yield: 415,
    aliases: ['chrome-moly', '4130', '25CrMo4'],
    use: 'part',
    sources: all('design-class-tables'),
  },
  stainless: {
    E: 193_000,
    nu: 0.29,
    expansion: 17.3e-6,
    density: 8000,
    yield: 215,
    aliases: ['stainless steel', '304', '1.4301'],
    use: 'part',
    sources: all('stainless-304-sheet'),
  },
  titanium: {
    E: 114_000,
    nu: 0.34,
    expansion: 8.6e-6,
    density: 4430,
    yield: 880,
    aliases: ['Ti-6Al-4V', 'grade 5', '6Al-4V'],
    use: 'part',
    sources: { ...all('aerospace-course'), expansion: 'from-memory' },
  },
  brass: {
    E: 110_000,
    nu: 0.33,
    expansion: 20e-6,
    density: 8530,
    yield: 434,
    aliases: ['CuZn30'],
    use: 'part',
    sources: { ...all('mechanics-course'), density: 'from-memory' },
  },
  magnesium: {
    E: 45_000,
    nu: 0.35,
    expansion: 26e-6,
    density: 1780,
    yield: 221,
    aliases: ['AZ31B'],
    use: 'part',
    sources: { ...all('aerospace-course'), expansion: 'from-memory' },
  },
  'bearing steel': {
    E: 208_000,
    nu: 0.3,
    expansion: 12.5e-6,
    density: 7830,
    yield: null,
    aliases: ['100Cr6', 'chrome steel'],
    use: 'bearing',
    sources: { ...all('ntn-2203e'), density: 'from-memory' },
  },
  'stainless bearing steel': {
    E: 200_000,
    nu: 0.29,
    expansion: 10.1e-6,
    density: 7680,
    yield: null,
    aliases: ['440C', 'X105CrMo17'],
    use: 'bearing',
    sources: { ...all('nsk-e1102e'), nu: 'from-memory', density: 'from-memory' },
  },
  'silicon nitride': {
    E: 308_000,
    nu: 0.26,
    expansion: 3e-6,
    density: 3240,
    yield: null,
    aliases: ['Si3N4', 'ceramic'],
    use: 'bearing',
    sources: { ...all('ntn-2203e'), nu: 'from-memory' },
  },
} as const satisfies Record<string, Material>;

/** The built-in name of a material. */
export type MaterialName = keyof typeof materials;

/** A word as written, matched to a material. */
export interface FoundMaterial {
  readonly name: MaterialName;
  readonly material: Material;
  /** True when the word leaves the alloy open and the usual one is taken: say so where the number is used. */
  readonly assumed: boolean;
}

/** Words that name a family; the alloy that stands for it is common practice. */
const families: Readonly<Record<string, MaterialName>> = {
  aluminium: 'aluminium 6061-T6',
  aluminum: 'aluminium 6061-T6',
  alloy: 'aluminium 6061-T6',
  'light alloy': 'aluminium 6061-T6',
  ti: 'titanium',
  inox: 'stainless',
};

/** Finds a built-in material by name, alias or family, whatever the case; null when the word is none of them. */
export function findMaterial(word: string): FoundMaterial | null {
  const wanted = folded(word);
  const name = spelled.get(wanted);
  if (name) return { name, material: materials[name], assumed: false };
  const family = Object.hasOwn(families, wanted) ? families[wanted] : undefined;
  return family ? { name: family, material: materials[family], assumed: true } : null;
}

/** Every spelling of a material, the first one to use it winning. */
const spelled: ReadonlyMap<string, MaterialName> = new Map(
  (Object.entries(materials) as [MaterialName, Material][])
    .flatMap(([name, { aliases }]) => [name, ...aliases].map((word) => [folded(word), name] as const))
    .reverse(),
);

/** `Aluminum 6061 T6`, `aluminium-6061-T6` and `aluminium 6061-t6` are one spelling. */
function folded(word: string): string {
  return word
    .trim()
    .toLowerCase()
    .replace('aluminum', 'aluminium')
    .replace(/[\s_-]+/g, ' ');
}

function all(source: SourceId): Record<Property, SourceId> {
  return { E: source, nu: source, expansion: source, density: source, yield: source };
}
