import { civilDate, type DayNumber, dayNumberOf, daysInMonth, yearOf } from '../calendar.ts';
import type { WeatherStretch, WeatherYears } from '../garden-weather.ts';
import type { SeasonYears } from './season-years.ts';

/** Of a year that lacks the rain of more of the season's days the season makes no use. */
export const MOST_MISSING_SHARE = 0.05;

/** The season's first day, and the normals' reference ET of each of its days. */
export interface SeasonNormals {
  readonly firstDay: DayNumber;
  readonly etoMm: Float64Array;
}

/**
 * The season's days in every year of a record that has them all in one stretch, earliest first; undefined where none has.
 *
 * A day of the season takes the weather of the same day and month. February 29 of the season takes that of February 28 a second
 * time where a year has none; a leap day that the season lacks is left out. A season that runs on into later years does so in the
 * record, so the years of a long season overlap.
 *
 * A year of which more than 5 % of the days have no rain read is left out. Up to that, such a day has no rain and an `etoShare`
 * of 1. So is the `etoShare` of a day whose reference ET is missing or whose normal is 0.
 */
export function recordedYears({ stretches }: WeatherYears, normals: SeasonNormals): SeasonYears | undefined {
  const days = normals.etoMm.length;
  const dates = Array.from({ length: days }, (_, day) => civilDate(normals.firstDay + day));
  const found = new Map<number, YearWeather>();
  for (const stretch of stretches) {
    const { firstDay, rainMm } = stretch;
    const toYear = yearOf(normals.firstDay);
    for (let later = yearOf(firstDay) - toYear; later <= yearOf(firstDay + rainMm.length) - toYear; later += 1) {
      const indices = dates.map(({ year, month, dayOfMonth }) => {
        const day = Math.min(dayOfMonth, daysInMonth(year + later, month));
        return dayNumberOf({ year: year + later, month, dayOfMonth: day }) - firstDay;
      });
      const weather = found.has(later) ? undefined : weatherAt(stretch, indices, normals.etoMm);
      if (weather !== undefined) found.set(later, weather);
    }
  }
  if (found.size === 0) return undefined;
  const inOrder = [...found].sort(([one], [other]) => one - other);
  const years = inOrder.map(([, weather]) => weather);
  const calendarYears = inOrder.map(([later]) => yearOf(normals.firstDay) + later);
  const byDay = (of: keyof YearWeather) =>
    Float64Array.from(
      { length: years.length * days },
      (_, at) => years[at % years.length]?.[of][Math.floor(at / years.length)] as number,
    );
  return {
    basis: 'record',
    years: years.length,
    calendarYears,
    days,
    rainMm: byDay('rainMm'),
    etoShare: byDay('etoShare'),
  };
}

type YearWeather = Pick<SeasonYears, 'rainMm' | 'etoShare'>;

/** The weather at some indices of a stretch, in rising order; undefined where they pass its ends or too many are missing. */
function weatherAt(
  stretch: WeatherStretch,
  indices: readonly number[],
  normalEtoMm: Float64Array,
): YearWeather | undefined {
  const days = indices.length;
  if (days === 0 || (indices[0] as number) < 0 || (indices[days - 1] as number) >= stretch.rainMm.length)
    return undefined;
  const rainMm = Float64Array.from(indices, (index) => stretch.rainMm[index] as number);
  const missing = rainMm.filter(Number.isNaN).length;
  if (missing > MOST_MISSING_SHARE * days) return undefined;
  const etoShare = rainMm.map((rain, day) => {
    const share = (stretch.etoMm[indices[day] as number] as number) / (normalEtoMm[day] as number);
    return Number.isNaN(rain) || !Number.isFinite(share) ? 1 : share;
  });
  return { rainMm: rainMm.map((rain) => (Number.isNaN(rain) ? 0 : rain)), etoShare };
}
