import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import type { MissingPart } from '../../assembly/variants.ts';
import { removeItem, removeKey, renameKey, setValue } from '../../spec/edit.ts';
import type { Seat } from '../../spec/model.ts';
import { nearestOf } from '../../spec/nearest.ts';
import type { Fix } from '../../spec/problem.ts';
import type { Check, Draft } from '../check.ts';
import { pageHub } from '../page-hub.ts';

const cap = '    change:\n      end-cap.left: { bore: 15.1 }\n';

/** A variant speaks of a part that the hub does not have. */
export const variantPartMissing: Check = {
  code: 'variant-part-missing',
  group: 'variant',
  severity: 'error',
  summary: 'A variant speaks of a part that the hub does not have.',
  page: {
    why: 'A variant says what differs from the hub as written, part by part and by address. A change to a part that is not there changes nothing, so the variant is built, and checked, as if nobody had written it.',
    bad: `${pageHub()}variants:\n  thru-15:\n${cap.replace('left', 'lefft')}`,
    good: `${pageHub()}variants:\n  thru-15:\n${cap}`,
    sources: ['common practice'],
  },
  *run(analysis) {
    for (const variant of analysis.variants) {
      for (const missing of variant.assembly.hub.missing) yield draftOf(analysis, variant, missing);
    }
    yield* missingSeats(analysis);
  },
};

const doings = {
  change: 'changes',
  replace: 'replaces',
  remove: 'removes',
  place: 'places a part beside',
} as const;

function draftOf(analysis: Analysis, variant: VariantAnalysis, { address, doing }: MissingPart): Draft {
  const parts = partsOf(analysis, variant);
  const near = nearestOf(address.value, parts);
  const isKey = doing === 'change' || doing === 'replace';
  const todo = near
    ? `write ${near}`
    : `the parts are ${parts.slice(0, 8).join(', ')}${8 < parts.length ? ' …' : ''}`;
  return {
    path: address.path,
    part: isKey ? 'key' : 'value',
    message: `${variant.assembly.hub.name} ${doings[doing]} ${address.value}, which is not in the stack — ${todo}`,
    related: near ? relatedPart(variant, near) : [],
    data: { variant: variant.assembly.hub.name, address: address.value, suggestion: near },
    fixes: [
      ...(near ? [rename(analysis, address.path, near, isKey)] : []),
      ...dropped(analysis, address.path, doing),
    ],
  };
}

/** Addresses the hub as written has, and those the variant adds. */
function partsOf(analysis: Analysis, variant: VariantAnalysis): readonly string[] {
  const written = analysis.variants[0]?.assembly.hub.stack ?? [];
  return [...new Set([...written, ...variant.assembly.hub.stack].map(({ address }) => address))];
}

function relatedPart(variant: VariantAnalysis, address: string): NonNullable<Draft['related']> {
  const part = variant.assembly.hub.stack.find((other) => other.address === address);
  return part ? [{ path: [...part.path, part.kind], message: `${address} stands here` }] : [];
}

function rename(analysis: Analysis, path: Draft['path'], near: string, isKey: boolean): Fix {
  const changes = isKey ? renameKey(analysis.spec, path, near) : setValue(analysis.spec, path, near);
  return { title: `Change to ${near}, which is in the stack`, changes, preferred: true };
}

/** What need not be said can go: taking out a part that is not there, or changing it. */
function dropped(analysis: Analysis, path: Draft['path'], doing: MissingPart['doing']): readonly Fix[] {
  if (doing === 'place') return [];
  const isItem = typeof path.at(-1) === 'number';
  const changes = isItem ? removeItem(analysis.spec, path) : removeKey(analysis.spec, path);
  return changes.length === 0 ? [] : [{ title: 'Remove it from the variant', changes }];
}

/** Seats that a variant changes and the hub does not have; a housing that only the variant has is its own. */
function* missingSeats(analysis: Analysis): Iterable<Draft> {
  const { hub } = analysis.spec;
  for (const variant of hub?.variants ?? []) {
    for (const name of ['shell', 'freehub'] as const) {
      const written = hub?.[name]?.seats.map((seat) => seat.address);
      const changed = variant[name]?.seats ?? [];
      for (const seat of written ? changed.filter(({ address }) => !written.includes(address)) : []) {
        yield missingSeat(analysis, variant.name, seat, written ?? []);
      }
    }
  }
}

function missingSeat(
  analysis: Analysis,
  variant: string,
  { address, path }: Seat,
  seats: readonly string[],
): Draft {
  const near = nearestOf(address, seats);
  const has = seats.length === 0 ? 'the hub has no seats there' : `the seats are ${seats.join(', ')}`;
  // A seat stands under its address in a change, and under its name among the seats of its housing.
  const key = near && (String(path.at(-1)).includes('.') ? near : near.slice(near.indexOf('.') + 1));
  return {
    path,
    part: 'key',
    message: `${variant} changes ${address}, which is not in the hub — ${near ? `write ${near}` : has}`,
    doubts: [path],
    data: { variant, address, suggestion: near },
    fixes: key
      ? [
          {
            title: `Change to ${near}, which is in the hub`,
            changes: renameKey(analysis.spec, path, key),
            preferred: true,
          },
        ]
      : [],
  };
}
