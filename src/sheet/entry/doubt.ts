/** Readings that may be a slip of the finger: they are asked about before they are taken. */
import { civilDate, type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { Season } from '../../engine/season/season.ts';
import { toSi } from '../../engine/units.ts';
import { doubtsWords } from '../../language/en/doubts.ts';
import type { Format } from '../../language/format/format.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { WeatherContext } from './weather-entry.ts';

export interface RainReading {
  readonly mm: number;
  readonly firstDay: DayNumber;
  /** Read of one day, or of a week. */
  readonly days: 1 | 7;
  /** Left out: no day is to come. */
  readonly today: DayNumber | undefined;
}

/** So much rain in a day or a week is always asked about, mm: 8 in is a disaster in most places. A choice of this kit. */
const ALWAYS_ASKED_MM = 200;
/** So little never is, mm. A choice of this kit. */
const NEVER_ASKED_MM = 50;
/** Far above the most of all years: so many times that. A choice of this kit. */
const FAR_ABOVE = 1.5;

/**
 * What to ask before rain is taken; undefined where nothing is odd about it. The most that a month has ever had is that of the years that
 * the plan knows, else of those made from its normals.
 */
export function rainDoubt(reading: RainReading, season: Season, format: Format): string | undefined {
  const { mm, firstDay, days, today } = reading;
  const say = doubtsWords(format.reader.language);
  if (isWithin(season, today) && firstDay > today) return say.toCome(format, firstDay);
  if (mm <= NEVER_ASKED_MM) return undefined;
  const mostMm = mostRainMm(season, firstDay, days);
  if (mm < Math.min(ALWAYS_ASKED_MM, FAR_ABOVE * mostMm)) return undefined;
  return say.farAbove(format, { mm, days, mostMm, month: civilDate(firstDay).month });
}

/** In a season that is not on yet rain is typed to see what it would do. */
function isWithin({ garden }: Season, today: DayNumber | undefined): today is DayNumber {
  const { firstDay, weeks } = garden.span;
  return today !== undefined && today >= firstDay && today < firstDay + 7 * weeks;
}

/** The most that fell in so many days in a row of the reading's month, in any year, mm. */
function mostRainMm({ weather }: Season, firstDay: DayNumber, days: number): number {
  const { years, days: inSeason, rainMm } = weather.years();
  const { month } = civilDate(firstDay);
  let most = 0;
  for (let start = 0; start + days <= inSeason; start += 1) {
    if (civilDate(weather.firstDay + start).month !== month) continue;
    for (let year = 0; year < years; year += 1) {
      let sum = 0;
      for (let day = start; day < start + days; day += 1) sum += rainMm[day * years + year] as number;
      most = Math.max(most, sum);
    }
  }
  return most;
}

/** What to ask before an edit of a sheet is sent; undefined where nothing of it is odd. */
export function editDoubt(edit: Edit, { plan, season, format, today }: WeatherContext): string | undefined {
  const edits = edit.type === 'together' ? edit.edits : [edit];
  for (const each of edits) {
    if (each.type !== 'set-week-rain' || each.rain === undefined) continue;
    const mm = toSi(each.rain, 'depth', plan.units);
    const doubt = rainDoubt({ mm, firstDay: dayNumber(each.week), days: 7, today }, season, format);
    if (doubt !== undefined) return doubtsWords(format.reader.language).again(doubt);
  }
  return undefined;
}
