/** Edits of the plan as a whole: its name, its season, the place, the supply, the units. */
import * as v from 'valibot';
import type { Plan, PlanChoices, PlanSeason, PlanSupply, PlanWhatIf } from '../schema/plan-schema.ts';
import { seasonSchema } from '../schema/site.ts';
import { changed, fromEntries, replaced } from './change.ts';
import { convertUnits } from './convert-units.ts';
import type { GardenEdit } from './edit.ts';
import { movedRuns, movedTotals, type SeasonMove } from './moved-log.ts';
import { movedWeeks, weeksInside } from './week-records.ts';
import { withLog } from './with-log.ts';

const NO_SUPPLY: PlanSupply = { sources: [] };

export function editGarden(plan: Plan, edit: GardenEdit): Plan {
  switch (edit.type) {
    case 'rename-plan':
      return renamed(plan, edit.name);
    case 'set-plan-notes':
      return changed(plan, { notes: edit.notes === '' ? undefined : edit.notes });
    case 'set-assumed':
      return changed(plan, { assumed: edit.assumed?.length === 0 ? undefined : edit.assumed });
    case 'set-season':
      return withSeason(plan, edit.season);
    case 'change-site': {
      const site = changed(plan.site, edit.change);
      return site === plan.site ? plan : { ...plan, site };
    }
    case 'change-supply': {
      const supply = changed(plan.supply ?? NO_SUPPLY, edit.change);
      return supply === plan.supply || supply === NO_SUPPLY ? plan : { ...plan, supply };
    }
    case 'set-what-if':
      return withWhatIf(plan, edit.name, edit.edits);
    case 'convert-units':
      return convertUnits(plan, edit.units);
  }
}

/** Calendars go on knowing it by the name that it had first. */
function renamed(plan: Plan, name: string): Plan {
  const identity = plan.identity ?? plan.name;
  return changed(plan, { name, identity: name === identity ? undefined : identity });
}

function withWhatIf(plan: Plan, name: string, edits: PlanWhatIf['edits'] | undefined): Plan {
  const kept = plan.whatIfs ?? [];
  const at = kept.findIndex((whatIf) => whatIf.name === name);
  const others = at === -1 ? kept : kept.toSpliced(at, 1);
  const next = edits === undefined ? others : others.toSpliced(at === -1 ? others.length : at, 0, { name, edits });
  return changed(plan, { whatIfs: next.length === 0 ? undefined : next });
}

/**
 * Records by week go into that week of the new season which holds most of their days, what ran on a day into the week of that day.
 * Choices and runs of weeks that are no longer in it are taken out (undo brings them back); observed weather stays, wherever it lies.
 */
function withSeason(plan: Plan, season: PlanSeason): Plan {
  const next = changed(plan, { season });
  // A season that cannot be is refused by the check that follows.
  if (next === plan || !v.is(seasonSchema, season)) return next;
  const { log, choices } = plan;
  const move = { from: plan.season, to: season };
  return withLog(replaced(next, { choices: choices && eachZone(choices, (weeks) => movedChoices(weeks, move)) }), {
    ...(log?.weeks && { weeks: movedTotals(log.weeks, move) }),
    ...(log?.runs && { runs: eachZone(log.runs, (weeks) => weeksInside(movedRuns(weeks, move), season)) }),
  });
}

const movedChoices = (weeks: PlanChoices, { from, to }: SeasonMove) => weeksInside(movedWeeks(weeks, from, to), to);

/** How many choices and runs an edit of the season takes out. */
export function entriesOutside({ choices, log, season: from }: Plan, to: PlanSeason): number {
  if (!v.is(seasonSchema, to)) return 0;
  const moved: readonly (Weeks<unknown> | undefined)[] = [
    ...Object.values(choices ?? {}).map((weeks) => movedWeeks(weeks, from, to)),
    ...Object.values(log?.runs ?? {}).map((weeks) => movedRuns(weeks, { from, to })),
  ];
  return moved.reduce((lost, weeks) => lost + count(weeks) - count(weeksInside(weeks, to)), 0);
}

const count = (weeks: Weeks<unknown> | undefined): number => Object.keys(weeks ?? {}).length;

type Weeks<Value> = Readonly<Record<string, Value>>;

function eachZone<Value>(
  zones: Readonly<Record<string, Weeks<Value>>>,
  change: (weeks: Weeks<Value>) => Weeks<Value> | undefined,
) {
  return fromEntries(
    Object.entries(zones).flatMap(([zone, weeks]): [string, Weeks<Value>][] => {
      const moved = change(weeks);
      return moved === undefined ? [] : [[zone, moved]];
    }),
  );
}
