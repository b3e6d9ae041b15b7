/** What was set by hand and really run in a zone, by week of the season. */
import { dayNumber } from '../../engine/calendar.ts';
import type { WeekChoice } from '../../engine/garden.ts';
import type { PlanChoice, PlanChoices, PlanRuns, PlanSeason } from '../schema/plan-schema.ts';
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
  for (const [day, minutesRun] of Object.entries(runs ?? {})) add(day, { minutesRun });
  return weeks;
}

function weekChoice({ minutes, closed, openDays, note }: PlanChoice): WeekChoice {
  return present({ minutes, closed, openDays: openDays && new Map(Object.entries(openDays)), note });
}
