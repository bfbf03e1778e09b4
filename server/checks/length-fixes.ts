import type { Analysis, VariantAnalysis } from '../analysis/analyze.ts';
import type { Loop, LoopTerm } from '../assembly/loop.ts';
import { asBuilt, meanOf } from '../assembly/settle.ts';
import { length, signed } from '../engine/base/figures.ts';
import { setValue } from '../spec/edit.ts';
import type { Dimension, StackPart } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';
import type { Fix } from '../spec/problem.ts';
import { withNominal } from '../spec/with-nominal.ts';

/** One length that could be rewritten so that a loop comes out right. */
export interface LengthChange {
  readonly address: string;
  readonly path: SpecPath;
  readonly dimension: Dimension;
  readonly from: number;
  readonly to: number;
  /** Lower is better. */
  readonly rank: number;
  /** What it does to another loop, when it does. */
  readonly sideEffect: string | null;
  /** Whether it takes two bearings further from where their stops hold them: it closes one loop and opens another. */
  readonly harmful: boolean;
}

const rankOf: Partial<Record<StackPart['kind'], number>> = {
  shim: 0,
  washer: 1,
  spacer: 2,
  adjuster: 3,
  collar: 4,
  'end-cap': 6,
  locknut: 7,
  cone: 8,
};

/** Added to the rank of a change that does harm elsewhere. */
const afterAllOthers = 20;

/**
 * The lengths of the stack that could bring the mean of a loop to `target`, best first: shims and spacers before
 * end caps, and a part that sets the distance of two located bearings last, unless the change helps there too.
 * Measured parts exist already and are left alone.
 */
export function lengthChanges(
  variant: VariantAnalysis,
  loop: Loop,
  target: number,
  how: 'drawn' | 'built',
): readonly LengthChange[] {
  const limits = (item: LoopTerm) => (how === 'drawn' ? item.settled.drawn : asBuilt(item.settled));
  const mean = loop.terms.reduce((sum, item) => sum + item.sign * item.count * meanOf(limits(item)), 0);
  const changes = loop.terms.flatMap((item): readonly LengthChange[] => {
    const part = variant.assembly.line.find(({ address }) => address === item.address)?.part;
    const written = part?.values.length;
    const rank = part ? rankOf[part.kind] : undefined;
    if (item.key !== 'length' || !part || !written || rank === undefined || written.value.measured) return [];
    const from = written.value.nominal;
    const to = rounded(from + (item.sign * (target - mean)) / item.count, written.value);
    if (to <= 0 || to === from) return [];
    const effect = pairEffect(variant, item, to - from);
    const twin = twinOf(variant, part);
    const alike = twin !== null && Math.abs((twin.values.length?.value.nominal ?? 0) - to) < 0.005;
    const base = { address: item.address, path: written.path, dimension: written.value, from, to };
    if (alike) return [{ ...base, rank: -1, sideEffect: `the same as ${twin.address}`, harmful: false }];
    const { harmful, said } = effect;
    return [{ ...base, rank: rank + (harmful ? afterAllOthers : 0), sideEffect: said, harmful }];
  });
  return changes.sort((a, b) => a.rank - b.rank);
}

/** The part of the same kind on the other side: a length that differs from it and should not is the likely slip. */
function twinOf(variant: VariantAnalysis, part: StackPart): StackPart | null {
  const other = part.name === 'left' ? 'right' : part.name === 'right' ? 'left' : null;
  const address = `${part.kind}.${other}`;
  return variant.assembly.hub.stack.find((candidate) => candidate.address === address) ?? null;
}

function rounded(value: number, dimension: Dimension): number {
  const digits = dimension.unit === 'in' ? 4 : 2;
  return Number(value.toFixed(digits));
}

/** What a change of length does to δ of the pairs it lies in. */
function pairEffect(
  variant: VariantAnalysis,
  item: LoopTerm,
  change: number,
): { harmful: boolean; said: string | null } {
  for (const pair of variant.pairs) {
    if (pair.loop.located !== 'shoulders' || !pair.drawn) continue;
    const inside = pair.loop.terms.find((other) => other.path === item.path);
    if (!inside) continue;
    const now = pair.drawn.mean;
    const then = now + inside.sign * inside.count * change;
    const worse = Math.abs(now) + 0.005 < Math.abs(then);
    const between = pair.loop.bearings.join(' and ');
    return {
      harmful: worse,
      said: `moves the inner rings of ${between} from ${signed(now)} to ${signed(then)} against their shoulders`,
    };
  }
  return { harmful: false, said: null };
}

/**
 * The change to make first, as a request: `shorten end-cap.right by 0.12 to 13.91`; null where none helps, or where
 * each would do harm elsewhere.
 */
export function sayBest(changes: readonly LengthChange[]): string | null {
  const [best] = changes;
  if (!best || best.harmful) return null;
  const shared = sharedByCaps(changes);
  return shared && isCap(best) ? sayShared(shared) : sayChange(best);
}

/** A change as a request, whatever else it does. */
export function sayChange(change: LengthChange): string {
  const by = Math.abs(change.to - change.from);
  return `${verb(change)} ${change.address} by ${length(by)} to ${length(change.to)}`;
}

const verb = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  to < from ? 'shorten' : 'lengthen';

const isCap = ({ address }: LengthChange): boolean => address.startsWith('end-cap.');

/** A quick fix for each change; two equal end caps can share it, which keeps the hub centred. */
export function lengthFixes(
  analysis: Analysis,
  changes: readonly LengthChange[],
  result: string,
): readonly Fix[] {
  const shared = sharedByCaps(changes);
  const list = changes.map(
    (change): Fix => ({
      title: `${capital(sayChange(change))}: ${result}${change.sideEffect ? `; ${change.sideEffect}` : ''}`,
      changes: setValue(analysis.spec, change.path, withNominal(change.dimension, change.to)),
    }),
  );
  if (shared) {
    list.splice(changes.findIndex(isCap), 0, {
      title: `${capital(sayShared(shared))}: ${result}, and the hub stays centred`,
      changes: shared.caps.flatMap((cap) =>
        setValue(analysis.spec, cap.path, withNominal(cap.dimension, shared.to)),
      ),
    });
  }
  // What does harm elsewhere is offered, and never taken without a look.
  if (changes[0]?.harmful) return list;
  return list.map((fix, index) => (index === 0 ? { ...fix, preferred: true } : fix));
}

/** Two equal end caps and the length that both take when they share a change. */
interface SharedChange {
  readonly caps: readonly [LengthChange, LengthChange];
  readonly from: number;
  readonly to: number;
}

function sharedByCaps(changes: readonly LengthChange[]): SharedChange | null {
  const caps = changes.filter(isCap);
  const [one, other] = caps;
  // A cap that becomes the same as its twin is the slip itself; the other one is right.
  if (!one || !other || caps.length !== 2 || one.from !== other.from) return null;
  return { caps: [one, other], from: one.from, to: Number(((one.from + one.to) / 2).toFixed(3)) };
}

function sayShared(shared: SharedChange): string {
  const by = Number(Math.abs(shared.to - shared.from).toFixed(3));
  return `${verb(shared)} both end caps by ${by} to ${shared.to.toFixed(3).replace(/0$/, '')}`;
}

/** The first letter large, for a title. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
