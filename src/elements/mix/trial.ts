/** A planting tried in another zone: an edit that nobody has made yet, and what would come of it. */
import type { Season } from '../../engine/season/season.ts';
import { computeSeason } from '../../plan/compute-season.ts';
import { tryEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { cutOff } from '../../remedies/mix/kinds/cut.ts';

export interface Trial {
  readonly edit: Edit;
  /** What the plan would be, and its season. */
  readonly plan: Plan;
  readonly season: Season;
  /** The plan it starts from: with another, the trial is over. */
  readonly from: Plan;
  /** Where the planting was and where it would be. */
  readonly zoneIds: readonly string[];
}

export interface PlantingMove {
  readonly zoneId: string;
  readonly plantingId: string;
  /** Left out: a new zone of its own. */
  readonly toZoneId: string | undefined;
}

/** Nothing where the plan would refuse it. */
export function tryMove(plan: Plan, season: Season, move: PlantingMove): Trial | undefined {
  const edit = moveEdit(plan, move);
  const result = edit === undefined ? undefined : tryEdit(plan, edit);
  if (edit === undefined || result?.ok !== true) return undefined;
  const added = result.plan.zones.find(({ id }) => plan.zones.every((zone) => zone.id !== id));
  return {
    edit,
    plan: result.plan,
    season: computeSeason(result.plan, season),
    from: plan,
    zoneIds: [move.zoneId, move.toZoneId ?? added?.id ?? ''],
  };
}

function moveEdit(plan: Plan, { zoneId, plantingId, toZoneId }: PlantingMove): Edit | undefined {
  if (toZoneId !== undefined) return { type: 'move-planting', zone: zoneId, planting: plantingId, toZone: toZoneId };
  const zone = plan.zones.find(({ id }) => id === zoneId);
  if (zone === undefined) return undefined;
  return { type: 'together', action: 'split-zone', edits: cutOff(plan, zone, [plantingId]).edits };
}
