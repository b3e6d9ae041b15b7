import { expect, it } from 'vitest';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import { benchGarden } from '../../bench/gardens.ts';

/** Milliseconds of the quickest of some runs: a busy machine slows the others. */
function quickest(runs: number, run: () => unknown): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return Math.min(...times);
}

it('gives the notices of 200 zones in a fraction of the time that their season takes: a few milliseconds', () => {
  const garden = gardenOf(benchGarden(200));
  const season = runSeason(garden);
  const seasonMs = quickest(2, () => runSeason(garden));
  const noticesMs = quickest(10, () => noticesOf(season));
  expect(noticesOf(season).length).toBeGreaterThan(100);
  expect(noticesMs).toBeLessThan(seasonMs / 2);
}, 60_000);
