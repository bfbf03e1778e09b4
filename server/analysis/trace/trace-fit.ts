import { asBuilt, meanOf } from '../../assembly/settle.ts';
import type { MountedBearing, RingFit } from '../mechanics/mounted-bearing.ts';
import { input, step, type TraceStep } from './trace-step.ts';

/** From two diameters to the clearance a fit takes, at the means and at 20 °C. */
export function traceFit(
  bearing: MountedBearing,
  fit: RingFit,
  how: 'drawn' | 'built',
): readonly TraceStep[] {
  const { seat, made, taker, interference } = fit;
  const outer = seat.ring === 'outer';
  const { address, stack } = bearing;
  const ring = outer ? stack.outside : stack.bore;
  const ringMean = ring ? meanOf(how === 'built' ? asBuilt(ring) : ring.drawn) : seat.diameter;
  const [inside, outside] = outer ? [ringMean, ringMean - made.mean] : [ringMean + made.mean, ringMean];
  const where = outer ? `in ${stack.part.values.seat?.value ?? 'its seat'}` : 'on the axle';
  const [inName, outName] = outer
    ? [`outside of ${address}`, `bore of ${stack.part.values.seat?.value ?? 'its seat'}`]
    : [`axle under ${address}`, `bore of ${address}`];
  const name = `${seat.ring} ring of ${address} ${where}`;
  const [wall] = seat.walls;
  const add = taker.finish === 'ground' ? 2 : 3;
  return [
    step(
      input(`interference of the ${name}, as made`, made.mean, 'mm'),
      'Δ = inside part − outside part, middles of their limits',
      outer ? 'iso-492' : 'iso-492',
      [input(inName, inside, 'mm'), input(outName, outside, 'mm')],
    ),
    step(
      input('interference after smoothing', interference.mean, 'mm'),
      interference.mean > 0 ? `Δe = Δ · d/(d + ${add})` : 'a clearance is not smoothed',
      'nsk-e1102e',
      [input('Δ', made.mean, 'mm'), input('d', seat.diameter, 'mm')],
      [outer ? 'seat bored or turned' : 'journal ground'],
    ),
    step(input('pressure at the seat', fit.fit.pressure, 'MPa'), pressureFormula(outer), 'ntn-2203e', [
      input('Δe', Math.max(0, interference.mean), 'mm'),
      input('d', seat.diameter, 'mm'),
      input('raceway dr', seat.raceway, 'mm'),
      input('E of the ring', seat.material.E, 'MPa'),
      input('ν of the ring', seat.material.nu, '1'),
      ...(wall
        ? [
            input(outer ? 'outside of the wall dw' : 'bore of the axle dw', wall.to, 'mm'),
            input('E of the wall', wall.E, 'MPa'),
            input('ν of the wall', wall.nu, '1'),
          ]
        : []),
    ]),
    step(
      input('clearance it takes', fit.fit.clearanceLoss, 'mm'),
      outer ? '2·p·dr·d² / [E·(d² − dr²)]' : '2·p·dr·d² / [E·(dr² − d²)]',
      'timoshenko-goodier',
      [input('p', fit.fit.pressure, 'MPa'), input('d', seat.diameter, 'mm'), input('dr', seat.raceway, 'mm')],
    ),
  ];
}

/** Two thick cylinders: the ring from raceway to seat, the wall from the seat to its far face. */
function pressureFormula(outer: boolean): string {
  const ring = outer ? '(d² + dr²)/(d² − dr²) − ν' : '(dr² + d²)/(dr² − d²) + ν';
  const wall = outer ? '(dw² + d²)/(dw² − d²) + ν' : '(d² + dw²)/(d² − dw²) − ν';
  return `p = Δe / {d·[(${ring})/E of the ring + (${wall})/E of the wall]}`;
}
