import { drawWheel, type WheelDrawing } from '../../drawing/wheel/draw-wheel.ts';
import { nameOf } from '../../workspace/location.ts';
import type { Snapshot } from '../../workspace/workspace.ts';

/** How the drawing is to come out. */
export interface DrawnAs {
  readonly standalone: boolean;
  readonly width?: number;
  readonly brief?: boolean;
}

/** The name of a wheel, that of its file where it has none. */
export function wheelTitle({ document, file }: Snapshot): string {
  return document.wheel?.values.wheel?.value || nameOf(file);
}

/** The wheel of a file as a drawing, its findings marked; null for a file that is no wheel. */
export function wheelDrawing(snapshot: Snapshot, as: DrawnAs): WheelDrawing | null {
  const wheel = snapshot.analysis.wheel();
  const written = snapshot.document.wheel;
  if (!wheel || !written) return null;
  const interlaced = (side: 'left' | 'right'): boolean =>
    written.lacing[side]?.values.interlaced?.value ?? true;
  const untold = (['left', 'right'] as const).filter(
    (side) =>
      (written.lacing[side]?.values.crosses?.value ?? 0) > 0 && !written.lacing[side]?.values.interlaced,
  );
  const bent = untold.filter((side) => wheel.hub?.flanges[side]?.straightPull === false);
  const faults = as.brief
    ? []
    : snapshot.findings.findings
        .filter(({ group }) => group !== 'text')
        .map(({ code, path, severity, message }) => ({ code, path, severity, message }));
  const drawn = drawWheel(wheel, faults, {
    ...as,
    title: wheelTitle(snapshot),
    interlaced: { left: interlaced('left'), right: interlaced('right') },
  });
  const assumed = bent.map(
    (side) => `${side} spokes taken as interlaced: lacing.${side}.interlaced is not written`,
  );
  return { ...drawn, assumed: [...drawn.assumed, ...assumed] };
}
