/** The season's weather by day: what was observed, else what the normals say. */
import { type DayNumber, daysInMonth, monthOf, yearOf } from './calendar.ts';
import { type DailyEto, dailyEto } from './climate/daily-eto.ts';
import type { Garden, SeasonSpan } from './garden.ts';
import { type DailyRain, dailyRain } from './rain/daily-rain.ts';

export interface Weather {
  readonly firstDay: DayNumber;
  readonly days: number;
  readonly months: SeasonMonths;
  readonly eto: DailyEto;
  readonly rain: DailyRain;
}

/** The calendar months that the season touches, in order; a month of the next year is a month of its own. */
export interface SeasonMonths {
  /** First day of each, counted from the season's first day (not before it); one more for the season's end. */
  readonly starts: readonly number[];
  /** 0 = January. */
  readonly calendarMonth: readonly number[];
  readonly lengthDays: readonly number[];
}

/**
 * Weather of each day of the garden's season. What did not change since `previous` is handed on as the same object, so
 * that whoever depends on the ETo alone can tell that only the rain moved.
 */
export function seasonWeather(garden: Garden, previous?: Weather): Weather {
  const { firstDay, weeks } = garden.span;
  const days = weeks * 7;
  const sameSpan = previous?.firstDay === firstDay && previous.days === days;
  const months = sameSpan ? previous.months : seasonMonths(garden.span);
  const eto = dailyEto(garden);
  const rain = dailyRain(garden, eto);
  return {
    firstDay,
    days,
    months,
    eto:
      previous && sameNumbers(previous.eto.mm, eto.mm) && sameNumbers(previous.eto.method, eto.method)
        ? previous.eto
        : eto,
    rain:
      previous &&
      sameNumbers(previous.rain.mm, rain.mm) &&
      sameNumbers(previous.rain.soakedMm, rain.soakedMm) &&
      sameNumbers(previous.rain.origin, rain.origin)
        ? previous.rain
        : rain,
  };
}

function seasonMonths({ firstDay, weeks }: SeasonSpan): SeasonMonths {
  const days = weeks * 7;
  const starts: number[] = [];
  const calendarMonth: number[] = [];
  const lengthDays: number[] = [];
  for (let day = 0; day < days; day++) {
    const month = monthOf(firstDay + day);
    if (calendarMonth.at(-1) === month) continue;
    starts.push(day);
    calendarMonth.push(month);
    lengthDays.push(daysInMonth(yearOf(firstDay + day), month));
  }
  return { starts: [...starts, days], calendarMonth, lengthDays };
}

function sameNumbers(left: Float64Array | Uint8Array, right: Float64Array | Uint8Array): boolean {
  return left.length === right.length && left.every((value, place) => value === right[place]);
}
