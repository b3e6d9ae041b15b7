/** Edits of zones. */
import type { Plan, PlanZone } from '../schema/plan-schema.ts';
import { changed, insertedAt, movedTo, removedAt, replaced, withoutKey } from './change.ts';
import type { ZoneEdit } from './edit.ts';
import { withZone, zoneIndex } from './find.ts';
import { withLog } from './with-log.ts';

export function editZone(plan: Plan, edit: ZoneEdit): Plan {
  switch (edit.type) {
    case 'add-zone':
      return { ...plan, zones: insertedAt(plan.zones, edit.zone, edit.at) };
    case 'change-zone': {
      const { id: _id, plantings: _plantings, ...change }: Partial<PlanZone> = edit.change as Partial<PlanZone>;
      return withZone(plan, edit.zone, (zone) => changed(zone, change));
    }
    case 'remove-zone':
      return withoutZone(plan, edit.zone);
    case 'move-zone': {
      const zones = movedTo(plan.zones, zoneIndex(plan, edit.zone), edit.to);
      return zones === plan.zones ? plan : { ...plan, zones };
    }
  }
}

function withoutZone(plan: Plan, id: string): Plan {
  const zones = removedAt(plan.zones, zoneIndex(plan, id));
  const choices = withoutKey(plan.choices, id);
  return withLog(replaced({ ...plan, zones }, { choices }), { runs: withoutKey(plan.log?.runs, id) });
}
