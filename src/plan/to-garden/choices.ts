/** What was set by hand and really run in a zone, by week of the season. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import type { DayRun, WeekChoice } from '../../engine/garden.ts';
import type { PlanChoice, PlanChoices, PlanRuns, PlanSeason, PlanWeekRun } from '../schema/plan-schema.ts';
import { seasonDays } from '../season-weeks.ts';
import { present } from './in-si.ts';

export const NO_CHOICES: ReadonlyMap<number, WeekChoice> = new Map();

/** A key of any day stands for the week that holds it. */
export function choicesOf(
  choices: PlanChoices | undefined,
  runs: PlanRuns | undefined,
  season: PlanSeason,
): ReadonlyMap<number, WeekChoice> {
  if (choices === undefined && runs === undefined) return NO_CHOICES;
  const { first } = seasonDays(season);
  const weeks = new Map<number, WeekChoice>();
  const add = (day: string, choice: WeekChoice) => {
    const week = Math.floor((dayNumber(day) - first) / 7);
    if (week >= 0 && week < season.weeks) weeks.set(week, { ...weeks.get(week), ...choice });
  };
  for (const [day, choice] of Object.entries(choices ?? {})) add(day, weekChoice(choice));
  for (const [day, run] of Object.entries(runs ?? {})) add(day, weekRun(run, first));
  return weeks;
}

function weekChoice({ minutes, closed, openDays, note }: PlanChoice): WeekChoice {
  return present({ minutes, closed, openDays: openDays && new Map(Object.entries(openDays)), note });
}

/** Of days, their sum besides. */
function weekRun(run: PlanWeekRun, first: DayNumber): WeekChoice {
  if (typeof run === 'number') return { minutesRun: run };
  const runs = new Map(
    Object.entries(run.days)
      .map(([day, { minutes, open }]) => {
        const ofWeek = (((dayNumber(day) - first) % 7) + 7) % 7;
        return [ofWeek, present<DayRun>({ minutes, open: open && new Set(open) })] as const;
      })
      .sort(([left], [right]) => left - right),
  );
  if (run.rest === 'computed') return { runs, runsAreSome: true };
  return { minutesRun: [...runs.values()].reduce((sum, { minutes }) => sum + minutes, 0), runs };
}
