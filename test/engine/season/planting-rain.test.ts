/** The rain of a planting's days by a monthly method, by hand, in the garden of plain-garden.ts with 31 mm of rain in every month. */
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { monthlyEffectiveRainMm } from '../../../src/engine/rain/effective-rain.ts';
import { plantingDays } from '../../../src/engine/season/planting-days.ts';
import { plantingDemand } from '../../../src/engine/season/planting-demand.ts';
import { monthShares, rainMonth } from '../../../src/engine/season/planting-rain.ts';
import { seasonWeather } from '../../../src/engine/weather.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';

const plain = plainGarden();
const climate = { ...plain.site.climate, rainMm: new Array<number>(12).fill(31) };
const garden = plainGarden(undefined, {
  span: { firstDay: FIRST_DAY, weeks: 8 },
  site: { ...plain.site, climate },
  observed: {
    days: new Map([
      [FIRST_DAY + 1, { rainMm: 9 }],
      [FIRST_DAY + 2, { etoMm: 20 }],
    ]),
    weeks: new Map(),
  },
});
const weather = seasonWeather(garden);
const zone = plainZone();

function keeperOf(change: Parameters<typeof plainPlanting>[0] = {}, isRefill = false, wateringDays = 0b1001000) {
  const demand = plantingDemand(plainPlanting(change), zone.soil, weather);
  return { demand, isRefill, wateringDays };
}

describe('what a month’s rain is credited by', () => {
  it('is the demand that the normals let expect, of a whole month', () => {
    // May starts on the 3rd; 2.5 mm a day are 77.5 in 31 days. The 20 mm of ETo that were read on a day are not in it.
    expect(rainMonth(keeperOf(), garden.site, weather, 0)?.etcMm).toBeCloseTo(77.5, 9);
    expect(rainMonth(keeperOf(), garden.site, weather, 1)?.etcMm).toBeCloseTo(75, 9);
    expect(rainMonth(keeperOf(), garden.site, weather, 0)?.rainMm).toBe(31);
  });

  it.each([
    // 17.5 mm a week over 2 and over 7 watering days; 37.5 mm are readily there.
    ['what is drawn between two waterings', keeperOf(), 8.75],
    ['of every day', keeperOf({}, false, 127), 2.5],
    ['never more than is readily there', keeperOf({ rootZone: { depthM: 0.1 } }, false, 0b1), 7.5],
    ['all that is readily there of a planting that is filled deep and seldom', keeperOf({}, true), 37.5],
  ])('is by a storage of %s', (_, keeper, usableStorageMm) => {
    expect(rainMonth(keeper, garden.site, weather, 0)?.usableStorageMm).toBeCloseTo(usableStorageMm, 9);
  });

  it('is nothing in a month without the planting or without rain', () => {
    const gone = keeperOf({ to: dayNumber('2027-05-31') });
    expect(rainMonth(gone, garden.site, weather, 1)).toBeUndefined();
    expect(monthShares(gone, garden.site, weather)[1]).toBe(0);
    const dry = { ...garden.site, climate: { ...climate, rainMm: new Array<number>(12).fill(0) } };
    expect(rainMonth(keeperOf(), dry, weather, 0)).toBeUndefined();
  });
});

describe('rain of a planting’s days', () => {
  const keeper = keeperOf();
  const share = monthlyEffectiveRainMm('tr21', { rainMm: 31, etcMm: 77.5, usableStorageMm: 8.75, fraction: 0.25 }) / 31;
  const rainShares = monthShares(keeper, garden.site, weather);
  const { soakedMm, expectedRainMm } = plantingDays(
    { planting: plainPlanting(), demand: keeper.demand, rainShares },
    { zone, site: garden.site, weather },
  );

  it('is its share of the normals, and on a day that was read the day’s own', () => {
    expect(rainShares[0]).toBeCloseTo(share, 12);
    expect(share).toBeGreaterThan(0.2);
    expect(soakedMm[0]).toBeCloseTo((weather.rain.expectedMm[0] as number) * share, 12);
    expect(soakedMm[1]).toBe(9);
  });

  it('is expected by the normals on every day', () => {
    expect(expectedRainMm[0]).toBe(soakedMm[0]);
    expect(expectedRainMm[1]).toBeCloseTo((weather.rain.expectedMm[1] as number) * share, 12);
  });
});
