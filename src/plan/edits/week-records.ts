/** Records by week, each under a day of it: the week's first, whenever this kit writes one. */
import { addDays, isIsoDate } from '../../engine/calendar.ts';
import type { PlanSeason } from '../schema/plan-schema.ts';
import { weekFirstDay, weekOf } from '../season-weeks.ts';
import { fromEntries } from './change.ts';

type Weeks<Value> = Readonly<Record<string, Value>>;

/** What stands for the week that holds a day, under whichever of its days. */
export function readWeek<Value>(weeks: Weeks<Value> | undefined, season: PlanSeason, day: string): Value | undefined {
  const key = Object.keys(weeks ?? {}).find((other) => sameWeek(season, other, day));
  return key === undefined ? undefined : weeks?.[key];
}

/** Writes a week under its first day and takes out what stood for it under another; `undefined` where nothing is left. */
export function writeWeek<Value>(
  weeks: Weeks<Value> | undefined,
  at: { readonly season: PlanSeason; readonly day: string },
  value: Value | undefined,
): Weeks<Value> | undefined {
  const others = Object.entries(weeks ?? {}).filter(([key]) => !sameWeek(at.season, key, at.day));
  return fromEntries(value === undefined ? others : [...others, [weekKey(at.season, at.day), value]]);
}

/** The same records in the weeks of another season, each where most days of its week lie. */
export function movedWeeks<Value>(
  weeks: Weeks<Value> | undefined,
  from: PlanSeason,
  to: PlanSeason,
): Weeks<Value> | undefined {
  if (weeks === undefined || from.firstDay === to.firstDay) return weeks;
  return fromEntries(
    Object.entries(weeks).map(([day, value]) => [
      weekFirstDay(to, weekOf(to, addDays(weekFirstDay(from, weekOf(from, day)), 3))),
      value,
    ]),
  );
}

/** Those of the season's weeks. */
export function weeksInside<Value>(weeks: Weeks<Value> | undefined, season: PlanSeason): Weeks<Value> | undefined {
  const entries = Object.entries(weeks ?? {});
  const inside = entries.filter(([day]) => isInside(season, day));
  return inside.length === entries.length ? weeks : fromEntries(inside);
}

function sameWeek(season: PlanSeason, left: string, right: string): boolean {
  if (left === right) return true;
  return isIsoDate(left) && isIsoDate(right) && weekOf(season, left) === weekOf(season, right);
}

/** A day outside the season stays as it is named: the check that follows will say so. */
function weekKey(season: PlanSeason, day: string): string {
  return isIsoDate(day) && isInside(season, day) ? weekFirstDay(season, weekOf(season, day)) : day;
}

function isInside(season: PlanSeason, day: string): boolean {
  const week = weekOf(season, day);
  return week >= 0 && week < season.weeks;
}
