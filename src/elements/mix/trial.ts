/** Changes that nobody has made yet, and what would come of them together. */
import type { Season } from '../../engine/season/season.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { cutOff } from '../../remedies/mix/kinds/cut.ts';
import { mixFigures } from '../../remedies/mix/mix-figures.ts';
import { type Tried, tryTogether } from '../../remedies/mix/what-if.ts';

export interface Trial extends Tried {
  /** In the order in which they were tried. */
  readonly edits: readonly Edit[];
  /** The plan it starts from: with another, the trial is over. */
  readonly from: Plan;
}

export interface PlantingMove {
  readonly zoneId: string;
  readonly plantingId: string;
  /** Left out: a new zone of its own. */
  readonly toZoneId: string | undefined;
}

/** Nothing where there is nothing to try, or the plan would refuse it. */
export function tryEdits(plan: Plan, season: Season, edits: readonly Edit[]): Trial | undefined {
  const tried = edits.length === 0 ? undefined : tryTogether(plan, season, edits);
  return tried && { ...tried, edits, from: plan };
}

/** One step of history for all that is tried. */
export function editOf({ edits }: Trial): Edit {
  const [only] = edits;
  return only !== undefined && edits.length === 1 ? only : { type: 'together', edits };
}

export function moveEdit(plan: Plan, { zoneId, plantingId, toZoneId }: PlantingMove): Edit | undefined {
  if (toZoneId !== undefined) return { type: 'move-planting', zone: zoneId, planting: plantingId, toZone: toZoneId };
  const zone = plan.zones.find(({ id }) => id === zoneId);
  if (zone === undefined) return undefined;
  return { type: 'together', action: 'split-zone', edits: cutOff(plan, zone, [plantingId]).edits };
}

/** Zones whose water or short days are others than in the plan, and zones that it does not have. */
export function zonesTouched({ season }: Trial, before: Season): readonly string[] {
  return season.zones.map(({ zone }) => zone.id).filter((id) => isTouched(id, before, season));
}

function isTouched(id: string, before: Season, after: Season): boolean {
  const [was, is] = [before, after].map(({ zones }) => zones.find(({ zone }) => zone.id === id));
  if (was === undefined || was === is) return was !== is;
  const [old, now] = [mixFigures(before, [id]), mixFigures(after, [id])];
  return old.litres !== now.litres || old.shortDays !== now.shortDays;
}
