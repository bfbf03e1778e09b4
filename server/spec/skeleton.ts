import type { SpecKind } from './document.ts';

/** What an empty file is begun with: `$0` is where the writing goes on. */
export const skeletons: Readonly<Record<SpecKind, readonly string[]>> = {
  hub: [
    'hub: $0',
    'position: front',
    'width: 100 ±0.2',
    'stack:',
    '  - end-cap: left',
    '    length: 14.03 ±0.02',
    '  - bearing: left',
    '    code: 6803-2RS',
    '  - spacer: centre',
    '    length: 62.06 ±0.01',
    '  - bearing: right',
    '    code: 6803-2RS',
    '  - end-cap: right',
    '    length: 14.03 ±0.02',
  ],
  wheel: ['wheel: $0', 'hub: ./NAME.hub.yaml', 'rim: { erd: 596.5, holes: 32 }'],
  workshop: ['measuring: $0', 'limits:', 'stock:', '  bearings:', '    6803-2RS: 4'],
};
