import { expect, it } from 'vitest';
import { runDepths } from '../../../src/engine/ground/run-depths.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

/** By hand: 17.5 mm a week go, 110 min of 0.08 mm on the fourth and the seventh day; the garden of plain-garden.ts. */
it('tells of each run how deep it wets, and how long it would be of use', () => {
  const season = runSeason(plainGarden());
  const [first, second, ...others] = runDepths(season, season.zones[0] as ZoneSeason, 3);
  expect(others).toEqual([]);
  expect([first?.day, second?.day]).toEqual([24, 27]);
  // On the fourth morning 7.5 mm of three days are missing, and 8.8 mm come: the rest of the day uses what is over.
  expect(first?.minutes).toBeGreaterThan(100);
  expect(first?.rootDepthM).toBeCloseTo(0.5, 12);
  for (const run of [first, second]) {
    if (run === undefined) throw new Error('no run');
    const netMm = run.minutes * 0.08;
    expect(run.depthM).toBeCloseTo(0.5 * Math.min(1, netMm / (run.usefulMinutes * 0.08)), 9);
    expect(run.drainedMm).toBeCloseTo(Math.max(0, netMm - run.usefulMinutes * 0.08), 9);
  }
});

it('in ground that lines wet in part the same water goes deeper', () => {
  const wetted = plainZone({ plantings: [plainPlanting({ wettedShare: 0.5, rootZone: { targetDepletion: 0.5 } })] });
  const season = runSeason(plainGarden([wetted]));
  const runs = runDepths(season, season.zones[0] as ZoneSeason, 3);
  expect(runs.length).toBeGreaterThan(0);
  for (const { minutes, usefulMinutes, depthM } of runs) {
    expect(depthM).toBeCloseTo(0.5 * Math.min(1, minutes / usefulMinutes), 9);
  }
});
