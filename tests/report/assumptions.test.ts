import { expect, test } from 'vitest';
import { assumptions } from '../../server/report/stack/stack-json.ts';
import { look } from '../checks/look.ts';

const text =
  'hub: Knot\nposition: front\nwidth: 100\nstack:\n  - end-cap: left\n    length: 14.05 measured 14.02\n  - bearing: left\n    code: 6803-2RS\n  - spacer: centre\n    length: 67\n  - end-cap: right\n    length: 14.05\n';

test('what is assumed of a dimension names the dimension', () => {
  const [variant] = look(text).analysis.variants;
  expect(variant && assumptions(variant)).toEqual([
    'width 100 taken as ±0.1: no tolerance is written',
    "length of end-cap.left: 14.05 taken as exact: no tolerance is written; reading taken as ±20 µm, the workshop's measuring uncertainty",
    'ring width of bearing.left varies by ISO 492, class Normal',
    'length of spacer.centre: 67 taken as exact: no tolerance is written',
    'length of end-cap.right: 14.05 taken as exact: no tolerance is written',
  ]);
});
