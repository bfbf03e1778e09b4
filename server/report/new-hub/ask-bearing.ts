import { plain } from '../../engine/base/figures.ts';
import { decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { identifyBearing } from '../../engine/bearings/identify-bearing.ts';
import { ask, choose, type Script } from './question.ts';

/** A bearing as it was found: lines of its item in the stack beside its name. */
export interface FoundBearing {
  readonly lines: readonly string[];
  /** Outside diameter by its code or size, mm; null where neither is known. */
  readonly outside: number | null;
  /** Width as read, or by its code; mm, null where neither is known. */
  readonly width: number | null;
  /** What is not sure about it, a sentence; null where nothing is. */
  readonly doubt: string | null;
}

/** Asks for a bearing by its code, or by three readings; `same` is what an empty answer stands for. */
export function* askBearing(name: string, same: FoundBearing | null): Script<FoundBearing> {
  const code = yield* ask(
    {
      text: `Code engraved on ${name}`,
      hint: same
        ? 'as 6902-2RS; = as the one before; empty: not readable'
        : 'as 6902-2RS; empty: not readable',
      choices: null,
    },
    (answer) => {
      if (answer === '' || (answer === '=' && same)) return { value: answer };
      const decoded = decodeBearing(answer);
      if ('bearing' in decoded) return { value: answer };
      const near = decoded.failure.didYouMean.map((other) => other.code).slice(0, 3);
      return { problem: `${decoded.failure.error}${near.length > 0 ? `; near it: ${near.join(', ')}` : ''}` };
    },
  );
  if (code === '=' && same) return same;
  if (code !== '') return { lines: [`code: ${quoted(code)}`], ...sizesOf(code), doubt: null };
  const size = yield* ask(
    {
      text: `Bore, outside diameter and width of ${name}, by calliper`,
      hint: 'three lengths in mm, as 15.02 27.99 6.96; empty: not known',
      choices: null,
    },
    (answer) => {
      if (answer === '') return { value: null };
      const read = answer
        .split(/\s*[x×*]\s*|\s+/)
        .map((text) => (/^\d+(\.\d+)?$/.test(text) ? Number(text) : Number.NaN));
      const [bore = Number.NaN, outside = Number.NaN, width = Number.NaN] = read;
      if (read.length !== 3 || read.some(Number.isNaN))
        return { problem: `${answer} is not three lengths with decimal points` };
      if (outside <= bore)
        return { problem: `an outside of ${plain(outside)} is not larger than a bore of ${plain(bore)}` };
      return { value: { bore, outside, width } };
    },
  );
  if (!size)
    return {
      lines: [],
      outside: null,
      width: null,
      doubt: `${name}: neither code nor size is known; write its code before ordering`,
    };
  const { candidates, nearMisses } = identifyBearing(size);
  const [best, ...others] = candidates;
  const width = `width: measured ${plain(size.width)}`;
  if (!best) {
    const near = nearMisses[0] ? `; nearest is ${nearMisses[0].code}` : '';
    const written = [size.bore, size.outside, size.width]
      .map((value) => plain(Number(value.toFixed(1))))
      .join('x');
    return {
      lines: [`size: ${written}`],
      outside: Number(size.outside.toFixed(1)),
      width: size.width,
      doubt: `${name}: no known bearing is ${[size.bore, size.outside, size.width].map(plain).join(' × ')}${near}; measure again`,
    };
  }
  const closed = yield* choose(`What closes ${name}`, ['not seen', ...Object.keys(closures)]);
  const base = best.code.replace(/-2(RS|Z)$/, '');
  const alike = others.map((other) => other.code.replace(/-2(RS|Z)$/, '')).filter((other) => other !== base);
  const alsoFit =
    alike.length > 0 ? `; the same readings fit ${[...new Set(alike)].slice(0, 3).join(', ')}` : '';
  const written = `${base}${closures[closed] ?? ''}`;
  const decoded = decodeBearing(written);
  // A code says what closes the bearing; what nobody saw is not written into one.
  if (
    closed === 'not seen' ||
    !('bearing' in decoded) ||
    0.2 <= Math.abs(decoded.bearing.width - size.width)
  ) {
    const standard = [best.bore, best.outside, best.width].map(plain).join('x');
    const why =
      closed === 'not seen'
        ? 'write its code once its seals are seen'
        : `no ${written} is this wide; look again`;
    return {
      lines: [`size: ${standard}`, width],
      outside: best.outside,
      width: size.width,
      doubt: `${name} has the size of ${base}${alsoFit}; ${why}`,
    };
  }
  return {
    lines: [`code: ${written}`, width],
    outside: best.outside,
    width: size.width,
    doubt: alsoFit === '' ? null : `${name} taken as ${written} by its size${alsoFit}`,
  };
}

/** What closes a bearing, and how its code says so. */
const closures: Readonly<Record<string, string>> = {
  'rubber seals': '-2RS',
  'metal shields': '-2Z',
  'nothing, it is open': '',
};

/** Signs that mean something else in the file than in a code stand in quotes. */
const quoted = (code: string): string => (/^[\w ./-]+$/.test(code) ? code : JSON.stringify(code));

function sizesOf(code: string): { readonly outside: number | null; readonly width: number | null } {
  const decoded = decodeBearing(code);
  if (!('bearing' in decoded)) return { outside: null, width: null };
  return { outside: decoded.bearing.outside, width: decoded.bearing.width };
}
