import type { VariantAnalysis } from '../analysis/analyze.ts';
import type { LoopAnalysis } from '../analysis/close.ts';
import { classWithoutLimits, type Settled, settle, sizeRange } from '../assembly/settle.ts';
import { length, plain, share } from '../engine/base/figures.ts';
import { readDimension } from '../spec/dimension.ts';
import type { Dimension } from '../spec/model.ts';
import type { SpecPath } from '../spec/place.ts';
import type { KeyInfo } from '../spec/schema/key-info.ts';
import type { Snapshot } from '../workspace/workspace.ts';
import { fitWords } from './hover-fit.ts';
import { type AnyLoop, loopName, loopsOf, resultWords, shareOf, wantedWords } from './loop-words.ts';
import { escaped, paragraphs, signedWhole, wideTable } from './markdown.ts';
import { samePath } from './section-at.ts';

/** A dimension: its limits, what it is a part of, and what fits in or on it. */
export function dimensionWords(snapshot: Snapshot, path: SpecPath, info: KeyInfo): string | null {
  const dimension = dimensionAt(snapshot, path, info);
  const [first] = snapshot.analysis.variants;
  if (!dimension || !first) return null;
  const settled = settle({ value: dimension, path }, first.assembly.rules);
  return paragraphs(
    `**${info.key}** ${escaped(dimension.written)}`,
    limitWords(dimension, settled),
    // A class without limits fits nothing that anybody knows.
    ...(classWithoutLimits(dimension) === null ? fitWords(snapshot, path, settled) : []),
    ...snapshot.analysis.variants.flatMap((variant) => loopParagraphs(variant, path)),
    settled.assumed && `*${escaped(settled.assumed)}*`,
  );
}

function dimensionAt({ document }: Snapshot, path: SpecPath, { type }: KeyInfo): Dimension | null {
  if (type !== 'length' && type !== 'bore' && type !== 'shaft' && type !== 'offset') return null;
  const { start, end } = document.span(path);
  const reading = readDimension(document.text.slice(start, end).replace(/^(["'])(.*)\1$/, '$2'), type);
  return 'dimension' in reading ? reading.dimension : null;
}

function limitWords(dimension: Dimension, settled: Settled): string {
  const { drawn, built } = settled;
  const fine = dimension.tolerance.kind === 'class' || Math.abs(drawn.upper - drawn.lower) < 0.05;
  const digits = fine ? 3 : 2;
  const [lo, hi] = sizeRange(drawn);
  const inch = dimension.unit === 'in' ? `${plain(drawn.nominal)} mm` : null;
  const limits = lo === hi ? null : `${length(lo, digits)} to ${length(hi, digits)} mm`;
  const deviations =
    dimension.tolerance.kind === 'class' && lo !== hi
      ? `(${signedWhole(drawn.upper * 1000)}/${signedWhole(drawn.lower * 1000)} µm)`
      : null;
  const drawnWords = dimension.drawn
    ? [inch, limits, deviations].filter((text) => text !== null).join(' ')
    : '';
  if (!built) return drawnWords;
  const uncertainty = (built.upper - built.lower) / 2;
  const measured = `measured ${length(built.nominal, 3)} ±${plain(uncertainty)} mm`;
  return drawnWords ? `${drawnWords}; ${measured}` : measured;
}

/** The loops a value is a term of, or the wanted value of. */
function loopParagraphs(variant: VariantAnalysis, path: SpecPath): readonly string[] {
  const name = variant.name === null ? '' : ` (${escaped(variant.name)})`;
  return loopsOf(variant).flatMap((item): readonly string[] => {
    const closed = item.built ?? item.drawn;
    if (!closed) return [];
    const measured = item.built ? ', as measured' : '';
    const { wanted } = item.loop;
    if (wanted && samePath(wanted.path, path)) {
      return [
        `**${loopName(item.loop)}**${name}: ${resultWords(closed, wanted)}${measured}`,
        contributions(item),
      ];
    }
    const index = item.loop.terms.findIndex((term) => samePath(term.path, path));
    if (index === -1) return [];
    const part = shareOf(item, index);
    const varies = part ? `${share(part)} of the variation of` : 'a part of';
    return [`${varies} **${loopName(item.loop)}**${name}: ${resultWords(closed, wanted)}${measured}`];
  });
}

/** What a loop is made of, in the order of the sum. */
function contributions(item: LoopAnalysis<AnyLoop>): string {
  const rows = item.loop.terms.map((term, index) => {
    const { nominal, lower, upper } = item.built
      ? (term.settled.built ?? term.settled.drawn)
      : term.settled.drawn;
    const sign = term.sign === 1 ? '+' : '−';
    const times = term.count === 1 ? '' : `${term.count} × `;
    const part = shareOf(item, index);
    const spread =
      lower === 0 && upper === 0 ? '' : `${signedWhole(upper * 1000)}/${signedWhole(lower * 1000)} µm`;
    return [`${sign} ${times}${length(nominal)}`, term.address, spread, part === null ? '' : share(part)];
  });
  const { wanted } = item.loop;
  return wideTable(
    [`mm, wanted ${wanted ? wantedWords(wanted) : 'nothing'}`, 'part', 'varies by', 'share'],
    rows,
  );
}
