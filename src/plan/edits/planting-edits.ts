/** Edits of plantings. */
import type { Plan, PlanPlanting, PlanZone } from '../schema/plan-schema.ts';
import { changed, insertedAt, movedTo, removedAt } from './change.ts';
import { openRunDays, withOpenRunDays } from './day-run-edits.ts';
import type { PlantingEdit } from './edit.ts';
import { plantingIn, plantingIndex, withPlanting, withZone, zoneIn } from './find.ts';
import { editWeek } from './week-edits.ts';

export function editPlanting(plan: Plan, edit: PlantingEdit): Plan {
  switch (edit.type) {
    case 'add-planting':
      return withZone(plan, edit.zone, (zone) => ({
        ...zone,
        plantings: insertedAt(zone.plantings, edit.planting, edit.at),
      }));
    case 'change-planting': {
      const { id: _id, ...change }: Partial<PlanPlanting> = edit.change as Partial<PlanPlanting>;
      return withPlanting(plan, edit, (planting) => changed(planting, change));
    }
    case 'remove-planting':
      return withoutPlanting(plan, edit);
    case 'move-planting':
      return edit.zone === edit.toZone ? reordered(plan, edit) : moved(plan, edit);
  }
}

interface At {
  readonly zone: string;
  readonly planting: string;
}

type Move = Extract<PlantingEdit, { type: 'move-planting' }>;

/** Its hand-set and logged open days go with it; a rule that named it goes back to its default. */
function withoutPlanting(plan: Plan, { zone, planting }: At): Plan {
  const closed = openDaysOf(plan, { zone, planting }).reduce(
    (next, { week }) => editWeek(next, { type: 'set-open-days', zone, planting, week, days: undefined }),
    plan,
  );
  return withZone(withOpenRunDays(closed, { zone, planting }, NO_DAYS), zone, (before) =>
    changed(before, {
      plantings: removedAt(before.plantings, plantingIndex(before, planting)),
      ...(decides(before, planting) && { rule: undefined }),
    }),
  );
}

const NO_DAYS: ReadonlySet<string> = new Set();

function reordered(plan: Plan, { zone: id, planting, at }: Move): Plan {
  return withZone(plan, id, (zone) => {
    const plantings = movedTo(zone.plantings, plantingIndex(zone, planting), at ?? zone.plantings.length);
    return changed(zone, { plantings });
  });
}

function moved(plan: Plan, { zone, planting: id, toZone, at }: Move): Plan {
  const planting = plantingIn(zoneIn(plan, zone), id);
  const open = openDaysOf(plan, { zone, planting: id });
  const openRuns = openRunDays(plan, { zone, planting: id });
  const taken = withoutPlanting(plan, { zone, planting: id });
  const put = withZone(taken, toZone, (other) => ({ ...other, plantings: insertedAt(other.plantings, planting, at) }));
  return open.reduce(
    (next, { week, days }) => editWeek(next, { type: 'set-open-days', zone: toZone, planting: id, week, days }),
    withOpenRunDays(put, { zone: toZone, planting: id }, openRuns),
  );
}

function openDaysOf(plan: Plan, { zone, planting }: At): readonly { readonly week: string; readonly days: number }[] {
  const weeks = plan.choices?.[zoneIn(plan, zone).id] ?? {};
  return Object.entries(weeks).flatMap(([week, { openDays }]) => {
    const days = openDays?.[planting];
    return days === undefined ? [] : [{ week, days }];
  });
}

function decides({ rule }: PlanZone, planting: string): boolean {
  return rule?.kind === 'planting' && rule.planting === planting;
}
