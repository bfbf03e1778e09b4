import { force, micrometres, plain } from '../../engine/base/figures.ts';
import type { PairSetting } from './pair-setting.ts';

/** `adjuster.right set to 20 µm of play`, `wave-washer.left holds the inner rings together with 40 N, axially soft: 80 N/mm`. */
export function settingInBrief({ address, way, play, preload, rate }: PairSetting): string {
  const rings = `the inner rings ${way === 'inward' ? 'together' : 'apart'}`;
  if (rate !== null)
    return `${address} holds ${rings} with ${force(preload ?? 0)}, axially soft: ${plain(rate)} N/mm`;
  if (play !== null) return `${address} set to ${micrometres(play)} of play`;
  return `${address} presses ${rings} with ${force(preload ?? 0)}`;
}
