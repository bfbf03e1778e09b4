import { type Body, spanOf, type Tube } from '../../service/body.ts';
import type { Step } from '../../service/step.ts';
import { group, line, type Scene, type Shape } from '../scene.ts';
import { svg } from '../svg.ts';
import { pieceShapes } from './piece-shapes.ts';
import { clipped, type Frame, frameOf, ownEdges, stepPicture } from './step-frame.ts';
import { type Tool, toolsOf } from './tools-of.ts';

/** A pressed step as a small picture. */
export interface StepPicture {
  readonly svg: string;
  readonly title: string;
}

/**
 * The seat of a pressed step in section, above the axis: what stays has wide hatching, what moves close lines, and the
 * tools have letters: D the driver, S the support, P what pulls. An arrow shows the way. Null where no bearing with a size moves.
 */
export function drawStep(step: Step, bodies: readonly Body[], title: string, id: string): StepPicture | null {
  if (step.kind !== 'press-in' && step.kind !== 'press-out') return null;
  const [first] = step.pressed;
  const bearing = bodies.find(({ address }) => address === first?.bearing);
  // A bearing written without width or without rings leaves nothing to be seen.
  if (!bearing || bearing.tubes.length === 0) return null;
  const back = step.kind === 'press-in' ? Math.min(step.travel, shown) : 0;
  const away = step.towards === 'right' ? -back : back;
  const tools = toolsOf(step, bodies, away);
  const frame = frameOf([
    ...bearing.tubes,
    ...bearing.tubes.map((tube) => shifted(tube, away)),
    ...tools.filter((tool) => nextTo(tool, bearing)).map(({ tube }) => short(tube, bearing, away)),
  ]);
  const held = bodies.filter(({ address }) => step.held.includes(address));
  const moving = bodies.filter(({ address }) => step.moving.includes(address));
  const shapes: Shape[] = [
    ...held.flatMap((body) => pieceShapes(body, body.tubes, 'held', frame)),
    ...moving.flatMap((body) => {
      const tubes = body.tubes.map((tube) => shifted(tube, away));
      return pieceShapes(body, tubes, 'moving', frame);
    }),
    ...tools.flatMap((tool) => toolShapes(tool, frame)),
    ...arrow(step.towards, frame),
  ];
  const scene: Scene = {
    view: [0, 0, stepPicture.width, stepPicture.height],
    groups: [group('detail', shapes)],
  };
  return { svg: svg(scene, { title, description: title, printed: false, style: null, id }), title };
}

/** How far a part that is pressed home is shown before its place, mm. */
const shown = 3;
/** Of a tool so much is in the window at least, mm. */
const toolShown = 5;

const shifted = (tube: Tube, by: number): Tube => ({ ...tube, left: tube.left + by, right: tube.right + by });

/** Whether a tool works close to the bearing: a support at the far end of the hub is told in words. */
function nextTo({ tube }: Tool, bearing: Body): boolean {
  const { left, right } = spanOf(bearing.tubes);
  return left - 15 < tube.right && tube.left < right + 15;
}

/** The end of a tool that touches the bearing. */
function short(tube: Tube, bearing: Body, away: number): Tube {
  const { left, right } = spanOf(bearing.tubes.map((one) => shifted(one, away)));
  return tube.left < left
    ? { ...tube, left: Math.max(tube.left, tube.right - toolShown) }
    : { ...tube, right: Math.min(tube.right, Math.max(right, tube.left) + toolShown) };
}

function toolShapes({ tube, letter }: Tool, frame: Frame): readonly Shape[] {
  const seen = clipped(tube, frame);
  if (!seen) return [];
  const middle = frame.at((seen.left + seen.right) / 2, (seen.inside + seen.outside) / 4);
  const edges = ownEdges(tube, seen, frame).map((edge) => line('outline', edge));
  // A thin tool has its letter inside of it, towards the axis.
  const high = ((seen.outside - seen.inside) / 2) * frame.scale;
  const y = 3.6 < high ? middle.y + 1.1 : middle.y + high / 2 + 3.2;
  return [
    ...edges,
    {
      kind: 'text',
      text: letter,
      at: { x: middle.x, y },
      anchor: 'middle',
      size: 3.4,
      upright: false,
      strong: true,
    },
  ];
}

/** The way the parts go, in the corner nearest to the axis. */
function arrow(towards: 'left' | 'right', frame: Frame): readonly Shape[] {
  const y = frame.at(0, frame.low).y - 1.5;
  const [tail, tip] = towards === 'right' ? [14, 26] : [26, 14];
  return [
    line('outline', [
      { x: tail, y },
      { x: tip, y },
    ]),
    { kind: 'arrow', tip: { x: tip, y }, towards },
  ];
}
