import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, daysInMonth, isLeapYear, monthOf } from '../../../src/engine/calendar.ts';
import { curveOf, monthlyToDaily } from '../../../src/engine/climate/monthly-to-daily.ts';
import { CALIFORNIA_ZONES, ORDINANCE_ROWS, type PublishedRow } from './published-monthly-eto.ts';
import { rateAt } from './rate-at.ts';

const sum = (values: Iterable<number>): number => {
  let total = 0;
  for (const value of values) total += value;
  return total;
};
/** Totals by month, from dry to wet, some months with nothing. */
const totals = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 500, noNaN: true })), {
  minLength: 12,
  maxLength: 12,
});
const year = fc.integer({ min: 1901, max: 2099 });

const daysInYear = (ofYear: number): number => (isLeapYear(ofYear) ? 366 : 365);

function daysOfYear(monthlyTotals: readonly number[], ofYear: number): Float64Array {
  return monthlyToDaily(
    Object.freeze({ monthlyTotals, firstDay: dayNumber(`${ofYear}-01-01`), dayCount: daysInYear(ofYear) }),
  );
}

/** What a month's days come to: its total, and in a leap year a twenty-ninth of February at the mean of the others. */
function totalIn(ofYear: number, month: number, total: number): number {
  return month === 1 && isLeapYear(ofYear) ? (total * 29) / 28 : total;
}

function addedByMonth(daily: Float64Array, ofYear: number): number[] {
  const added = new Array<number>(12).fill(0);
  const first = dayNumber(`${ofYear}-01-01`);
  for (const [index, value] of daily.entries()) {
    const month = monthOf(first + index);
    added[month] = (added[month] ?? 0) + value;
  }
  return added;
}

describe('published monthly ETo as days', () => {
  const rows: readonly PublishedRow[] = [...CALIFORNIA_ZONES, ...ORDINANCE_ROWS];

  it('holds all 18 zones and 7 ordinance rows', () => {
    expect(rows).toHaveLength(25);
  });

  it.each(rows)('%s: days add up to every month and to the year, common and leap', (_place, months, total) => {
    const monthlyTotals = Object.freeze([...months]);
    for (const [ofYear, leapDay] of [
      [2023, 0],
      [2024, (months[1] ?? Number.NaN) / 28],
    ] as const) {
      const daily = daysOfYear(monthlyTotals, ofYear);
      for (const [month, added] of addedByMonth(daily, ofYear).entries()) {
        const expected = totalIn(ofYear, month, months[month] ?? Number.NaN);
        expect(Math.abs(added - expected)).toBeLessThanOrEqual(1e-12 * expected);
      }
      expect(sum(daily)).toBeCloseTo(total + leapDay, 9);
      expect(daily.every((value) => value > 0)).toBe(true);
    }
  });
});

describe('monthly totals as days', () => {
  it('keep each total to 1e-12, in any year', () => {
    fc.assert(
      fc.property(totals, year, (monthlyTotals, ofYear) => {
        for (const [month, added] of addedByMonth(daysOfYear(monthlyTotals, ofYear), ofYear).entries()) {
          const total = totalIn(ofYear, month, monthlyTotals[month] ?? Number.NaN);
          expect(Math.abs(added - total)).toBeLessThanOrEqual(1e-12 * total);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('are never negative, nor is the curve at any moment between', () => {
    const month = fc.integer({ min: 0, max: 11 });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(totals, year, month, share, (monthlyTotals, ofYear, inMonth, t) => {
        expect(daysOfYear(monthlyTotals, ofYear).every((value) => value >= 0)).toBe(true);
        const curve = curveOf(monthlyTotals, inMonth);
        expect(rateAt(curve, t)).toBeGreaterThanOrEqual(-1e-15 * curve.mean);
      }),
      { numRuns: 500 },
    );
  });

  it('meet where months meet, December with January', () => {
    fc.assert(
      fc.property(totals, (monthlyTotals) => {
        for (let month = 0; month < 12; month += 1) {
          expect(curveOf(monthlyTotals, month).end).toBe(curveOf(monthlyTotals, (month + 1) % 12).start);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('step no further from month to month than inside the months beside', () => {
    // Day means of a quadratic step by its slope at the midnight between them. Across a month's end the step is the mean of the
    // slopes a third of a day to either side; a slope runs in a straight line through its month, so a third of a day short of the
    // end it exceeds the last midnight's by at most (2/3) x 2 / (n - 2) of the greatest inside: 1.0513 for n = 28 days.
    const allowed = 1 + 4 / (3 * 26);
    fc.assert(
      fc.property(totals, year, (monthlyTotals, ofYear) => {
        const firstDay = dayNumber(`${ofYear}-01-01`);
        const daily = monthlyToDaily({ monthlyTotals, firstDay, dayCount: daysInYear(ofYear) + 31 });
        let start = 0;
        for (let month = 0; month < 12; month += 1) {
          const length = daysInMonth(ofYear, month);
          const nextLength = daysInMonth(ofYear, (month + 1) % 12);
          const end = start + length;
          const step = (index: number): number => Math.abs((daily[index] ?? 0) - (daily[index - 1] ?? 0));
          let greatest = 0;
          for (let index = start + 1; index < end + nextLength; index += 1) {
            if (index !== end) greatest = Math.max(greatest, step(index));
          }
          expect(step(end)).toBeLessThanOrEqual(allowed * greatest + 1e-12);
          start = end;
        }
      }),
      { numRuns: 300 },
    );
  });

  it('of nothing are nothing', () => {
    expect(daysOfYear(new Array<number>(12).fill(0), 2024).every((value) => value === 0)).toBe(true);
  });

  it('a dry month between wet ones is dry on every day', () => {
    const monthlyTotals = [90, 80, 70, 60, 50, 0, 40, 50, 60, 70, 80, 90];
    const june = daysOfYear(monthlyTotals, 2025).subarray(151, 181);
    expect(june).toHaveLength(30);
    expect(june.every((value) => value === 0)).toBe(true);
  });

  it('of a constant rate are that rate on every day', () => {
    for (const ofYear of [2023, 2024]) {
      const monthlyTotals = Array.from({ length: 12 }, (_, month) => 3 * daysInMonth(2023, month));
      for (const value of daysOfYear(monthlyTotals, ofYear)) expect(value).toBeCloseTo(3, 12);
    }
  });

  it('a leap February has a 29th day at the rate of the others', () => {
    // 56 mm over 28 days are 2 mm a day, so 58 mm over 29; January and March of 62 mm have 2 mm a day too.
    const even = Object.freeze([62, 56, 62, 60, 62, 60, 62, 62, 60, 62, 60, 62]);
    const leap = daysOfYear(even, 2024).subarray(31, 60);
    expect(leap).toHaveLength(29);
    expect(sum(leap)).toBeCloseTo(58, 11);
    expect(leap[28]).toBeCloseTo(2, 12);
    // Between a dry January and a wet March: 28 mm grow to 29, and the two neighbours keep every day they had.
    const rising = Object.freeze([0, 28, 93, 30, 31, 30, 31, 31, 30, 31, 30, 31]);
    const [common, longer] = [daysOfYear(rising, 2023), daysOfYear(rising, 2024)];
    expect(sum(common.subarray(31, 59))).toBeCloseTo(28, 11);
    expect(sum(longer.subarray(31, 60))).toBeCloseTo(29, 11);
    expect(longer.subarray(0, 31)).toEqual(common.subarray(0, 31));
    expect(longer.subarray(60)).toEqual(common.subarray(59));
  });

  it('do not depend on where the season starts or how long it runs', () => {
    const monthlyTotals = CALIFORNIA_ZONES[13]?.[1] ?? [];
    const whole = monthlyToDaily({ monthlyTotals, firstDay: dayNumber('2023-01-01'), dayCount: 1096 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1095 }), fc.integer({ min: 0, max: 400 }), (from, wanted) => {
        const dayCount = Math.min(wanted, 1096 - from);
        const part = monthlyToDaily({ monthlyTotals, firstDay: dayNumber('2023-01-01') + from, dayCount });
        expect(part).toEqual(whole.slice(from, from + dayCount));
      }),
      { numRuns: 100 },
    );
  });

  it('of no days are none', () => {
    expect(monthlyToDaily({ monthlyTotals: new Array<number>(12).fill(1), firstDay: 0, dayCount: 0 })).toHaveLength(0);
  });

  it.each([
    ['eleven months', new Array<number>(11).fill(1), 'monthly totals must be twelve, January first, not 11'],
    [
      'a negative month',
      [1, 1, -1, 1, 1, 1, 1, 1, 1, 1, 1, 1],
      'the total of month 3 must be a number of 0 or more, not -1',
    ],
    ['a month that is not a number', [1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, Number.NaN], 'the total of month 12 must be'],
    ['an endless month', [Number.POSITIVE_INFINITY, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1], 'the total of month 1 must be'],
  ] as const)('%s is refused', (_name, monthlyTotals, words) => {
    expect(() => monthlyToDaily({ monthlyTotals, firstDay: 0, dayCount: 1 })).toThrow(RangeError);
    expect(() => monthlyToDaily({ monthlyTotals, firstDay: 0, dayCount: 1 })).toThrow(words);
  });
});
