/** Net depth over gross depth of a zone, and what it rests on. */
import { applicationEfficiency, defaultEfficiency } from '../../engine/application/efficiency.ts';
import type { GardenZone } from '../../engine/garden.ts';
import type { PlanZone } from '../schema/plan-schema.ts';

type Efficiency = Pick<GardenZone, 'efficiency' | 'efficiencyBasis'>;

export function efficiencyOf({ application, plantings }: Pick<PlanZone, 'application' | 'plantings'>): Efficiency {
  switch (application?.kind) {
    case 'efficiency':
      return { efficiency: application.value, efficiencyBasis: 'efficiency' };
    case 'distribution-uniformity':
      return {
        efficiency: applicationEfficiency({ distributionUniformity: application.value }),
        efficiencyBasis: 'distribution-uniformity',
      };
    case 'computed':
      return { efficiency: usualEfficiency(plantings), efficiencyBasis: 'computed-uniformity' };
    case undefined:
      return { efficiency: usualEfficiency(plantings), efficiencyBasis: 'default' };
  }
}

/** Drip, unless a spray runs in the zone: then the lower figure stands for the whole. */
function usualEfficiency(plantings: PlanZone['plantings']): number {
  const sprays = plantings.some(({ lines }) => lines.some(({ kind }) => kind === 'spray'));
  return defaultEfficiency(sprays ? 'overspray' : 'drip');
}
