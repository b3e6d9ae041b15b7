/** Invented gardens with many plantings a zone, of the same kinds as the bench's others. */
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { benchGarden, PLANTINGS_PER_ZONE } from '../gardens.ts';

export function wideGarden(zones: number, plantings: number): Plan {
  const plan = benchGarden(zones);
  if (plantings === PLANTINGS_PER_ZONE) return plan;
  const kinds = plan.zones.flatMap((zone) => zone.plantings);
  return {
    ...plan,
    zones: plan.zones.map((zone, place) => ({
      ...zone,
      plantings: Array.from({ length: plantings }, (_, at) => {
        const kind = kinds[(PLANTINGS_PER_ZONE * (place + at) + (at % PLANTINGS_PER_ZONE)) % kinds.length];
        if (kind === undefined) throw new Error('the garden has no plantings');
        return { ...kind, id: `${zone.id}-${at}`, name: `${kind.name} ${at + 1}` };
      }),
    })),
  };
}
