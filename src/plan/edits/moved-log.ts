/** Totals and runs of a plan whose season begins on another day: what names a day stays on that day. */
import { dayNumber, type IsoDate, isoDate } from '../../engine/calendar.ts';
import type { PlanDayRun, PlanLog, PlanRuns, PlanSeason, PlanWeek, PlanWeekRun } from '../schema/plan-schema.ts';
import { weekDays, weekFirstDay, weekOf } from '../season-weeks.ts';
import { replaced } from './change.ts';
import { movedWeeks } from './week-records.ts';

export interface SeasonMove {
  readonly from: PlanSeason;
  readonly to: PlanSeason;
}

/** Each total in the week that holds most days of its own; a day that it was read through, where it lies outside, is the nearest inside. */
export function movedTotals(weeks: NonNullable<PlanLog['weeks']>, { from, to }: SeasonMove): PlanLog['weeks'] {
  const moved = movedWeeks(weeks, from, to);
  if (moved === undefined || moved === weeks) return moved;
  return Object.fromEntries(Object.entries(moved).map(([day, week]) => [day, readInside(week, weekDays(to, day))]));
}

function readInside(week: PlanWeek, { first, last }: ReturnType<typeof weekDays>): PlanWeek {
  if (week.rainThrough === undefined) return week;
  const day = isoDate(Math.min(last, Math.max(first, dayNumber(week.rainThrough))));
  return replaced(week, { rainThrough: day });
}

/**
 * Minutes of a whole week go into the week that holds most of its days, those of a day into that day's week. Where both come together
 * their sum is the week's.
 */
export function movedRuns(weeks: PlanRuns, { from, to }: SeasonMove): PlanRuns | undefined {
  if (from.firstDay === to.firstDay || !Object.values(weeks).some(isByDay)) return movedWeeks(weeks, from, to);
  const totals = Object.fromEntries(Object.entries(weeks).filter(([, run]) => !isByDay(run)));
  const moved = new Map<IsoDate, PlanWeekRun>(Object.entries(movedWeeks(totals, from, to) ?? {}));
  for (const run of Object.values(weeks)) {
    for (const [day, ofDay] of Object.entries(isByDay(run) ? run.days : {})) {
      const week = weekFirstDay(to, weekOf(to, day));
      const before = moved.get(week) ?? { days: {}, ...(isByDay(run) && run.rest && { rest: run.rest }) };
      moved.set(week, withDay(before, day, ofDay));
    }
  }
  return Object.fromEntries(moved);
}

const isByDay = (run: PlanWeekRun): run is Exclude<PlanWeekRun, number> => typeof run !== 'number';

function withDay(week: PlanWeekRun, day: IsoDate, run: PlanDayRun): PlanWeekRun {
  return isByDay(week) ? { ...week, days: { ...week.days, [day]: run } } : week + run.minutes;
}
