/** Edits of the plan as a whole: its name, its season, the place, the supply, the units. */
import * as v from 'valibot';
import type { Plan, PlanSeason, PlanSupply } from '../schema/plan-schema.ts';
import { seasonSchema } from '../schema/site.ts';
import { changed, fromEntries, replaced } from './change.ts';
import { convertUnits } from './convert-units.ts';
import type { GardenEdit } from './edit.ts';
import { movedWeeks, weeksInside } from './week-records.ts';
import { withLog } from './with-log.ts';

const NO_SUPPLY: PlanSupply = { sources: [] };

export function editGarden(plan: Plan, edit: GardenEdit): Plan {
  switch (edit.type) {
    case 'rename-plan':
      return changed(plan, { name: edit.name });
    case 'set-plan-notes':
      return changed(plan, { notes: edit.notes === '' ? undefined : edit.notes });
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
    case 'convert-units':
      return convertUnits(plan, edit.units);
  }
}

/**
 * Records by week go into that week of the new season which holds most of their days. Choices and runs of weeks that are no longer in it
 * are taken out (undo brings them back); observed weather stays, wherever it lies.
 */
function withSeason(plan: Plan, season: PlanSeason): Plan {
  const next = changed(plan, { season });
  // A season that cannot be is refused by the check that follows.
  if (next === plan || !v.is(seasonSchema, season)) return next;
  const { log, choices } = plan;
  const move = <Value>(weeks: Readonly<Record<string, Value>>) =>
    weeksInside(movedWeeks(weeks, plan.season, season), season);
  return withLog(replaced(next, { choices: choices && eachZone(choices, move) }), {
    ...(log?.weeks && { weeks: movedWeeks(log.weeks, plan.season, season) }),
    ...(log?.runs && { runs: eachZone(log.runs, move) }),
  });
}

/** How many choices and runs an edit of the season takes out. */
export function entriesOutside({ choices, log, season }: Plan, next: PlanSeason): number {
  if (!v.is(seasonSchema, next)) return 0;
  const records = [choices, log?.runs].flatMap((zones): Readonly<Record<string, unknown>>[] =>
    Object.values(zones ?? {}),
  );
  return records.reduce((lost, weeks) => {
    const moved = movedWeeks(weeks, season, next);
    return lost + Object.keys(moved ?? {}).length - Object.keys(weeksInside(moved, next) ?? {}).length;
  }, 0);
}

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
