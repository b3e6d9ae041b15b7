/** Edits of one zone and week. */
import { sameData } from '../same-data.ts';
import type { Plan, PlanChoice, PlanChoices, PlanRuns, PlanWeekRun } from '../schema/plan-schema.ts';
import { changed, ownValue, replaced, withKey } from './change.ts';
import type { WeekEdit } from './edit.ts';
import { readWeek, writeWeek } from './week-records.ts';
import { withLog } from './with-log.ts';

export function editWeek(plan: Plan, edit: WeekEdit): Plan {
  switch (edit.type) {
    case 'set-minutes':
      return withChoice(plan, edit, (choice) => changed(choice, { minutes: edit.minutes }));
    case 'close-week':
      return withChoice(plan, edit, (choice) => changed(choice, { closed: edit.closed ? true : undefined }));
    case 'set-open-days':
      return withChoice(plan, edit, (choice) =>
        changed(choice, { openDays: withKey(choice.openDays, edit.planting, edit.days) }),
      );
    case 'set-note':
      return withChoice(plan, edit, (choice) => changed(choice, { note: edit.note === '' ? undefined : edit.note }));
    case 'set-choice':
      return withChoice(plan, edit, () => edit.choice ?? {});
    case 'set-minutes-run':
      return withRun(plan, edit, edit.minutes);
    case 'set-week-run':
      return withRun(plan, edit, edit.run);
  }
}

interface Cell {
  readonly zone: string;
  readonly week: string;
}

/** A choice that says nothing is taken out. */
function withChoice(plan: Plan, { zone, week }: Cell, change: (choice: PlanChoice) => PlanChoice): Plan {
  const weeks = ownValue(plan.choices, zone);
  const before = readWeek(weeks, plan.season, week) ?? {};
  const wanted = changed(before, cleared(before, change(before)));
  if (wanted === before) return plan;
  const written = writeWeek(
    weeks,
    { season: plan.season, day: week },
    Object.keys(wanted).length === 0 ? undefined : wanted,
  );
  return replaced(plan, { choices: withKey<PlanChoices>(plan.choices, zone, written) });
}

/** The change that makes one choice of another: what is no longer there is taken out. */
function cleared(before: PlanChoice, after: PlanChoice): PlanChoice {
  return { ...Object.fromEntries(Object.keys(before).map((key) => [key, undefined])), ...after };
}

/** The plan with another record of what ran in a zone's week; `undefined` takes it out. */
export function withRun(plan: Plan, { zone, week }: Cell, run: PlanWeekRun | undefined): Plan {
  const weeks = ownValue(plan.log?.runs, zone);
  if (sameData(readWeek(weeks, plan.season, week), run)) return plan;
  const written = writeWeek(weeks, { season: plan.season, day: week }, run);
  return withLog(plan, { runs: withKey<PlanRuns>(plan.log?.runs, zone, written) });
}
