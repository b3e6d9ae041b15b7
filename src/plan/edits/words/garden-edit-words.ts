import * as v from 'valibot';
import { dayNumber, isIsoDate } from '../../../engine/calendar.ts';
import { unitOf } from '../../../engine/units.ts';
import { fieldsInWords } from '../../reading/field-words.ts';
import type { Plan, PlanSeason } from '../../schema/plan-schema.ts';
import { seasonSchema } from '../../schema/site.ts';
import { dayInWords, writtenDate } from '../../words/day-words.ts';
import { shortText } from '../../words/short-text.ts';
import type { GardenEdit, WeatherEdit } from '../edit.ts';
import { movedWeeks, weeksInside } from '../week-records.ts';
import { counted, listed, weekName } from './names.ts';

export function gardenEditInWords(plan: Plan, edit: GardenEdit): string {
  switch (edit.type) {
    case 'rename-plan':
      return `Plan renamed “${shortText(edit.name)}”`;
    case 'set-plan-notes':
      return 'Notes of the plan changed';
    case 'set-season':
      return `Season: ${seasonInWords(plan, edit.season)}`;
    case 'change-site':
      return `Site changed: ${fieldList(edit.change)}`;
    case 'change-supply':
      return `Supply changed: ${fieldList(edit.change)}`;
    case 'convert-units':
      return edit.units === 'us' ? 'Units changed to US' : 'Units changed to metric';
  }
}

export function weatherEditInWords(plan: Plan, edit: WeatherEdit): string {
  const unit = unitOf('depth', plan.units).name;
  switch (edit.type) {
    case 'set-week-rain':
      return `Rain, ${weekName(plan, edit.week)}: ${amount(edit.rain, unit)}`;
    case 'set-week-eto':
      return `Reference ET, ${weekName(plan, edit.week)}: ${amount(edit.eto, unit)}`;
    case 'set-day-weather':
    case 'change-day-weather': {
      const day = isIsoDate(edit.day) ? dayInWords(dayNumber(edit.day)) : shortText(edit.day);
      const weather = (edit.type === 'set-day-weather' ? edit.weather : edit.change) ?? {};
      if (weather.rain !== undefined) return `Weather of ${day}: rain ${weather.rain} ${unit}`;
      const isGone = Object.values(weather).every((value) => value === undefined);
      return `Weather of ${day}: ${isGone ? 'taken out' : fieldList(weather)}`;
    }
    case 'set-climate':
      return 'Climate changed';
  }
}

function amount(value: number | undefined, unit: string): string {
  return value === undefined ? 'as normal' : `${value} ${unit}`;
}

/** Choices and runs that fall out of the season are counted, since they go with it. */
function seasonInWords(plan: Plan, season: PlanSeason): string {
  const lost = entriesLost(plan, season);
  const words = `from ${writtenDate(season.firstDay)}, ${counted(season.weeks, 'week')}`;
  return lost === 0 ? words : `${words}; ${lost === 1 ? '1 entry' : `${lost} entries`} outside it taken out`;
}

function entriesLost({ choices, log, season }: Plan, next: PlanSeason): number {
  if (!v.is(seasonSchema, next)) return 0;
  const records = [choices, log?.runs].flatMap((zones): Readonly<Record<string, unknown>>[] =>
    Object.values(zones ?? {}),
  );
  return records.reduce((lost, weeks) => {
    const moved = movedWeeks(weeks, season, next);
    return lost + Object.keys(moved ?? {}).length - Object.keys(weeksInside(moved, next) ?? {}).length;
  }, 0);
}

function fieldList(change: object): string {
  return listed(Object.keys(change).map((field) => fieldsInWords([field])));
}
