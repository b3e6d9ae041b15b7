/** Edits of the observed weather and of the climate. */
import type { Plan, PlanDay, PlanWeek } from '../schema/plan-schema.ts';
import { changed, ownValue, withKey } from './change.ts';
import type { Change, WeatherEdit } from './edit.ts';
import { readWeek, writeWeek } from './week-records.ts';
import { withLog } from './with-log.ts';

export function editWeather(plan: Plan, edit: WeatherEdit): Plan {
  switch (edit.type) {
    case 'set-week-rain':
      return withWeek(plan, edit.week, { rain: edit.rain });
    case 'set-week-eto':
      return withWeek(plan, edit.week, { eto: edit.eto });
    case 'set-day-weather':
      return withDay(plan, edit.day, edit.weather);
    case 'change-day-weather':
      return withDay(plan, edit.day, changed(ownValue(plan.log?.days, edit.day) ?? {}, edit.change));
    case 'set-climate': {
      const site = changed(plan.site, { climate: edit.climate });
      return site === plan.site ? plan : { ...plan, site };
    }
  }
}

function withDay(plan: Plan, day: string, weather: PlanDay = {}): Plan {
  const isCleared = Object.keys(weather).length === 0;
  return withLog(plan, { days: withKey(plan.log?.days, day, isCleared ? undefined : weather) });
}

function withWeek(plan: Plan, week: string, change: Change<PlanWeek>): Plan {
  const weeks = plan.log?.weeks;
  const before = readWeek(weeks, plan.season, week) ?? {};
  const after = changed(before, change);
  if (after === before) return plan;
  const value = Object.keys(after).length === 0 ? undefined : after;
  return withLog(plan, { weeks: writeWeek(weeks, { season: plan.season, day: week }, value) });
}
