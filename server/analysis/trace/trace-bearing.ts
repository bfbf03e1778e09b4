import { grooveCentreDistance } from '../../engine/contact/ball-geometry.ts';
import type { MountedBearing } from '../mechanics/mounted-bearing.ts';
import { traceFit } from './trace-fit.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/** From the code of a bearing to its mounted and axial clearance, at the means. */
export function traceBearing(bearing: MountedBearing, how: 'drawn' | 'built'): readonly TraceStep[] {
  const { address, free, outerFit, innerFit, mounted, axial, stack, inner, geometry, contactAngle } = bearing;
  const steps: TraceStep[] = [];
  const centres = grooveCentreDistance(geometry);
  if (free && contactAngle) {
    steps.push(
      step(
        input(`clearance that stands for the contact angle of ${address}`, free.lo, 'mm'),
        'G0 = 2·m0·(1 − cos α)',
        'nsk-e1102e',
        [input('m0', centres, 'mm'), input('α', degrees(contactAngle.nominal), '°')],
        bearing.assumed.filter((text) => text.includes(address)),
      ),
    );
  } else if (free) {
    const group = stack.bearing?.clearance.group ?? '';
    steps.push(
      step(
        input(`clearance of ${address} before mounting`, (free.lo + free.hi) / 2, 'mm'),
        'middle of its group',
        'iso-5753-1',
        [input('least', free.lo, 'mm'), input('greatest', free.hi, 'mm')],
        [`group ${group}`],
      ),
    );
  }
  for (const fit of [outerFit, innerFit]) if (fit) steps.push(...traceFit(bearing, fit, how));
  if (!free || !mounted) return steps;
  steps.push(
    step(
      input(`mounted clearance of ${address}`, mounted.mean, 'mm'),
      'G = G0 − loss at the outer ring − loss at the inner ring',
      'ntn-2203e',
      [
        input('G0', (free.lo + free.hi) / 2, 'mm'),
        input('loss at the outer ring', outerFit?.fit.clearanceLoss ?? 0, 'mm'),
        input('loss at the inner ring', innerFit?.fit.clearanceLoss ?? 0, 'mm'),
      ],
      [...(outerFit ? [] : ['outer ring taken as free']), ...(innerFit ? [] : ['inner ring taken as free'])],
    ),
  );
  if (contactAngle) {
    return [
      ...steps,
      step(
        input(`contact angle of ${address} as mounted`, degrees(contactAngle.mounted), '°'),
        "cos α' = 1 − G/(2·m0)",
        'nsk-e1102e',
        [input('G', mounted.mean, 'mm'), input('m0', centres, 'mm')],
      ),
    ];
  }
  if (axial === null) return steps;
  return [
    ...steps,
    step(
      input(`distance of the groove centres of ${address}`, centres, 'mm'),
      'm0 = ri + re − Dw',
      inner.grooveBasis === 'estimate' ? 'estimate' : inner.grooveBasis === 'published' ? 'nsk-e1102e' : null,
      [
        input('ri', geometry.innerConformity * geometry.diameter, 'mm'),
        input('re', geometry.outerConformity * geometry.diameter, 'mm'),
        input('Dw', geometry.diameter, 'mm'),
      ],
      bearing.assumed.filter((text) => text.includes(address)),
    ),
    step(
      input(`axial clearance of ${address}`, axial, 'mm'),
      mounted.mean > 0 ? 'Ga = √(4·m0·G − G²)' : 'none where no clearance is left',
      'nsk-e1102e',
      [input('m0', centres, 'mm'), input('G', mounted.mean, 'mm')],
    ),
  ];
}

const degrees = (angle: number): number => (angle * 180) / Math.PI;
