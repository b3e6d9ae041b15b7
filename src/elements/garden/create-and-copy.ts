/** Zones, plantings and lines to begin with, and copies of those that are there. */
import type { Edit } from '../../plan/edits/edit.ts';
import { newPlantingId, newZoneId } from '../../plan/ids.ts';
import type { Plan, PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { linesFor, usualWay } from '../../plan/usual-lines.ts';

export function createZone(plan: Plan, name: string): PlanZone {
  return { id: newZoneId(plan, name), name, wateringDays: 3, plantings: [] };
}

/** A bed with line in it, so that it has minutes at once: all of it is assumed until somebody says otherwise. */
export function createPlanting(plan: Plan, name: string): PlanPlanting {
  const { units } = plan;
  const extent = { kind: 'bed', ...(units === 'us' ? { length: 4, width: 12 } : { length: 1.2, width: 4 }) } as const;
  return {
    ...{ id: newPlantingId(plan, name), name, extent },
    need: { kind: 'class', class: 'moderate' },
    lines: linesFor(usualWay(extent, false), extent, units),
    assumed: ['need', 'extent', 'lines'],
  };
}

/** A line beside those that lie there: of the goods that the last of them is made of, on its days. */
export function createNextLine({ units }: Plan, { lines, extent, container }: PlanPlanting): PlanLine {
  const [usual] = linesFor(usualWay(extent, container !== undefined), extent, units);
  return { ...(lines.at(-1) ?? usual ?? { kind: 'solid' }) };
}

/** The edit that adds such a line; it is assumed until somebody says how it lies. */
export function addNextLine(plan: Plan, zone: string, planting: PlanPlanting): Edit {
  const line = createNextLine(plan, planting);
  const others = planting.assumed?.filter((part) => part !== 'lines') ?? [];
  const change = { lines: [...planting.lines, line], assumed: [...others, 'lines' as const] };
  return { type: 'change-planting', zone, planting: planting.id, change };
}

/** The same zone under a new name and new ids; what was decided for its weeks stays with the first. */
export function copyZone(plan: Plan, zone: PlanZone): PlanZone {
  const name = `${zone.name} 2`;
  const taken: Plan = { ...plan, zones: [...plan.zones] };
  const plantings: PlanPlanting[] = [];
  for (const planting of zone.plantings) {
    const sofar: Plan = { ...taken, zones: [...taken.zones, { ...zone, id: newZoneId(taken, name), plantings }] };
    plantings.push({ ...planting, id: newPlantingId(sofar, planting.name) });
  }
  const named = zone.rule?.kind === 'planting' ? zone.rule.planting : undefined;
  const index = zone.plantings.findIndex(({ id }) => id === named);
  const ruled = plantings[index];
  return {
    ...zone,
    id: newZoneId(plan, name),
    name,
    plantings,
    ...(ruled === undefined ? {} : { rule: { kind: 'planting', planting: ruled.id } as const }),
  };
}

export function copyPlanting(plan: Plan, planting: PlanPlanting): PlanPlanting {
  const name = `${planting.name} 2`;
  return { ...planting, id: newPlantingId(plan, name), name };
}
