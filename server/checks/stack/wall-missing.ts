import type { VariantAnalysis } from '../../analysis/analyze.ts';
import { length, plain } from '../../engine/base/figures.ts';
import type { Dimension, PartValues } from '../../spec/model.ts';
import type { Placed } from '../../spec/place.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { axleSuitsBearings } from '../journal-of.ts';
import { pageHub } from '../page-hub.ts';

/** The hole through a part is as large as the part. */
export const wallMissing: Check = {
  code: 'wall-missing',
  group: 'stack',
  severity: 'error',
  summary: 'The hole through a part is as large as the part.',
  page: {
    why: 'A spacer, an axle or an end cap is a tube: what is left between its hole and its outside carries the clamp. Where the hole is as large as the outside nothing is left, and one of the two was misread or they stand in each other’s place.',
    bad: pageHub(['inside: 17.1\n    outside: 19.6', 'inside: 17.1\n    outside: 17']),
    good: pageHub(),
    sources: ['common practice'],
  },
  run: (analysis) => eachVariant(analysis, missing),
};

type Walled = readonly [
  owner: string,
  holeName: string,
  hole: Placed<Dimension> | undefined,
  aroundName: string,
  around: Placed<Dimension> | undefined,
];

function* missing(variant: VariantAnalysis): Iterable<Draft> {
  const { stack } = variant.assembly.hub;
  // An axle that does not suit its bearings is the fault then, and said there.
  const axle = axleSuitsBearings(variant) ? variant.assembly.hub.axle : null;
  const own = stack.flatMap(({ address, values }) => walls(address, values));
  const walled: readonly Walled[] = [
    ['the axle', 'bore', axle?.values.bore, 'diameter', axle?.values.diameter],
    ...own,
  ];
  const said = new Set<unknown>();
  for (const [owner, holeName, hole, aroundName, around] of walled) {
    if (!hole || !around || said.has(hole)) continue;
    const wall = around.value.nominal - hole.value.nominal;
    if (0 < wall) continue;
    said.add(hole);
    yield {
      path: hole.path,
      message: `${holeName} of ${owner} is ${plain(hole.value.nominal)}, its ${aroundName} ${plain(around.value.nominal)}: ${wall === 0 ? 'no wall is left' : `${length(-wall)} mm larger than the part`} — check which of the two was misread`,
      related: [{ path: around.path, message: `${aroundName} ${plain(around.value.nominal)} here` }],
      data: { hole: hole.value.nominal, around: around.value.nominal },
    };
  }
}

/** The holes of a part of the stack and what surrounds each, the narrowest first. */
function walls(address: string, values: Partial<{ [K in keyof PartValues]: Placed<PartValues[K]> }>) {
  const { inside, bore, outside, spigot, face } = values;
  return [
    [address, 'inside', inside, 'outside', outside],
    [address, 'bore', bore, 'spigot', spigot],
    [address, 'bore', bore, 'face', face],
    [address, 'bore', bore, 'outside', outside],
  ] as const satisfies readonly Walled[];
}
