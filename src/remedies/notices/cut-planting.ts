/** Half of a planting moved into a zone of its own. */
import type { Edit } from '../../plan/edits/edit.ts';
import { newPlantingId } from '../../plan/ids.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { cutOff } from '../mix/kinds/cut.ts';
import { halvedPlanting } from './halved-planting.ts';
import type { RemedyCandidate } from './remedy.ts';

const LONGEST_STEM = 60;

/** Undefined where it cannot be halved. The new zone is like the old one, as a zone that is cut off is. */
export function cutPlanting(plan: Plan, zone: PlanZone, planting: PlanPlanting): RemedyCandidate | undefined {
  const halves = halvedPlanting(planting);
  const emptyZone = cutOff(plan, zone, []);
  const [added] = emptyZone.edits;
  if (halves === undefined || added?.type !== 'add-zone') return undefined;
  const name = `${planting.name.slice(0, LONGEST_STEM)} 2`;
  const second: PlanPlanting = { ...planting, ...halves.second, id: newPlantingId(plan, name), name };
  const edits: readonly Edit[] = [
    { type: 'change-planting', zone: zone.id, planting: planting.id, change: halves.first },
    ...emptyZone.edits,
    { type: 'add-planting', zone: added.zone.id, planting: second },
  ];
  return {
    kind: 'cut-in-two',
    plantingId: planting.id,
    newZoneId: added.zone.id,
    edit: { type: 'together', action: 'cut-planting', edits },
  };
}
