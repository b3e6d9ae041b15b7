/** What an edit logs as run, in a few words, and what it takes the place of. */
import { ownValue } from '../plan/edits/change.ts';
import { readWeek } from '../plan/edits/week-records.ts';
import type { Plan, PlanWeekRun } from '../plan/schema/plan-schema.ts';
import { editsWords } from './en/edits.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

/** What the log of a plan says of a zone's week. */
export function runOfWeek({ log, season }: Plan, zone: string, day: string): PlanWeekRun | undefined {
  return readWeek<PlanWeekRun>(ownValue(log?.runs, zone), season, day);
}

/** Minutes of a whole week. `before`: what was logged of it. */
export function describeTotalRun(minutes: number | undefined, before: PlanWeekRun | undefined, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  const isByDay = typeof before === 'object';
  if (minutes === undefined) return isByDay ? words.daysRunGone : words.minutesRunGone;
  return isByDay ? words.minutesRunForDays(format, minutes) : words.minutesRun(format, minutes);
}

/** A day of a week. `open`: names of the plantings whose shut-off was open. */
export function describeDayRun(
  run: { readonly minutes: number; readonly open: readonly string[] | undefined } | undefined,
  before: PlanWeekRun | undefined,
  reader: Reader,
): string {
  const words = editsWords(reader.language);
  const format = formatFor(reader);
  if (run === undefined) return words.dayRunGone;
  const ofDay = words.dayRun(format, run.minutes, run.open);
  return typeof before === 'number' ? words.dayRunForTotal(format, ofDay, before) : ofDay;
}
