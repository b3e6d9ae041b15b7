import type { Plan, PlanSite } from '../../src/plan/schema/plan-schema.ts';
import { oneBed, zone } from './small-plans.ts';

/**
 * Vacaville, California, without rain, April 5 to October 17, 2027: one bed of a plant factor of 0.8 whose roots reach 8.15 in, watered on 3 days a week. Half of
 * the available water is readily there, with no room left for rain.
 */
export function planOn(soil: NonNullable<PlanSite['soil']>, wateringDaysByMonth: Record<string, number> = {}): Plan {
  return oneBed({
    season: { firstDay: '2027-04-05', weeks: 28 },
    site: {
      latitude: 38.4,
      soil,
      climate: {
        source: 'ETo: Vacaville, code table 14.27.030.A; no rain',
        eto: [0.7, 1.4, 3.2, 5.2, 6.3, 7.6, 8.2, 7.2, 5.5, 4.3, 1.6, 1.1],
        rain: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
      },
    },
    zones: [
      zone({
        wateringDays: 3,
        wateringDaysByMonth,
        timerStepMinutes: 0.1,
        plantings: [
          {
            id: 'bed',
            name: 'Bed',
            need: { kind: 'class', class: 'high', factor: 0.8 },
            extent: { kind: 'area', area: 100 },
            rootDepth: 8.15,
            allowedDepletion: 0.5,
            target: 0,
            wettedShare: 1,
            lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 5, length: 20 } }],
          },
        ],
      }),
    ],
  });
}
