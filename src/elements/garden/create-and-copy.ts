/** Zones, plantings and lines to begin with, and copies of those that are there. */
import { dayNumber, isoDate } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { newPlantingId, newZoneId } from '../../plan/ids.ts';
import type { Plan, PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { groundDays } from '../../plan/to-garden/ground-days.ts';

export function createZone(plan: Plan, name: string): PlanZone {
  return { id: newZoneId(plan, name), name, wateringDays: 3, plantings: [] };
}

/** A bed with line in it, so that it has minutes at once: a start to be put right, in round figures of either system. */
export function createPlanting(plan: Plan, name: string): PlanPlanting {
  const { units } = plan;
  return {
    id: newPlantingId(plan, name),
    name,
    need: { kind: 'class', class: 'moderate' },
    extent: { kind: 'area', area: units === 'us' ? 100 : 10 },
    lines: [createLine('dripline', units)],
  };
}

type LineKind = PlanLine['kind'];

/** Usual goods: 0.6 gph (2.3 L/h) emitters at 12 in (30 cm), two rows. Common practice, no source. */
export function createLine(kind: LineKind, units: UnitSystem): PlanLine {
  const us = units === 'us';
  switch (kind) {
    case 'dripline':
      return {
        kind,
        flow: us ? 0.6 : 2.3,
        spacing: us ? 12 : 30,
        layout: { kind: 'rows', rows: 2, length: us ? 20 : 6 },
      };
    case 'point':
      return { kind, flow: us ? 1 : 4, count: 1 };
    case 'spray':
      return { kind, flow: us ? 10 : 40, count: 1 };
    case 'solid':
      return { kind };
  }
}

/** A line that takes over from those that lie there, a week after the last of them: each needs a day of its own. */
export function createNextLine({ units, season }: Plan, planting: PlanPlanting): PlanLine {
  const line = createLine('dripline', units);
  const { lines } = planting;
  if (lines.length === 0) return line;
  const first = dayNumber(season.firstDay);
  const { from: planted } = groundDays(planting, { first, last: first });
  const laid = lines.map(({ from }) => (from === undefined ? first : dayNumber(from)));
  return { ...line, from: isoDate(Math.max(first, planted, ...laid) + 7) };
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
