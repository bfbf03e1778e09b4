/** What the reader of a workshop file hands on; `model.ts` has the hub. */
import type { BearingSize, Dimension, Quantity, Section, TemperatureRange } from './model.ts';
import type { Placed } from './place.ts';

/** A bearing code of the house: another code, or a size. */
export interface HouseBearing {
  readonly code: string | null;
  readonly size: BearingSize | null;
}

export interface MaterialValues {
  /** MPa */
  E: Quantity;
  nu: number;
  /** 1/K, written in 1e-6/K */
  expansion: number;
  /** kg/m³ */
  density: number;
  yield: Quantity;
}

export interface Workshop {
  /** `limits:` by key; the number in the unit of the built-in table. */
  readonly limits: Readonly<Record<string, Placed<number>>>;
  /** ± mm */
  readonly measuring: Placed<number> | null;
  readonly bearings: Readonly<Record<string, Placed<HouseBearing>>>;
  readonly materials: Readonly<Record<string, Section<MaterialValues>>>;
  readonly stock: {
    /** code → how many */
    readonly bearings: Readonly<Record<string, Placed<number>>>;
    /** profile → lengths, mm */
    readonly spokes: Readonly<Record<string, Placed<readonly number[]>>>;
    /** thicknesses, mm */
    readonly shims: Placed<readonly number[]> | null;
  };
  readonly drivers: readonly Section<{ name: string; outside: Dimension; inside: Dimension }>[];
  readonly defaults: {
    readonly clamp: Placed<Quantity> | null;
    readonly temperature: Placed<TemperatureRange> | null;
    readonly rider: Placed<Quantity> | null;
  };
}
