import {
  type BearingSize,
  type Candidate,
  calliperUncertainty,
  identifyBearing,
} from '../../engine/bearings/identify-bearing.ts';

/** Three readings off a bearing and what it may be. Lengths in mm. */
export interface IdentifyAnswer {
  readonly measured: BearingSize;
  readonly uncertainty: BearingSize;
  readonly candidates: readonly Candidate[];
  readonly nearMisses: readonly Candidate[];
}

/** A reading as it was written: `25.9` is known less finely than `25.90`. */
export interface WrittenReading {
  readonly value: number;
  /** Digits after the decimal point. */
  readonly decimals: number;
}

/**
 * Names the bearings that readings may belong to. `uncertainty` is ± mm; null stands for callipers on a worn
 * bearing, and then half of the last digit written counts too where a reading has one decimal.
 */
export function identifyAnswer(
  readings: Readonly<Record<keyof BearingSize, WrittenReading>>,
  uncertainty: number | null,
): IdentifyAnswer {
  const by = (key: keyof BearingSize): number => {
    if (uncertainty !== null) return uncertainty;
    return calliperUncertainty[key] + (readings[key].decimals === 1 ? 0.05 : 0);
  };
  const measured = {
    bore: readings.bore.value,
    outside: readings.outside.value,
    width: readings.width.value,
  };
  const each = { bore: by('bore'), outside: by('outside'), width: by('width') };
  return { measured, uncertainty: each, ...identifyBearing(measured, each) };
}
