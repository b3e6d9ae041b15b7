import { describe, expect, it } from 'vitest';
import {
  addDays,
  civilDate,
  dayNumber,
  dayNumberOf,
  dayOfYear,
  daysInMonth,
  isIsoDate,
  isLeapYear,
  isoDate,
  mondayFrom,
  monthOf,
  weekdayOf,
  yearOf,
} from '../../src/engine/calendar.ts';

const MS_PER_DAY = 86_400_000;

describe('day numbers', () => {
  it.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['2000-02-29', 11_016],
    ['2025-06-01', 20_240],
    ['0000-03-01', -719_468],
  ] as const)('%s is day %i', (written, day) => {
    expect(dayNumber(written)).toBe(day);
    expect(isoDate(day)).toBe(written);
  });

  it('agree with the language on every day of 1900 to 2100', () => {
    const first = Date.UTC(1900, 0, 1) / MS_PER_DAY;
    const last = Date.UTC(2100, 11, 31) / MS_PER_DAY;
    let differing = 0;
    for (let day = first; day <= last; day += 1) {
      const date = new Date(day * MS_PER_DAY);
      const { year, month, dayOfMonth } = civilDate(day);
      const newYear = Date.UTC(date.getUTCFullYear(), 0, 1) / MS_PER_DAY;
      const same =
        year === date.getUTCFullYear() &&
        month === date.getUTCMonth() &&
        dayOfMonth === date.getUTCDate() &&
        isoDate(day) === date.toISOString().slice(0, 10) &&
        dayNumber(isoDate(day)) === day &&
        dayNumberOf({ year, month, dayOfMonth }) === day &&
        dayOfYear(day) === day - newYear + 1 &&
        yearOf(day) === year &&
        monthOf(day) === month &&
        weekdayOf(day) === (date.getUTCDay() + 6) % 7;
      if (!same) differing += 1;
    }
    expect(last - first).toBe(73_413);
    expect(differing).toBe(0);
  });

  it.each(['2025-02-29', '2024-02-30', '1900-02-29', '2025-13-01', '2025-00-10', '2025-06-00', '2025-06-31'])(
    '%s is refused: there is no such day',
    (written) => {
      expect(isIsoDate(written)).toBe(false);
      expect(() => dayNumber(written)).toThrow(RangeError);
    },
  );

  it.each(['x', '', '2025-6-1', '1 June 2025', '2025-06-01T00:00:00Z', ' 2025-06-01', '06/01/2025', '-2025-06-01'])(
    '"%s" is refused: not written year-month-day',
    (written) => {
      expect(isIsoDate(written)).toBe(false);
      expect(() => dayNumber(written)).toThrow('write year-month-day, like 2025-06-01');
    },
  );

  it.each([0.5, Number.NaN, Number.POSITIVE_INFINITY, -719_529, 2_932_897])('day %d cannot be written', (day) => {
    expect(() => isoDate(day)).toThrow(RangeError);
  });

  it('reach from 0000-01-01 to 9999-12-31', () => {
    expect(isoDate(-719_528)).toBe('0000-01-01');
    expect(isoDate(2_932_896)).toBe('9999-12-31');
  });
});

describe('years and months', () => {
  it.each([
    [2024, true],
    [2025, false],
    [2000, true],
    [1900, false],
    [2100, false],
  ] as const)('leap year %i: %s', (year, leap) => {
    expect(isLeapYear(year)).toBe(leap);
    expect(daysInMonth(year, 1)).toBe(leap ? 29 : 28);
  });

  it('the twelve months make the year', () => {
    for (const year of [2023, 2024]) {
      const lengths = Array.from({ length: 12 }, (_, month) => daysInMonth(year, month));
      expect(lengths.reduce((sum, length) => sum + length, 0)).toBe(isLeapYear(year) ? 366 : 365);
    }
  });

  it.each([-1, 12, 0.5, Number.NaN])('month %d is refused', (month) => {
    expect(() => daysInMonth(2025, month)).toThrow(RangeError);
  });
});

describe('day of the year', () => {
  // FAO-56 Table 2.5, non-leap year.
  it.each([
    ['2025-04-01', 91],
    ['2025-07-15', 196],
    ['2025-10-01', 274],
    ['2025-12-31', 365],
    ['2024-12-31', 366],
    ['2024-03-01', 61],
  ] as const)('%s is J = %i', (written, expected) => {
    expect(dayOfYear(dayNumber(written))).toBe(expected);
  });

  it('is the formula beneath FAO-56 Table 2.5 on every day of a leap and a common year', () => {
    for (let day = dayNumber('2024-01-01'); day <= dayNumber('2025-12-31'); day += 1) {
      const { year, month, dayOfMonth } = civilDate(day);
      const monthNumber = month + 1;
      const table =
        Math.trunc((275 * monthNumber) / 9 - 30 + dayOfMonth) -
        2 +
        (monthNumber < 3 ? 2 : 0) +
        (year === 2024 && monthNumber > 2 ? 1 : 0);
      expect(dayOfYear(day)).toBe(table);
    }
  });
});

describe('weekdays and steps', () => {
  it.each([
    ['1970-01-01', 3],
    ['2000-01-01', 5],
    ['2025-06-02', 0],
    ['1969-12-28', 6],
  ] as const)('%s is weekday %i, counted from Monday', (written, weekday) => {
    expect(weekdayOf(dayNumber(written))).toBe(weekday);
  });

  it.each([
    ['2025-06-02', '2025-06-02'],
    ['2025-06-03', '2025-06-09'],
    ['2025-06-08', '2025-06-09'],
  ] as const)('from %s the Monday is %s', (from, monday) => {
    expect(isoDate(mondayFrom(dayNumber(from)))).toBe(monday);
  });

  it.each([
    ['2024-02-28', 1, '2024-02-29'],
    ['2025-02-28', 1, '2025-03-01'],
    ['2025-01-01', -1, '2024-12-31'],
    ['2024-01-01', 366, '2025-01-01'],
    ['2025-06-01', 0, '2025-06-01'],
  ] as const)('%s and %i days is %s', (from, count, to) => {
    expect(addDays(from, count)).toBe(to);
  });
});
