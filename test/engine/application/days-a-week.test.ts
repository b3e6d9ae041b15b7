import { describe, expect, it } from 'vitest';
import { daysAWeek, runsNeedIn } from '../../../src/engine/application/days-a-week.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { zoneWeek } from '../../../src/engine/season/zone-week.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

// plain-garden.ts: 2.5 mm a day are used, 37.5 mm are readily there (0.15 m3/m3 x 500 mm x 0.5), without room for rain.
const gardenWith = (rootZone: object, change: object = {}, supply: object = {}) =>
  plainGarden([plainZone({ plantings: [plainPlanting({ rootZone, ...change })] })], {
    supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 24, ...supply },
  });
const inMay = (garden: ReturnType<typeof gardenWith>) => daysAWeek(runSeason(garden)).find(({ month }) => month === 4);

describe('days a week that fit', () => {
  it.each([
    // Days that it lasts, days a week: 7 / days, and no gap of a spread week longer.
    [15, 1],
    [7, 1],
    [6.9, 2],
    [4, 2],
    [3.5, 3],
    [2, 4],
    [1, 7],
    [0.5, 7],
  ])('of plants that last %s days are %s', (lastsDays, days) => {
    const allowedDepletion = (lastsDays * 2.5) / 75;
    expect(inMay(gardenWith({ allowedDepletion }))?.daysAWeek).toBe(days);
  });

  it('leave room for rain as the season does', () => {
    // 37.5 mm, 0.6 of it left free: 15 mm last 6 days.
    expect(inMay(gardenWith({ targetDepletion: 0.6 }))).toMatchObject({
      daysAWeek: 2,
      waterAtHandMm: expect.closeTo(15, 9),
      dailyUseMm: expect.closeTo(2.5, 2),
      plantingId: 'bed',
    });
  });

  it('are no more than window and restrictions allow, and so many that no gap is too long where they can', () => {
    const lasting4 = { allowedDepletion: 10.2 / 75 };
    expect(inMay(gardenWith(lasting4, {}, { windowWeekdays: 0b0000111 }))).toMatchObject({
      daysAWeek: 3,
      allowedDays: 3,
    });
    const restrictions = [{ from: FIRST_DAY, weekdays: 0b0001001 }];
    expect(inMay(gardenWith(lasting4, {}, { restrictions }))).toMatchObject({ daysAWeek: 2, allowedDays: 2 });
  });

  const container = { count: 10, volumeLitres: 10, openingM: 0.25, rainShare: 1 };
  const establishing = { until: FIRST_DAY + 60, factor: 1 };

  it.each([
    // 2.5 mm a day of 1 mm is 3 runs, of 0.3 mm 9; the timer has 4 starts. In the ground young plants have 2 at most, and settled ones 1.
    ['pots', { container }, 1, 3],
    ['pots', { container }, 0.3, 4],
    ['establishing plants', { establishing }, 1, 2],
    ['establishing plants', { establishing }, 2.5, 1],
    ['settled plants', {}, 1, 1],
  ])('come with the runs a day of the season: %s %j of %d mm run %d times', (_, change, mm, startsADay) => {
    const rootZone = { allowedDepletion: mm / 75 };
    const fit = inMay(gardenWith(rootZone, change));
    expect(fit).toMatchObject({ daysAWeek: 7, startsADay });
    const zone = plainZone({ wateringDays: 127, plantings: [plainPlanting({ rootZone, ...change })] });
    const [season = expect.unreachable()] = runSeason(plainGarden([zone])).zones;
    expect([1, 2, 3].map((week) => zoneWeek(season, week).runsADay)).toEqual([startsADay, startsADay, startsADay]);
  });

  it('name whose need the runs are, though another decides the days', () => {
    // The pots last a day and water on seven; the establishing bed, refilled, needs two runs on each.
    const plantings = [
      plainPlanting({ id: 'pots', container, rootZone: { allowedDepletion: 2.6 / 75 } }),
      plainPlanting({ id: 'young', establishing, watering: 'refill', rootZone: { allowedDepletion: 2 / 75 } }),
    ];
    const season = runSeason(plainGarden([plainZone({ plantings })]));
    const [zone = expect.unreachable()] = season.zones;
    const [fit = expect.unreachable()] = daysAWeek(season);
    expect(fit).toMatchObject({ plantingId: 'pots', startsADay: 2 });
    expect(runsNeedIn(season, zone, fit)).toMatchObject({
      plantingId: 'young',
      isInContainer: false,
      readilyAvailableMm: expect.closeTo(2, 9),
    });
  });

  it('are those of the planting that needs water most often; a refilled one decides alone only', () => {
    const plantings = [
      plainPlanting({ id: 'deep' }),
      plainPlanting({ id: 'shallow', rootZone: { allowedDepletion: 5 / 75 } }),
      plainPlanting({ id: 'refilled', watering: 'refill', rootZone: { allowedDepletion: 3 / 75 } }),
    ];
    const of = (chosen: typeof plantings) =>
      daysAWeek(runSeason(plainGarden([plainZone({ plantings: chosen })])))[0]?.plantingId;
    expect(of(plantings)).toBe('shallow');
    expect(of(plantings.slice(2))).toBe('refilled');
    expect(of([])).toBeUndefined();
  });

  it('leave no day short that fewer days a week leave short', () => {
    const short = (wateringDays: number) => {
      const plantings = [plainPlanting({ rootZone: { allowedDepletion: 6 / 75 } })];
      const season = runSeason(plainGarden([plainZone({ wateringDays, plantings })]));
      const [own = expect.unreachable()] = season.zones[0]?.plantings ?? [];
      return Array.from({ length: 9 }, (_, week) => plantingFigure(own, 'shortDays', week + 1)).reduce((a, b) => a + b);
    };
    // 6 mm last 2 days: 4 a week. Of 1 a week the fourth day starts 7.5 mm down.
    expect(short(0b1000000)).toBeGreaterThan(0);
    expect(short(0b1101010)).toBe(0);
  });
});
