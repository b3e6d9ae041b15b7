/** Edits of the observed weather and of the climate. */
import type { Plan, PlanWeek } from '../../schema/plan-schema.ts';
import { changed, withKey } from '../change.ts';
import type { Change, WeatherEdit } from '../edit.ts';
import { readWeek, writeWeek } from '../week-records.ts';
import { withLog } from '../with-log.ts';

export function editWeather(plan: Plan, edit: WeatherEdit): Plan {
  switch (edit.type) {
    case 'set-week-rain':
      return withWeek(plan, edit.week, { rain: edit.rain });
    case 'set-week-eto':
      return withWeek(plan, edit.week, { eto: edit.eto });
    case 'set-day-weather': {
      const isCleared = edit.weather === undefined || Object.keys(edit.weather).length === 0;
      const days = withKey(plan.log?.days, edit.day, isCleared ? undefined : edit.weather);
      return withLog(plan, { days });
    }
    case 'set-climate': {
      const site = changed(plan.site, { climate: edit.climate });
      return site === plan.site ? plan : { ...plan, site };
    }
  }
}

function withWeek(plan: Plan, week: string, change: Change<PlanWeek>): Plan {
  const weeks = plan.log?.weeks;
  const before = readWeek(weeks, plan.season, week) ?? {};
  const after = changed(before, change);
  if (after === before) return plan;
  const value = Object.keys(after).length === 0 ? undefined : after;
  return withLog(plan, { weeks: writeWeek(weeks, { season: plan.season, day: week }, value) });
}
