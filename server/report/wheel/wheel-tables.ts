import type { WheelAnalysis } from '../../analysis/wheel/analyze-wheel.ts';
import type { SpecPath } from '../../spec/place.ts';
import type { Gravity } from '../loop-table.ts';
import { sayTension } from './say-tension.ts';
import { spokeCells } from './spoke-cells.ts';

/** A table of the wheel for a page; each row leads to its place in the text. */
export interface WheelTable {
  readonly title: string;
  readonly titles: readonly string[];
  readonly rows: readonly {
    readonly cells: readonly string[];
    readonly gravity: Gravity | null;
    readonly path: SpecPath;
  }[];
}

/** Lengths by group, tensions by side, and what a meter read. */
export function wheelTables(wheel: WheelAnalysis): readonly WheelTable[] {
  return [lengths(wheel), tensions(wheel), measured(wheel)].filter(({ rows }) => rows.length > 0);
}

function lengths({ groups }: WheelAnalysis): WheelTable {
  return {
    title: 'Spokes',
    titles: ['Group', 'Count', 'At tension', 'Length', 'End in the slot', 'Engaged'],
    rows: groups.map((group) => {
      const { side, fit } = group;
      return {
        cells: spokeCells(group),
        gravity: fit && (fit.nipple.end < fit.band.lo || fit.band.hi < fit.nipple.end) ? 'warning' : null,
        path: fit?.length.written?.path ?? ['spokes', side],
      };
    }),
  };
}

function tensions({ tension }: WheelAnalysis): WheelTable {
  const sides = tension ? (['left', 'right'] as const) : [];
  return {
    title: 'Tension',
    titles: ['Side', 'Mean', 'At most', 'At least', 'With the tyre'],
    rows: sides.flatMap((side) => {
      const one = tension?.sides[side];
      if (!one) return [];
      const { value, most, least, withTyre } = one;
      const tyre = withTyre ? `${sayTension(withTyre.lo)} to ${sayTension(withTyre.hi)}` : '';
      return [
        {
          cells: [side, sayTension(value), sayTension(most), sayTension(least), tyre],
          gravity: value < least || most < value ? ('warning' as const) : null,
          path: ['tension'],
        },
      ];
    }),
  };
}

function measured({ measured: read }: WheelAnalysis): WheelTable {
  return {
    title: 'Measured',
    titles: ['Side', 'Mean', 'Least', 'Most', 'Spread', 'To turn'],
    rows: (['left', 'right'] as const).flatMap((side) => {
      const one = read?.sides[side];
      if (!one) return [];
      const strays = one.outliers.map(({ at, tension }) => `${at + 1}: ${sayTension(tension)}`);
      return [
        {
          cells: [
            side,
            sayTension(one.mean),
            sayTension(one.least),
            sayTension(one.most),
            `±${(one.spread * 100).toFixed(0)} %`,
            strays.join(', ') || 'none',
          ],
          gravity: strays.length > 0 ? ('warning' as const) : null,
          path: one.path,
        },
      ];
    }),
  };
}
