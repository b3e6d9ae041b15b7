/** The part of a plan that an edit names; where it is not there, the edit is refused. */

import type { Fault } from '../reading/fault.ts';
import type { Plan, PlanPlanting, PlanZone } from '../schema/plan-schema.ts';
import { shortText } from '../words/short-text.ts';
import { replaced, replacedAt } from './change.ts';
import { EditRefused } from './edit-refused.ts';

export function zoneIndex(plan: Plan, id: string): number {
  const index = plan.zones.findIndex((zone) => zone.id === id);
  if (index >= 0) return index;
  const place = { part: 'zone', zone: { id: shortText(String(id)) }, fields: [] } as const;
  return refuse({ path: 'zones', code: 'zone-unknown', values: { place, found: undefined } });
}

export function zoneIn(plan: Plan, id: string): PlanZone {
  return plan.zones[zoneIndex(plan, id)] as PlanZone;
}

export function plantingIndex(zone: PlanZone, id: string): number {
  const index = zone.plantings.findIndex((planting) => planting.id === id);
  if (index >= 0) return index;
  const place = {
    part: 'planting',
    zone: { name: shortText(zone.name) },
    planting: { id: shortText(String(id)) },
    fields: [],
  } as const;
  return refuse({ path: 'zones', code: 'planting-unknown', values: { place, found: undefined } });
}

export function plantingIn(zone: PlanZone, id: string): PlanPlanting {
  return zone.plantings[plantingIndex(zone, id)] as PlanPlanting;
}

/** The plan with one zone made anew. */
export function withZone(plan: Plan, id: string, change: (zone: PlanZone) => PlanZone): Plan {
  const index = zoneIndex(plan, id);
  const zones = replacedAt(plan.zones, index, change(plan.zones[index] as PlanZone));
  return zones === plan.zones ? plan : { ...plan, zones };
}

/** The plan with one planting made anew. */
export function withPlanting(
  plan: Plan,
  at: { readonly zone: string; readonly planting: string },
  change: (planting: PlanPlanting) => PlanPlanting,
): Plan {
  return withZone(plan, at.zone, (zone) => {
    const index = plantingIndex(zone, at.planting);
    return replaced(zone, {
      plantings: replacedAt(zone.plantings, index, change(zone.plantings[index] as PlanPlanting)),
    });
  });
}

export function refuse(fault: Fault): never {
  throw new EditRefused([fault]);
}
