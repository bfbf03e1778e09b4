import { angularContactRatings, angularContactRatingsSource } from '../tables/bearing-angular-contact.ts';
import type { Ratings } from './basic-number.ts';

/** Angle, in degrees, of a single row angular contact bearing whose letter is left out, as two makers write it. */
export const angleWithoutLetter = 30;

let byKey: Map<string, Ratings> | null = null;

/** Ratings (N) of a single row angular contact bearing by its normalised number and contact angle (degrees), or null. */
export function angularRatings(key: string, angle: number): Ratings | null {
  if (!byKey) {
    byKey = new Map();
    for (const [basic, , degrees, dynamic, fixed] of angularContactRatings) {
      const iso = basic.replace(/^7([89])(?=\d\d$)/, '71$1');
      byKey.set(`${iso} ${degrees}`, {
        dynamic,
        static: fixed,
        dynamicRange: null,
        source: angularContactRatingsSource,
      });
    }
  }
  return byKey.get(`${key} ${angle}`) ?? null;
}
