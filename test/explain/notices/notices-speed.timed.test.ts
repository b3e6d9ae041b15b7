import { expect, it } from 'vitest';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { benchGarden, inOneStore, withWeekRain } from '../../bench/gardens.ts';

/** Milliseconds of the quickest of some runs: a busy machine slows the others. */
function quickest(runs: number, run: () => unknown): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return Math.min(...times);
}

it('gives the notices of 200 zones in a fraction of the time that their season takes', () => {
  const plan = inOneStore(benchGarden(200));
  const season = computeSeason(plan);
  noticesOf(season);
  // What was found of a zone is kept: in each of these every zone has other figures.
  const seasons = [3, 9, 15, 21].map((rain) => computeSeason(withWeekRain(plan, 1, rain), season));
  const seasonMs = quickest(2, () => computeSeason(plan));
  const noticesMs = quickest(4, () => noticesOf(seasons.pop() ?? season));
  expect(noticesOf(season).length).toBeGreaterThan(100);
  expect(noticesMs).toBeLessThan(seasonMs / 2);
}, 60_000);
