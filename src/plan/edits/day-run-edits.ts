/** Edits of what really ran in a zone on a day. */
import type { Plan, PlanRuns, PlanWeekRun } from '../schema/plan-schema.ts';
import { fromEntries, ownValue, withKey } from './change.ts';
import type { DayRunEdit } from './edit.ts';
import { withRun } from './week-edits.ts';
import { readWeek } from './week-records.ts';
import { withLog } from './with-log.ts';

/** The first day that is logged takes the place of a total; with the last that is taken out, the week's record goes. */
export function editDayRun(plan: Plan, { zone, day, run }: DayRunEdit): Plan {
  const before = readWeek(ownValue(plan.log?.runs, zone), plan.season, day);
  const daysBefore = typeof before === 'object' ? before.days : undefined;
  // A total says nothing of the day, so there is nothing to take out.
  if (run === undefined && daysBefore === undefined) return plan;
  const days = withKey(daysBefore, day, run);
  if (days === daysBefore) return plan;
  const rest = typeof before === 'object' && before.rest !== undefined ? { rest: before.rest } : {};
  return withRun(plan, { zone, week: day }, days && { days: byDay(days), ...rest });
}

function byDay<Value>(days: Readonly<Record<string, Value>>): Readonly<Record<string, Value>> {
  return Object.fromEntries(Object.entries(days).sort(([left], [right]) => (left < right ? -1 : 1)));
}

interface At {
  readonly zone: string;
  readonly planting: string;
}

/** The days on which a planting's shut-off is logged as open. */
export function openRunDays(plan: Plan, { zone, planting }: At): ReadonlySet<string> {
  const weeks: readonly PlanWeekRun[] = Object.values(ownValue(plan.log?.runs, zone) ?? {});
  return new Set(
    weeks.flatMap((week) =>
      typeof week === 'number'
        ? []
        : Object.entries(week.days).flatMap(([day, { open }]) => (open?.includes(planting) ? [day] : [])),
    ),
  );
}

/**
 * The plan with a planting logged as open on exactly these days, among those of the zone for which it is logged which shut-offs were
 * open.
 */
export function withOpenRunDays(plan: Plan, { zone, planting }: At, openOn: ReadonlySet<string>): Plan {
  const weeks = ownValue(plan.log?.runs, zone);
  if (weeks === undefined) return plan;
  const entries = Object.entries(weeks).map(([week, run]): [string, PlanWeekRun] => {
    if (typeof run === 'number') return [week, run];
    const days = Object.entries(run.days).map(([day, ofDay]) => {
      if (ofDay.open === undefined || ofDay.open.includes(planting) === openOn.has(day)) return [day, ofDay] as const;
      const others = ofDay.open.filter((id) => id !== planting);
      return [day, { ...ofDay, open: openOn.has(day) ? [...others, planting] : others }] as const;
    });
    const isSame = days.every(([day, ofDay]) => run.days[day] === ofDay);
    return [week, isSame ? run : { ...run, days: Object.fromEntries(days) }];
  });
  if (entries.every(([week, run]) => weeks[week] === run)) return plan;
  return withLog(plan, { runs: withKey<PlanRuns>(plan.log?.runs, zone, fromEntries(entries)) });
}
