import { sources } from '../base/sources.ts';
import {
  ballsFromRatings,
  ballsFromRatingsSource,
  publishedBalls,
  publishedBallsSource,
} from '../tables/bearing-balls.ts';
import type { BallSet } from './decoded-bearing.ts';

let byKey: Map<string, BallSet> | null = null;

/** Balls of a bearing by its normalised basic number, diameter in mm; null when no table has them. */
export function ballSet(key: string): BallSet | null {
  if (!byKey) {
    byKey = new Map();
    const derived = sources[ballsFromRatingsSource].title;
    for (const [basic, count, diameter] of ballsFromRatings)
      byKey.set(basic, { count, diameter, source: derived });
    const printed = sources[publishedBallsSource].title;
    for (const [basic, count, diameter] of publishedBalls)
      byKey.set(basic, { count, diameter, source: printed });
  }
  return byKey.get(key) ?? null;
}
