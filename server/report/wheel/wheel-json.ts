import type { WheelAnalysis, WheelGroup } from '../../analysis/wheel/analyze-wheel.ts';
import type { MeasuredSide } from '../../analysis/wheel/measured-wheel.ts';
import type { SideTension } from '../../analysis/wheel/wheel-tension.ts';

/** Degrees of an angle in rad: only what is printed has them. */
const degrees = (angle: number): number => (angle * 180) / Math.PI;

/** What `wheel --json` prints: mm, N, N/mm, degrees; null where something could not be worked out. */
export function wheelJson(wheel: WheelAnalysis) {
  const { hub, tension, strength, measured } = wheel;
  const buckling = strength?.buckling ?? null;
  return {
    hub: hub && { file: hub.file, name: hub.name, variant: hub.variant },
    groups: wheel.groups.map(groupJson),
    tension: tension && {
      left: tension.left,
      right: tension.right,
      ratio: tension.ratio,
      rimCompression: tension.rimCompression,
      set: tension.set,
      sides: { left: sideJson(tension.sides.left), right: sideJson(tension.sides.right) },
    },
    stiffness: strength && {
      lateral: strength.stiffness.lateral,
      radial: strength.stiffness.radial,
      tangential: strength.stiffness.tangential,
    },
    buckling: buckling && { tension: buckling.tension, mode: buckling.mode, share: buckling.share },
    slackLoad: strength?.slackLoad ?? null,
    measured: measured && {
      left: measured.sides.left && measuredJson(measured.sides.left),
      right: measured.sides.right && measuredJson(measured.sides.right),
      ratio: measured.ratio,
      balance: measured.balance,
      off: measured.off,
    },
    unchecked: wheel.unchecked.map(({ what, missing }) => ({ what, missing })),
    assumptions: wheel.assumed,
  };
}

function groupJson({ side, head, direction, count, angle, fit, crossing, span }: WheelGroup) {
  return {
    side,
    group: head,
    direction,
    count,
    length: fit && {
      exact: fit.length.exact,
      corrected: fit.length.corrected,
      chosen: fit.length.chosen,
      proposed: fit.length.proposed,
      written: fit.length.written?.value ?? null,
      stray: fit.length.stray,
    },
    span,
    angle: degrees(angle),
    engagement: fit?.nipple.engagement ?? null,
    end: fit?.nipple.end ?? null,
    crossing: crossing && {
      crosses: crossing.crosses,
      lean: degrees(crossing.lean),
      neighbour: crossing.neighbour,
      verdict: crossing.verdict,
      most: crossing.most,
    },
  };
}

const sideJson = ({ value, most, mostFrom, least, withTyre }: SideTension) => ({
  value,
  most,
  mostFrom,
  least,
  withTyre,
});

const measuredJson = ({ readings, mean, least, most, spread, deviation, outliers }: MeasuredSide) => ({
  count: readings.length,
  mean,
  least,
  most,
  spread,
  deviation,
  outliers: outliers.map(({ at, tension, share, turns }) => ({ spoke: at + 1, tension, share, turns })),
});
