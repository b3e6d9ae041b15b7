import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import type { Weekday } from '../../../src/plan/schema/plan-schema.ts';
import { wateringDaysOf, wateringMask, weekdayMask } from '../../../src/plan/to-garden/weekday-masks.ts';

const MONDAY = dayNumber('2027-04-05');
const EVERY_DAY = 127;

/** Days of the season's week, counted from 1. */
function daysOf(mask: number): number[] {
  return [1, 2, 3, 4, 5, 6, 7].filter((day) => mask & (1 << (day - 1)));
}

describe('a number of watering days is spread over the week', () => {
  it.each([
    [1, [7]],
    [2, [4, 7]],
    [3, [3, 5, 7]],
    [4, [2, 4, 6, 7]],
    [5, [2, 3, 5, 6, 7]],
    [6, [2, 3, 4, 5, 6, 7]],
    [7, [1, 2, 3, 4, 5, 6, 7]],
  ])('%i a week: the ends of as many equal parts', (days, expected) => {
    expect(daysOf(wateringMask(days, { firstDay: MONDAY, windowWeekdays: EVERY_DAY }))).toEqual(expected);
  });

  it('over the days on which water may run', () => {
    const windowWeekdays = weekdayMask(['tue', 'thu', 'sat', 'sun']);
    expect(daysOf(wateringMask(2, { firstDay: MONDAY, windowWeekdays }))).toEqual([4, 7]);
    expect(daysOf(wateringMask(3, { firstDay: MONDAY, windowWeekdays }))).toEqual([4, 6, 7]);
    expect(daysOf(wateringMask(7, { firstDay: MONDAY, windowWeekdays }))).toEqual([2, 4, 6, 7]);
  });

  it('in a week that begins on a Thursday', () => {
    const windowWeekdays = weekdayMask(['mon', 'wed']);
    expect(daysOf(wateringMask(1, { firstDay: MONDAY + 3, windowWeekdays }))).toEqual([7]);
    expect(daysOf(wateringMask(2, { firstDay: MONDAY + 3, windowWeekdays }))).toEqual([5, 7]);
  });
});

describe('named weekdays', () => {
  it('are taken as they are', () => {
    expect(daysOf(wateringMask(['mon', 'fri'], { firstDay: MONDAY, windowWeekdays: EVERY_DAY }))).toEqual([1, 5]);
    expect(daysOf(wateringMask(['mon', 'fri'], { firstDay: MONDAY + 2, windowWeekdays: EVERY_DAY }))).toEqual([3, 6]);
  });

  it('less those on which no water may run', () => {
    const windowWeekdays = weekdayMask(['fri', 'sat']);
    expect(daysOf(wateringMask(['mon', 'fri'], { firstDay: MONDAY, windowWeekdays }))).toEqual([5]);
  });

  it('all of them where none would be left', () => {
    const windowWeekdays = weekdayMask(['sat']);
    expect(daysOf(wateringMask(['mon', 'fri'], { firstDay: MONDAY, windowWeekdays }))).toEqual([1, 5]);
  });
});

it('there is always a watering day, and never more than asked for', () => {
  const weekdays = fc.subarray<Weekday>(['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'], { minLength: 1 });
  fc.assert(
    fc.property(
      fc.oneof(fc.integer({ min: 1, max: 7 }), weekdays),
      weekdays,
      fc.integer({ min: -40_000, max: 80_000 }),
      (wateringDays, allowed, firstDay) => {
        const mask = wateringMask(wateringDays, { firstDay, windowWeekdays: weekdayMask(allowed) });
        const most = typeof wateringDays === 'number' ? Math.min(wateringDays, allowed.length) : wateringDays.length;
        expect(daysOf(mask).length).toBeGreaterThanOrEqual(1);
        expect(daysOf(mask).length).toBeLessThanOrEqual(most);
        expect(mask).toBeLessThan(128);
      },
    ),
  );
});

describe('watering days week by week', () => {
  // Four weeks from Monday 17 May 2027 on.
  const given = { firstDay: dayNumber('2027-05-17'), weeks: 4, windowWeekdays: 0b1111111 };

  it('are one mask where nothing tells weeks apart', () => {
    expect(wateringDaysOf({ wateringDays: 2 }, given)).toEqual({ wateringDays: 0b1001000 });
    expect(wateringDaysOf({ wateringDays: 2, wateringDaysByMonth: { 5: 3, 6: 3 } }, given)).toEqual({
      wateringDays: 0b1010100,
    });
  });

  it('are those of the month of the week’s fourth day', () => {
    // Fourth days: May 20, May 27, June 3, June 10.
    expect(wateringDaysOf({ wateringDays: 2, wateringDaysByMonth: { 6: ['mon'] } }, given)).toEqual({
      wateringDays: 0b1001000,
      wateringDaysByWeek: [0b1001000, 0b1001000, 0b0000001, 0b0000001],
    });
  });

  it('are spread over the days that a restriction allows, and none where it leaves none', () => {
    const restrictions = [
      { from: dayNumber('2027-05-24'), to: dayNumber('2027-05-30'), weekdays: 0b0010101 },
      { from: dayNumber('2027-06-07'), weekdays: 0b0000010 },
    ];
    expect(wateringDaysOf({ wateringDays: 2 }, { ...given, restrictions }).wateringDaysByWeek).toEqual([
      0b1001000, 0b0010100, 0b1001000, 0b0000010,
    ]);
    expect(wateringDaysOf({ wateringDays: ['wed'] }, { ...given, restrictions }).wateringDaysByWeek).toEqual([
      0b0000100, 0b0000100, 0b0000100, 0,
    ]);
  });
});
