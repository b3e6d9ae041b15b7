/** A week or season of rain or reference ET in words. */
import type { Reading } from '../faces/reading.ts';
import type { SeasonWeather, WeatherKind, WeekWeather } from '../week-weather.ts';
import { ETO_NAME, RAIN_NAME, sentence } from '../words.ts';

const NAMES: Readonly<Record<WeatherKind, string>> = { eto: ETO_NAME, rain: RAIN_NAME };

export function weatherSentence(
  kind: WeatherKind,
  weather: SeasonWeather,
  week: number,
  { format, calendar }: Reading,
): string {
  const here = weather.weeks[week];
  if (here === undefined) throw new RangeError(`week ${week} is outside the season`);
  return `${NAMES[kind]}, ${calendar.words(week)}: ${sentence(format.depthWords(here.mm), origin(here))}`;
}

export function weatherSeasonSentence(kind: WeatherKind, { totalMm }: SeasonWeather, { format }: Reading): string {
  return `${NAMES[kind]}, whole season: ${format.depthWords(totalMm)}.`;
}

function origin({ observedDays, hasWeekTotal }: WeekWeather): string {
  if (observedDays === 0) return 'from the normals';
  if (hasWeekTotal) return 'total of the week entered by hand';
  return observedDays === 7 ? 'entered by day' : `${observedDays} of 7 days entered, the rest from the normals`;
}
