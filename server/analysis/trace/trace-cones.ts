import { area } from '../../engine/play/clamp-compression.ts';
import { turnOfCone } from '../../engine/play/cup-and-cone.ts';
import type { ConeMechanics } from '../mechanics/cup-cone.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/** From the axle between the cones to the play to leave, the turn of the cone, and what is left once clamped. */
export function traceCones(cones: ConeMechanics): readonly TraceStep[] {
  const { axle, compliance, axleForce, leave, thread, set, result, assumed } = cones;
  const force = input('force through the axle F', axleForce, 'N');
  const give = input('L/(E·A) of the axle between the cones', compliance, 'mm/N');
  const left = input('play for the clamp', leave, 'mm');
  return [
    step(
      give,
      'L / (E · π/4 · (d² − b²))',
      null,
      [
        input('length L', axle.length, 'mm'),
        input('E', axle.E, 'MPa'),
        input('diameter d', axle.outer, 'mm'),
        input('bore b', axle.inner, 'mm'),
        input('A', area(axle), 'mm²'),
      ],
      assumed,
    ),
    step(left, 'F · L/(E·A)', null, [force, give]),
    ...(thread
      ? [
          step(
            input('turn of the cone for it', (turnOfCone(leave, thread.pitch) * 180) / Math.PI, '°'),
            '360° · play / pitch',
            null,
            [left, input('pitch', thread.pitch, 'mm')],
          ),
        ]
      : []),
    ...(set && result
      ? [
          step(input('play once clamped', result.playClampedSigned, 'mm'), 'play set − F · L/(E·A)', null, [
            input('play set on the bench', set.play, 'mm'),
            left,
          ]),
          step(
            input('axial force through the balls', result.ballLoad, 'N'),
            'N where o(N) + N · Σ L/(E·A) = missing play; o from Hertz contact at both races',
            'harris-analysis',
            [],
          ),
        ]
      : []),
  ];
}
