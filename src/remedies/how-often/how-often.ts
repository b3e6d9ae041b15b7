/** How often a zone should be watered, month by month, and what comes of it where the plan's own days are too few. */
import { type DaysAWeek, zoneDaysAWeek } from '../../engine/application/days-a-week.ts';
import type { Season } from '../../engine/season/season.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { gardenFigures, mixFigures } from '../mix/mix-figures.ts';
import { daysByMonth } from '../notices/days-by-month.ts';
import { seasonMinutes } from '../notices/season-minutes.ts';

/** The proposed days, and what they change. */
export interface ProposedDays {
  /** Gives the months that want it the days that fit; the others keep theirs. */
  readonly edit: Edit;
  /** Days on which a planting of the zone is short, all plantings together: as the plan is, and with these days. */
  readonly shortDaysBefore: number;
  readonly shortDaysAfter: number;
  /** Of all zones over the season. */
  readonly litresMore: number;
  readonly minutesMore: number;
}

/** The months of the season in which something that a line waters uses water, in order. Empty for a zone that is not in the season. */
export function daysThatFit(season: Season, zoneId: string): readonly DaysAWeek[] {
  const zone = season.zones.find((each) => each.zone.id === zoneId);
  return zone === undefined ? [] : zoneDaysAWeek(season, zone);
}

const known = new WeakMap<Season, Map<string, ProposedDays | undefined>>();

/** Undefined where the plan's own days do. `season` is the plan's own. Works out the season with the days: once for each season and zone. */
export function proposedDays(plan: Plan, season: Season, zoneId: string): ProposedDays | undefined {
  const ofZones = known.get(season) ?? new Map<string, ProposedDays | undefined>();
  known.set(season, ofZones);
  if (!ofZones.has(zoneId)) ofZones.set(zoneId, proposal(plan, season, zoneId));
  return ofZones.get(zoneId);
}

function proposal(plan: Plan, season: Season, zoneId: string): ProposedDays | undefined {
  const [candidate] = daysByMonth({ plan, season }, zoneId);
  const tried = candidate === undefined ? undefined : tryEdit(plan, candidate.edit);
  if (candidate === undefined || tried?.ok !== true) return undefined;
  const after = computeSeason(tried.plan, season);
  return {
    edit: candidate.edit,
    shortDaysBefore: mixFigures(season, [zoneId]).shortDays,
    shortDaysAfter: mixFigures(after, [zoneId]).shortDays,
    litresMore: gardenFigures(after).litres - gardenFigures(season).litres,
    minutesMore: seasonMinutes(after) - seasonMinutes(season),
  };
}
