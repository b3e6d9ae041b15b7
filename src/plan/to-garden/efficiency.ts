/** Net depth over gross depth of a zone, and what it rests on. */
import { applicationEfficiency, defaultEfficiency } from '../../engine/application/efficiency.ts';
import type { GardenZone } from '../../engine/garden.ts';
import { LINE_KINDS } from '../../engine/line/line-kinds.ts';
import type { PlanZone } from '../schema/plan-schema.ts';

/** The least that can be typed: it stands in where a quarter of the emitters stays dry, whose uniformity is 0. */
const LEAST_UNIFORMITY = 0.05;

type Efficiency = Pick<GardenZone, 'efficiency' | 'efficiencyBasis'>;

/**
 * `computedUniformity` is asked only where the zone rests on it. Where its lines have none to tell (no line, no pressure)
 * the usual efficiency stands in, and says so.
 */
export function efficiencyOf(
  { application, plantings }: Pick<PlanZone, 'application' | 'plantings'>,
  computedUniformity: () => number | undefined,
): Efficiency {
  switch (application?.kind) {
    case 'efficiency':
      return { efficiency: application.value, efficiencyBasis: 'efficiency' };
    case 'distribution-uniformity':
      return {
        efficiency: applicationEfficiency({ distributionUniformity: application.value }),
        efficiencyBasis: 'distribution-uniformity',
      };
    case 'computed': {
      const distributionUniformity = computedUniformity();
      if (distributionUniformity === undefined) break;
      return {
        efficiency: applicationEfficiency({
          distributionUniformity: Math.max(LEAST_UNIFORMITY, distributionUniformity),
        }),
        efficiencyBasis: 'computed-uniformity',
      };
    }
    case undefined:
      break;
  }
  return { efficiency: usualEfficiency(plantings), efficiencyBasis: 'default' };
}

/** Drip, unless a spray runs in the zone: then the lower figure stands for the whole. */
function usualEfficiency(plantings: PlanZone['plantings']): number {
  const sprays = plantings.some(({ lines }) => lines.some(({ kind }) => LINE_KINDS[kind].method === 'overspray'));
  return defaultEfficiency(sprays ? 'overspray' : 'drip');
}
