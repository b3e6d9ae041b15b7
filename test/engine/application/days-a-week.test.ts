import { describe, expect, it } from 'vitest';
import { daysAWeek } from '../../../src/engine/application/days-a-week.ts';
import { plantingFigure } from '../../../src/engine/season/planting-week.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
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

  it('come with starts a day where a filling does not last one, as many as the timer has', () => {
    expect(inMay(gardenWith({ allowedDepletion: 1 / 75 }))).toMatchObject({ daysAWeek: 7, startsADay: 3 });
    expect(inMay(gardenWith({ allowedDepletion: 0.3 / 75 }))?.startsADay).toBe(4);
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
    // 6 mm last 2 days: 4 a week.
    expect(short(0b1001000)).toBeGreaterThan(0);
    expect(short(0b1101010)).toBe(0);
  });
});
