import type { Analysis, VariantAnalysis } from '../../analysis/analyze.ts';
import { type DecodedBearing, decodeBearing } from '../../engine/bearings/decode-bearing.ts';
import { setValue } from '../../spec/edit.ts';
import type { Check, Draft } from '../check.ts';
import { eachVariant } from '../each-variant.ts';
import { pageHub } from '../page-hub.ts';
import { ownCode, saySize } from './fitting.ts';
import { wetDuty } from './wet-duty.ts';
import { suffixesOf } from './with-basic.ts';

/** A shielded bearing stands where water gets in. */
export const shieldInWater: Check = {
  code: 'shield-in-water',
  group: 'bearing',
  severity: 'warning',
  summary: 'A shielded bearing stands where water gets in.',
  page: {
    why: 'A shield is a metal disc with a gap around the inner ring. It keeps grit and grease in their places but lets water through, which washes the grease out and rusts the races within a season. A seal whose lip touches the ring holds it back, at the price of a little drag.',
    bad: `${pageHub(['code: 6803-2RS', 'code: 6803-2Z'])}duty: { water: mud }\n`,
    good: `${pageHub()}duty: { water: mud }\n`,
    sources: ['makers’ pages on seals and shields', 'common practice'],
  },
  run: (analysis) => eachVariant(analysis, (variant) => shielded(analysis, variant)),
};

function* shielded(analysis: Analysis, variant: VariantAnalysis): Iterable<Draft> {
  const water = wetDuty(variant);
  if (!water) return;
  for (const stacked of variant.assembly.bearings) {
    const { bearing, address } = stacked;
    const code = ownCode(stacked);
    if (!code || bearing?.closure !== 'shield') continue;
    const sealed = sealedCode(code.value, bearing);
    yield {
      path: code.path,
      message: `${code.value} has ${bearing.closedSides === 2 ? 'shields' : 'a shield'}, which let water into ${address}; the duty says ${water.value} — ${sealed ? `write ${sealed}, with seals that touch` : 'take one with seals that touch'}`,
      related: [{ path: water.path, message: `water: ${water.value}` }],
      data: { code: code.value, closure: bearing.closure, water: water.value },
      fixes: sealed
        ? [
            {
              title: `Change to ${sealed} (${saySize(bearing)}), the same size with seals that touch`,
              changes: setValue(analysis.spec, code.path, sealed),
              preferred: true,
            },
          ]
        : [],
    };
  }
}

const shield = /2ZS|ZZS|ZZ1|ZZX|ZZ|2TZ|2Z|HH|TZ|ZS|Z/;

/** The code with contact seals in place of the shields; null where that is another size or no bearing. */
function sealedCode(code: string, bearing: DecodedBearing): string | null {
  const { text, start } = suffixesOf(code, bearing);
  const found = shield.exec(text.toUpperCase());
  if (!found) return null;
  const seal = bearing.closedSides === 2 ? '2RS' : 'RS';
  const other =
    code.slice(0, start) + text.slice(0, found.index) + seal + text.slice(found.index + found[0].length);
  const again = decodeBearing(other);
  if ('failure' in again || again.bearing.rubs !== true || saySize(again.bearing) !== saySize(bearing))
    return null;
  return other;
}
