/** The part of a plan that an edit names; where it is not there, the edit is refused. */
import type { Plan, PlanPlanting, PlanZone } from '../schema/plan-schema.ts';
import { shortText } from '../words/short-text.ts';
import { replaced, replacedAt } from './change.ts';
import { EditRefused } from './edit-refused.ts';

export function zonePlace(plan: Plan, id: string): number {
  const place = plan.zones.findIndex((zone) => zone.id === id);
  return place >= 0 ? place : refuse('zones', `Zone with the id “${shortText(String(id))}”`, 'a zone of this plan');
}

export function zoneIn(plan: Plan, id: string): PlanZone {
  return plan.zones[zonePlace(plan, id)] as PlanZone;
}

export function plantingPlace(zone: PlanZone, id: string): number {
  const place = zone.plantings.findIndex((planting) => planting.id === id);
  if (place >= 0) return place;
  return refuse(
    'zones',
    `Planting with the id “${shortText(String(id))}”`,
    `a planting of zone “${shortText(zone.name)}”`,
  );
}

export function plantingIn(zone: PlanZone, id: string): PlanPlanting {
  return zone.plantings[plantingPlace(zone, id)] as PlanPlanting;
}

/** The plan with one zone made anew. */
export function withZone(plan: Plan, id: string, change: (zone: PlanZone) => PlanZone): Plan {
  const place = zonePlace(plan, id);
  const zones = replacedAt(plan.zones, place, change(plan.zones[place] as PlanZone));
  return zones === plan.zones ? plan : { ...plan, zones };
}

/** The plan with one planting made anew. */
export function withPlanting(
  plan: Plan,
  at: { readonly zone: string; readonly planting: string },
  change: (planting: PlanPlanting) => PlanPlanting,
): Plan {
  return withZone(plan, at.zone, (zone) => {
    const place = plantingPlace(zone, at.planting);
    return replaced(zone, {
      plantings: replacedAt(zone.plantings, place, change(zone.plantings[place] as PlanPlanting)),
    });
  });
}

export function refuse(path: string, where: string, expected: string): never {
  throw new EditRefused([{ path, where, value: 'nothing', expected }]);
}
