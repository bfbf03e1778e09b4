import { expect, test } from 'vitest';
import { flangeOf, flangePlaces } from '../../server/assembly/flange-places.ts';
import { analyzeText } from '../support/analyze-text.ts';

const hub = `hub: Curlew family
position: front
width: 100
shell:
  between-shoulders: 56
  seats:
    left: { bore: 32 N7, depth: 7.1 }
    right: { bore: 32 N7, depth: 7.1 }
  flanges:
    left: { holes: 16, circle: 46, from-centre: 29 }
    right: { holes: 16, circle: 46, from-centre: 27 }
stack:
  - end-cap: left
    length: 15
  - bearing: left
    code: 6804-2RS
    seat: shell.left
  - spacer: centre
    length: 56
  - bearing: right
    code: 6804-2RS
    seat: shell.right
  - end-cap: right
    length: 15
variants:
  wide-110:
    width: 110
    change:
      end-cap.left: { length: 20 }
      end-cap.right: { length: 20 }
  pushed:
    width: 106
    change:
      end-cap.left: { length: 21 }
`;

/** Where both flanges of a variant stand from its mid-plane, mm. */
function places(variant: number): readonly (number | null | undefined)[] {
  const { variants } = analyzeText(hub);
  const found = flangePlaces(
    (variants[variant] as (typeof variants)[number]).assembly,
    (variants[0] as (typeof variants)[number]).assembly,
  );
  return [flangeOf(found, 'left')?.fromMiddle, flangeOf(found, 'right')?.fromMiddle];
}

test('the hub as written has its flanges where it says', () => {
  expect(places(0)).toEqual([-29, 27]);
});

test('end caps that grow alike leave the flanges where they are; one longer cap moves them by half of it', () => {
  expect(places(1)).toEqual([-29, 27]);
  // 6 mm more on the left: the mid-plane moves 3 mm to the left of the shell.
  expect(places(2)).toEqual([-26, 30]);
});
