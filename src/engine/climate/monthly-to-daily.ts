import { civilDate, type DayNumber, daysInMonth } from '../calendar.ts';
import { COMMON_YEAR, MONTHS } from './mid-month-day-of-year.ts';
import { type MonthCurve, meanRate, rateBetween } from './month-curve.ts';

/**
 * Daily values from monthly totals, for any days of any years: ETo or rain normals as days of a season, in the totals' unit.
 *
 * A mean-preserving quadratic in each month (`MonthCurve`): the days of a whole month add up to its total, the curve has no jump where
 * months meet (December meets January), and no day is negative. A month's rate is its total over its days, February's over 28: in a
 * leap year its 29th day comes on top, at the same rate. The curve is our choice; it stands on the three properties, which are
 * proved beside it and tested.
 *
 * `monthlyTotals` has twelve values, January first. Throws a RangeError for any other number of them, and for a total that is
 * negative or not a number.
 */
export function monthlyToDaily(given: {
  readonly monthlyTotals: readonly number[];
  readonly firstDay: DayNumber;
  readonly dayCount: number;
}): Float64Array {
  const { monthlyTotals, firstDay, dayCount } = given;
  refuseBadTotals(monthlyTotals);
  const daily = new Float64Array(dayCount);
  let index = 0;
  while (index < dayCount) {
    const { year, month, dayOfMonth } = civilDate(firstDay + index);
    const length = daysInMonth(year, month);
    const curve = curveOf(monthlyTotals, month);
    for (let day = dayOfMonth - 1; day < length && index < dayCount; day += 1, index += 1) {
      daily[index] = meanRate(curve, day / length, (day + 1) / length);
    }
  }
  return daily;
}

/** The curve of one month (0 to 11) between its neighbours. */
export function curveOf(monthlyTotals: readonly number[], month: number): MonthCurve {
  const mean = dailyMean(monthlyTotals, month);
  return {
    mean,
    start: rateBetween(dailyMean(monthlyTotals, (month + MONTHS - 1) % MONTHS), mean),
    end: rateBetween(mean, dailyMean(monthlyTotals, (month + 1) % MONTHS)),
  };
}

function dailyMean(monthlyTotals: readonly number[], month: number): number {
  return (monthlyTotals[month] as number) / daysInMonth(COMMON_YEAR, month);
}

function refuseBadTotals(monthlyTotals: readonly number[]): void {
  if (monthlyTotals.length !== MONTHS) {
    throw new RangeError(`monthly totals must be twelve, January first, not ${monthlyTotals.length}`);
  }
  for (const [month, total] of monthlyTotals.entries()) {
    if (!(total >= 0 && Number.isFinite(total))) {
      throw new RangeError(`the total of month ${month + 1} must be a number of 0 or more, not ${total}`);
    }
  }
}
