import { describe, expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { isUnrestricted, restrictionsOn } from '../../../src/engine/supply/restrictions.ts';

const MONDAYS = 0b000_0001;
const MONDAY = dayNumber('2027-06-07');

describe('a watering restriction', () => {
  const inJune = { from: dayNumber('2027-06-01'), to: dayNumber('2027-06-30'), weekdays: MONDAYS };

  it('holds from its first day to its last', () => {
    const days = ['2027-05-31', '2027-06-01', '2027-06-30', '2027-07-01'].map(dayNumber);
    expect(days.map((day) => restrictionsOn([inJune], day).length)).toEqual([0, 1, 1, 0]);
  });

  it('always was, and is until further notice, where it names no day', () => {
    const always = { weekdays: MONDAYS };
    expect([-10_000, MONDAY, 90_000].map((day) => restrictionsOn([always], day).length)).toEqual([1, 1, 1]);
  });

  it('lets water run on its weekdays alone, where none of several forbids it', () => {
    expect([MONDAY, MONDAY + 1].map((day) => isUnrestricted([inJune], day))).toEqual([true, false]);
    expect(isUnrestricted([inJune, { weekdays: 0b000_0010 }], MONDAY)).toBe(false);
    expect(isUnrestricted([inJune], dayNumber('2027-07-06'))).toBe(true);
    expect(isUnrestricted(undefined, MONDAY)).toBe(true);
  });
});
