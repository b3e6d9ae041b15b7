import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { denseAndShrubs, denseBed, shrubLoops } from '../../support/dense-and-shrubs.ts';

/** Twelve unlike plantings on one valve over 30 weeks. Invented. */
export function twelvePlantings(): Plan {
  const plan = denseAndShrubs({ season: { firstDay: '2027-04-05', weeks: 30 }, choices: {} });
  const plantings = Array.from({ length: 12 }, (_, index) => {
    const kind = index % 3 === 0 ? denseBed : shrubLoops;
    const factor = 0.1 + 0.05 * index;
    return {
      ...kind,
      id: `p${index}`,
      name: `Planting ${index}`,
      need: { kind: 'class', class: 'low', factor } as const,
    };
  });
  return { ...plan, zones: plan.zones.map((zone) => ({ ...zone, plantings })) };
}
