import { expect, it } from 'vitest';
import { runDepths } from '../../../src/engine/ground/run-depths.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import type { ZoneSeason } from '../../../src/engine/season/season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { lineOf } from '../../support/garden-planting.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone, thirsty } from '../../support/plain-garden.ts';

/** By hand: 17.5 mm a week go, 110 min of 0.08 mm on the fourth and the seventh day; the garden of plain-garden.ts. */
it('tells of each run how deep it wets, and how long it would be of use', () => {
  const season = runSeason(plainGarden());
  const [first, second, ...others] = runDepths(season, season.zones[0] as ZoneSeason, 3);
  expect(others).toEqual([]);
  expect([first?.day, second?.day]).toEqual([24, 27]);
  // Full after Sunday, 7.5 mm of three days are missing on the fourth morning, and 8.8 mm come: the day itself uses what is over.
  expect(first).toMatchObject({ minutes: 110, depthM: 0.5, drainedMm: 0 });
  expect(first?.rootDepthM).toBeCloseTo(0.5, 12);
  // 7.5 and the day's 2.5 mm at 0.08 mm a minute, to a step of the timer.
  expect(Math.abs((first?.usefulMinutes ?? 0) - 125)).toBeLessThan(1);
  // 10 - 8.8 + 5 = 6.2 mm are missing on the seventh, and 8.7 that evening.
  expect(Math.abs((second?.usefulMinutes ?? 0) - 108.75)).toBeLessThan(1);
  expect(second?.depthM).toBe(0.5);
});

it('of a bed that is full each morning the day’s own use is of use', () => {
  const daily = plainZone({ wateringDays: 0b1111111 });
  const season = runSeason(plainGarden([daily]));
  const [run] = runDepths(season, season.zones[0] as ZoneSeason, 3);
  // 2.5 mm at 0.08 mm a minute: 31.25 min, to a step of the timer.
  expect(Math.abs((run?.minutes ?? 0) - 31.25)).toBeLessThan(1);
  expect(run?.usefulMinutes).toBeGreaterThanOrEqual(run?.minutes ?? 0);
  expect(run?.drainedMm).toBe(0);
});

it('of a pot with two runs a day what is used between them is of use', () => {
  // 10 L of mix of which 0.12 can be drawn, over 0.0707 m2: 17.0 mm, 8.49 readily; 1.7 x 5 = 8.5 mm go, so two runs a day. Each morning lacks what
  // went after the last run, 4.25 mm; as much goes until the second. 2 L/h x 0.8 over 0.0707 m2 are 22.63 mm an hour: 22.54 min.
  const pot = thirsty(1.7, {
    areaM2: 0.0707,
    container: { count: 1, volumeLitres: 10, openingM: 0.3, rainShare: 1 },
    rootZone: { depthM: 10 / 70.7, allowedDepletion: 0.5, availableWater: 0.12 },
    lines: [lineOf(FIRST_DAY - 100, 'point', 2)],
  });
  const season = runSeason(
    plainGarden([plainZone({ wateringDays: 0b1111111, timerStepMinutes: 0.01, plantings: [pot] })]),
  );
  const [run] = runDepths(season, season.zones[0] as ZoneSeason, 3);
  expect(zoneFigure(season.zones[0] as ZoneSeason, 'runsADay', 3)).toBe(2);
  expect(Math.abs((run?.usefulMinutes ?? 0) - 22.54)).toBeLessThan(0.1);
  expect(Math.abs((run?.minutes ?? 0) - 22.54)).toBeLessThan(0.1);
  expect(run?.drainedMm).toBeLessThan(0.1);
});

it('in ground that lines wet in part the same water goes deeper', () => {
  const wetted = plainZone({ plantings: [plainPlanting({ wettedShare: 0.5, rootZone: { targetDepletion: 0.5 } })] });
  const season = runSeason(plainGarden([wetted]));
  const runs = runDepths(season, season.zones[0] as ZoneSeason, 3);
  expect(runs.length).toBeGreaterThan(0);
  for (const { minutes, usefulMinutes, depthM } of runs) {
    // What is readily there in the dry half has gone in 15 days, so the wetted one gives all, 5 mm over it. 0.08 mm a minute are 0.16 there.
    const missingMm = 0.16 * usefulMinutes - 5;
    expect(depthM).toBeCloseTo(0.5 * Math.min(1, (0.16 * minutes) / missingMm), 9);
  }
});
