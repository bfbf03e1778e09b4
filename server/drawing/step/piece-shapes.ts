import type { Body, Tube } from '../../service/body.ts';
import { hatch } from '../hatch.ts';
import { line, type Shape } from '../scene.ts';
import { box, clipped, type Frame, ownEdges } from './step-frame.ts';

/** A piece of the hub in a picture: wide hatching where it stays, close lines where it moves. */
export function pieceShapes(
  body: Body,
  tubes: readonly Tube[],
  role: 'held' | 'moving',
  frame: Frame,
): readonly Shape[] {
  const { bearing } = body.part;
  const [inner, , outer] = tubes;
  const drawn = bearing && inner && outer ? [inner, outer] : tubes;
  const shapes = drawn.flatMap((tube): readonly Shape[] => faceOf(tube, role, frame));
  if (!bearing || !inner) return shapes;
  const shift = inner.left - bearing.inner.left;
  const balls = bearing.balls.rows
    .filter((row) => frame.left < row + shift && row + shift < frame.right)
    .map(
      (row): Shape => ({
        kind: 'circle',
        role: 'outline',
        centre: frame.at(row + shift, bearing.balls.circle / 2),
        radius: (bearing.balls.diameter / 2) * frame.scale,
      }),
    );
  return [...shapes, ...balls];
}

function faceOf(tube: Tube, role: 'held' | 'moving', frame: Frame): readonly Shape[] {
  const seen = clipped(tube, frame);
  if (!seen) return [];
  const face = box(seen, frame);
  const spacing = role === 'held' ? 1.8 : 0.55;
  return [
    hatch(face, { rising: role === 'held', spacing }),
    ...ownEdges(tube, seen, frame).map((edge) => line('outline', edge)),
  ];
}
