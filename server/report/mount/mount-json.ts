import { lineJson } from '../stack/line-json.ts';
import { anglesJson, buildsJson, rangeOfPairJson, settingJson } from '../stack/mechanics-json.ts';
import { conesJson } from './cone-lines.ts';
import type { FitMount, Range } from './fit-mount.ts';
import type { BearingMount, BuiltPair, MountAnswer } from './mount-answer.ts';

/** What `mount --json` prints for one variant: mm, N, MPa, °C; µm where the key says so. */
export function mountJson(answer: MountAnswer) {
  const { variant, temperature, clamp, bearings, pairs, lines } = answer;
  const { unworked, service, assumed, cautions, apart } = answer;
  return {
    name: variant,
    temperature,
    ...(apart ? { temperatures: apart } : {}),
    clampForce: clamp?.force ?? null,
    bearings: bearings.map(bearingJson),
    pairs: pairs.map(pairJson),
    lines: lines.map((line) => lineJson(line, clamp !== null)),
    cones: conesJson(answer.cups, clamp, answer.mostPlay),
    unchecked: unworked.map(({ bearings: of, missing }) => ({
      what: `play of ${of.join(' and ')}`,
      missing,
    })),
    service: service.map(({ temperature: at, bearings: then, pairs: felt }) => ({
      temperature: at,
      bearings: then.map(({ address, interference, mounted, usedUp }) => ({
        address,
        interferenceUm: um(interference),
        mountedClearanceUm: um(mounted),
        shareWithoutClearance: usedUp,
      })),
      pairs: felt.map(({ bearings: of, playClamped, ballLoad }) => ({ bearings: of, playClamped, ballLoad })),
    })),
    assumptions: assumed,
    cautions,
  };
}

function bearingJson(bearing: BearingMount) {
  const { address, code, seat, outer, inner, free, mounted, axial, axialRange, contactAngle } = bearing;
  return {
    address,
    code,
    seat,
    outer: outer && fitJson(outer),
    inner: inner && fitJson(inner),
    ...(bearing.compound
      ? {
          compoundHolds: {
            min: bearing.compound.least,
            typical: bearing.compound.typical,
            max: bearing.compound.most,
          },
        }
      : {}),
    freeClearanceUm: free && !contactAngle ? [free.lo * 1000, free.hi * 1000] : null,
    thermalLossUm: um(bearing.thermalLoss),
    mountedClearanceUm: contactAngle ? null : mounted && rangeJson(mounted, 1000),
    ...(contactAngle ? { contactAngle: anglesJson(contactAngle) } : {}),
    shareWithoutClearance: bearing.usedUp,
    axialClearanceUm: um(axial),
    ...(axialRange ? { axialRangeUm: [axialRange.lo * 1000, axialRange.hi * 1000] } : {}),
  };
}

function fitJson(fit: FitMount) {
  const { warming, pressForce } = fit;
  return {
    madeUm: rangeJson(fit.made, 1000),
    interferenceUm: rangeJson(fit.interference, 1000),
    pressure: rangeJson(fit.pressure),
    clearanceLossUm: rangeJson(fit.clearanceLoss, 1000),
    wallHoop: fit.wallHoop,
    wallHoopRange: rangeJson(fit.wallHoopRange),
    ringHoop: fit.ringHoop,
    wallYield: fit.wallYield,
    pressForce: { min: pressForce.least, typical: pressForce.typical, max: pressForce.most },
    freeAt: fit.freeAt,
    freeAtRange: fit.freeAtRange,
    warming: warming && {
      part: warming.part,
      difference: warming.difference,
      to: warming.to,
      possible: warming.possible,
    },
  };
}

function pairJson(pair: BuiltPair) {
  const { axialClearance, assumed, builds, setting, range, ...rest } = pair;
  return {
    ...rest,
    ...settingJson(setting),
    axialClearanceUm: um(axialClearance),
    ...rangeOfPairJson(range, rest.loadedBy !== null),
    ...buildsJson(builds),
    assumptions: assumed,
  };
}

function rangeJson({ least, mean, most }: Range, times = 1) {
  return { min: least * times, mean: mean * times, max: most * times };
}

const um = (mm: number | null): number | null => (mm === null ? null : mm * 1000);
