import type { Garden, GardenPlanting } from '../../engine/garden.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';

/** The planting of the plan as the engine has taken it; undefined while the season is of another plan. */
export function plantingInGarden({ zones }: Garden, { id }: PlanPlanting): GardenPlanting | undefined {
  return zones.flatMap(({ plantings }) => plantings).find((planting) => planting.id === id);
}

/** L/h on the day on which its lines give most. */
export const mostFlowLph = ({ flows }: GardenPlanting): number => Math.max(0, ...flows.map(({ flowLph }) => flowLph));
