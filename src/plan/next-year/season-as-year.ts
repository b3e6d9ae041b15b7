/** The weather of a season as one of the real years of a plan's place. */
import { dayNumber } from '../../engine/calendar.ts';
import { MOST_MISSING_SHARE } from '../../engine/rain/recorded-years.ts';
import { isEtoRead, isRainRead, seasonWeather, type Weather } from '../../engine/weather.ts';
import { gardenOf } from '../garden-of.ts';
import { MOST_PACKED_DAYS, packedFigures } from '../packed-days.ts';
import { packedStretch } from '../packed-stretch.ts';
import type { Plan, PlanStretch, PlanYears } from '../schema/plan-schema.ts';

/** Days whose rain was read, by themselves or in a week's total, and the days of the season. */
export function daysRead(plan: Plan): { readonly read: number; readonly days: number } {
  const weather = seasonWeather(gardenOf(plan));
  return { read: readDays(weather).filter(Boolean).length, days: weather.days };
}

/** Whether so many of its days were read that the season can be kept as a year. */
export function canBeYear({ read, days }: { readonly read: number; readonly days: number }): boolean {
  return days - read <= MOST_MISSING_SHARE * days;
}

/**
 * The plan's years with this season among them, and `source` put behind where they come from; the years as they are where too few
 * days were read or there is no room. Days that were not read are missing in it. A year that the plan has already is not kept twice.
 */
export function yearsWithSeason(plan: Plan, source: string): PlanYears | undefined {
  const { years } = plan.site;
  const weather = seasonWeather(gardenOf(plan));
  const isRead = readDays(weather);
  if (!canBeYear({ read: isRead.filter(Boolean).length, days: weather.days })) return years;
  const stretch = packedStretch({
    firstDay: weather.firstDay,
    rainMm: weather.rain.mm.map((mm, day) => (isRead[day] ? mm : Number.NaN)),
    etoMm: weather.eto.mm.map((mm, day) => (isEtoRead(weather, day) ? mm : Number.NaN)),
  });
  const stretches = [...(years?.stretches ?? []), stretch];
  const days = stretches.reduce((sum, each) => sum + dayCount(each), 0);
  if (days > MOST_PACKED_DAYS || (years?.stretches ?? []).some((other) => overlap(other, stretch))) return years;
  return { source: [years?.source, source].filter((each) => each !== undefined && each !== '').join('; '), stretches };
}

const readDays = (weather: Weather): readonly boolean[] =>
  Array.from({ length: weather.days }, (_, day) => isRainRead(weather, day));

const dayCount = ({ rain }: PlanStretch): number => packedFigures(rain).length;

function overlap(one: PlanStretch, other: PlanStretch): boolean {
  const [first, second] = [one, other].map(({ from }) => dayNumber(from)) as [number, number];
  return first < second + dayCount(other) && second < first + dayCount(one);
}
