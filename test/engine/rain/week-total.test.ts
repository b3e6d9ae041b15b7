/** On which days a week's rain total fell: a rule of this kit, each case by hand. */
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { dailyEto } from '../../../src/engine/climate/daily-eto.ts';
import type { ObservedWeather } from '../../../src/engine/garden.ts';
import { dailyRain, RAIN_ORIGINS } from '../../../src/engine/rain/daily-rain.ts';
import { placeWeekTotal, type WeekTotal, weekTotals } from '../../../src/engine/rain/week-total.ts';
import { FIRST_DAY, plainGarden, plainZone } from '../../support/plain-garden.ts';

const JUNE_7 = dayNumber('2027-06-07');
const months = (value: number) => new Array<number>(12).fill(value);

/** Days of a week from Monday 7 June; those read by themselves, by day. */
function placed(
  total: Partial<WeekTotal>,
  climate: { readonly rainMm: readonly number[]; readonly rainDays?: readonly number[] },
  read: Readonly<Record<number, number>> = {},
) {
  const rainMm = new Float64Array(7).fill(99);
  for (const [day, mm] of Object.entries(read)) rainMm[Number(day)] = mm;
  placeWeekTotal(
    { first: 0, end: 7, totalMm: 20, ...total },
    { firstDay: JUNE_7, climate },
    rainMm,
    (day) => day in read,
  );
  return [...rainMm];
}

/** June has 10 rain days of 30: one day of three. */
const ONE_IN_THREE = { rainMm: months(60), rainDays: months(10) };

describe('a week’s total', () => {
  it.each<[string, Parameters<typeof placed>, readonly number[]]>([
    // 7/3 days are 2; of the 5 dry ones 2 come before.
    ['falls on its usual number of rain days, in a row in the middle', [{}, ONE_IN_THREE], [0, 0, 10, 10, 0, 0, 0]],
    // 4 free days, 4/3 are 1; of 3 dry ones 1 comes before.
    [
      'falls on days that were not read, less what was',
      [{}, ONE_IN_THREE, { 0: 4, 1: 0, 2: 0 }],
      [4, 0, 0, 0, 16, 0, 0],
    ],
    ['leaves nothing where more was read', [{}, ONE_IN_THREE, { 0: 25 }], [25, 0, 0, 0, 0, 0, 0]],
    ['is dry where it is 0', [{ totalMm: 0 }, ONE_IN_THREE], [0, 0, 0, 0, 0, 0, 0]],
    [
      'changes no day when all were read',
      [{}, ONE_IN_THREE, { 0: 1, 1: 1, 2: 1, 3: 1, 4: 1, 5: 1, 6: 1 }],
      months(1).slice(5),
    ],
    // 3 days, one of them wet, the middle one.
    ['of the first three days leaves the others', [{ end: 3 }, ONE_IN_THREE], [0, 20, 0, 99, 99, 99, 99]],
    // 80 mm of 8 mm a rain day: 10 days.
    ['has rain days of 8 mm where they are not known', [{}, { rainMm: months(80) }], [0, 0, 10, 10, 0, 0, 0]],
    // 400 mm: 50 days, at most 0.6 of the month: 4.2 of 7, so 4, one dry day before.
    ['has at most six dry and wet days of ten', [{}, { rainMm: months(400) }], [0, 5, 5, 5, 5, 0, 0]],
    ['has one wet day in a month without rain', [{}, { rainMm: months(0) }], [0, 0, 0, 20, 0, 0, 0]],
    ['and one where rain days are few', [{}, { rainMm: months(60), rainDays: months(1) }], [0, 0, 0, 20, 0, 0, 0]],
    ['may fall on every day', [{}, { rainMm: months(300), rainDays: months(31) }], new Array<number>(7).fill(20 / 7)],
  ])('%s', (_, given, days) => {
    for (const [day, mm] of placed(...given).entries()) expect(mm, `day ${day}`).toBeCloseTo(days[day] as number, 12);
  });

  it('goes by the month in which the middle of its days lies', () => {
    // The span is 28 June to 4 July; its fourth day is 1 July, which has rain on every day.
    const rainMm = new Float64Array(7);
    const climate = { rainMm: months(60), rainDays: months(1).with(6, 31) };
    placeWeekTotal(
      { first: 0, end: 7, totalMm: 14 },
      { firstDay: dayNumber('2027-06-28'), climate },
      rainMm,
      () => false,
    );
    expect([...rainMm]).toEqual([2, 2, 2, 2, 2, 2, 2]);
  });
});

describe('the totals of a season', () => {
  const span = { firstDay: FIRST_DAY, weeks: 2 };
  const totals = (
    weeks: ReadonlyArray<readonly [number, { readonly rainMm?: number; readonly rainThrough?: number }]>,
  ) => weekTotals(span, new Map(weeks.map(([day, week]) => [FIRST_DAY + day, week])));

  it.each([
    ['cover their week, whatever day they stand by', 3, {}, { first: 0, end: 7 }],
    ['or its days until they were read', 0, { rainThrough: FIRST_DAY + 2 }, { first: 0, end: 3 }],
    ['no day beyond the week', 0, { rainThrough: FIRST_DAY + 30 }, { first: 0, end: 7 }],
    ['at least its first', 7, { rainThrough: FIRST_DAY + 2 }, { first: 7, end: 8 }],
  ])('%s', (_, day, change, covered) => {
    expect(totals([[day, { rainMm: 5, ...change }]])).toEqual([{ totalMm: 5, ...covered }]);
  });

  it('are those with rain, in the season; of two for one week the later', () => {
    expect(
      totals([
        [-1, { rainMm: 5 }],
        [14, { rainMm: 5 }],
        [0, {}],
      ]),
    ).toEqual([]);
    expect(
      totals([
        [2, { rainMm: 9 }],
        [1, { rainMm: 5 }],
      ]),
    ).toMatchObject([{ totalMm: 9 }]);
  });
});

describe('rain by day', () => {
  function rainOf(observed: Partial<ObservedWeather>, runoffFraction = 0) {
    const plain = plainGarden([plainZone()]);
    const climate = { ...plain.site.climate, rainMm: months(31) };
    const site = { ...plain.site, climate, rain: { ...plain.site.rain, runoffFraction } };
    const garden = { ...plain, site, observed: { days: new Map(), weeks: new Map(), ...observed } };
    const { mm, soakedMm, origin } = dailyRain(garden, dailyEto(garden));
    return { mm, soakedMm, origin: [...origin.subarray(0, 7)].map((index) => RAIN_ORIGINS[index]) };
  }

  it('is the day’s own, else its week’s total until it was read, else the normals', () => {
    const { mm, origin } = rainOf({
      days: new Map([[FIRST_DAY + 4, { rainMm: 3 }]]),
      weeks: new Map([[FIRST_DAY, { rainMm: 6, rainThrough: FIRST_DAY + 2 }]]),
    });
    // May has 31 mm, so 31 / 8 = 3.9 rain days: one of three days.
    expect([...mm.subarray(0, 3), mm[4]]).toEqual([0, 6, 0, 3]);
    expect(mm[3]).toBeCloseTo(1, 1);
    expect(origin).toEqual([
      'observed-week',
      'observed-week',
      'observed-week',
      'normals',
      'observed-day',
      'normals',
      'normals',
    ]);
  });

  it('soaks in from a fifth of the day’s ETo on, less what runs off (FAO-56 p. 170)', () => {
    const day = (rainMm: number) => rainOf({ days: new Map([[FIRST_DAY, { rainMm }]]) }, 0.25).soakedMm[0];
    // 5 mm of ETo: from 1 mm on.
    expect(day(0.9)).toBe(0);
    expect(day(1.2)).toBeCloseTo(0.9, 12);
    expect(rainOf({}).soakedMm[0]).toBe(0);
  });
});
