import type { FilledHousing } from './housings.ts';
import type { SectionPart, Step } from './section-shape.ts';

/** How thick a cup is drawn behind its balls, and how far the shell goes on outside of them, mm. */
export const cupWall = 1.5;

/** Where a cup is let into the shell: a bore from the end of the shell to behind the balls. */
export type CupBore = Pick<Step, 'left' | 'right'> & {
  readonly diameter: number;
  /** Place of the shell's end that opens to it, mm. */
  readonly mouth: number;
};

/** The bores of the cups of a shell, left to right; a cup without a cone opposite is not drawn. */
export function cupBores(filled: FilledHousing, stack: readonly SectionPart[]): readonly CupBore[] {
  if (filled.housing.cups.length === 0) return [];
  return stack.flatMap(({ coneBall: ball }) => {
    if (!ball) return [];
    const race = ball.diameter / 2;
    const inward = ball.inward === 'right' ? 1 : -1;
    const mouth = ball.at - inward * race;
    const behind = ball.at + inward * (race + cupWall);
    return [
      {
        left: Math.min(mouth, behind),
        right: Math.max(mouth, behind),
        diameter: ball.circle + ball.diameter + 2 * cupWall,
        mouth,
      },
    ];
  });
}
