import { civilDate, type DayNumber, dayNumberOf, daysInMonth, yearOf } from '../calendar.ts';
import type { WeatherStretch, WeatherYears } from '../garden-weather.ts';
import type { SeasonYears } from './season-years.ts';

const MOST_MISSING_SHARE = 0.05;

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
      const places = dates.map(({ year, month, dayOfMonth }) => {
        const day = Math.min(dayOfMonth, daysInMonth(year + later, month));
        return dayNumberOf({ year: year + later, month, dayOfMonth: day }) - firstDay;
      });
      const weather = found.has(later) ? undefined : weatherAt(stretch, places, normals.etoMm);
      if (weather !== undefined) found.set(later, weather);
    }
  }
  if (found.size === 0) return undefined;
  const years = [...found].sort(([one], [other]) => one - other).map(([, weather]) => weather);
  const all = { rainMm: new Float64Array(years.length * days), etoShare: new Float64Array(years.length * days) };
  for (const [year, { rainMm, etoShare }] of years.entries()) {
    all.rainMm.set(rainMm, year * days);
    all.etoShare.set(etoShare, year * days);
  }
  return { basis: 'record', years: years.length, days, ...all };
}

type YearWeather = Pick<SeasonYears, 'rainMm' | 'etoShare'>;

/** The weather at some places of a stretch in rising order; undefined where they pass its ends or too many are missing. */
function weatherAt(
  stretch: WeatherStretch,
  places: readonly number[],
  normalEtoMm: Float64Array,
): YearWeather | undefined {
  const days = places.length;
  if (days === 0 || (places[0] as number) < 0 || (places[days - 1] as number) >= stretch.rainMm.length)
    return undefined;
  const rainMm = Float64Array.from(places, (place) => stretch.rainMm[place] as number);
  const missing = rainMm.filter(Number.isNaN).length;
  if (missing > MOST_MISSING_SHARE * days) return undefined;
  const etoShare = rainMm.map((rain, day) => {
    const share = (stretch.etoMm[places[day] as number] as number) / (normalEtoMm[day] as number);
    return Number.isNaN(rain) || !Number.isFinite(share) ? 1 : share;
  });
  return { rainMm: rainMm.map((rain) => (Number.isNaN(rain) ? 0 : rain)), etoShare };
}
