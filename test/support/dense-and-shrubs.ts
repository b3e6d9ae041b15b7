import type { Plan, PlanPlanting } from '../../src/plan/schema/plan-schema.ts';

/** Inches of reference ET on every day of the year, and none of rain. */
const ETO_PER_DAY = 0.2;
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** 100 ft² of dense planting, filled up, 0.1 in a day, under 4 rows of 25 ft with an emitter every 6 in. */
export const denseBed: PlanPlanting = {
  id: 'dense',
  name: 'Dense bed',
  need: { kind: 'class', class: 'moderate', factor: 0.5 },
  extent: { kind: 'area', area: 100 },
  rootDepth: 36,
  watering: 'keep',
  target: 0,
  lines: [{ kind: 'dripline', flow: 0.6, spacing: 6, layout: { kind: 'rows', rows: 4, length: 25 } }],
};

/** Nine shrubs 36 in across, filled up, 0.02 in a day, each with one loop that has an emitter every 18 in. */
export const shrubLoops: PlanPlanting = {
  id: 'shrubs',
  name: 'Shrubs',
  need: { kind: 'class', class: 'very-low', factor: 0.1 },
  extent: { kind: 'canopy', count: 9, diameter: 36 },
  rootDepth: 36,
  watering: 'keep',
  target: 0,
  lines: [{ kind: 'dripline', flow: 0.6, spacing: 18, layout: { kind: 'loops', perPlant: 1 } }],
};

/**
 * Both on one timer, five weeks from Monday 7 June 2027, watered on the third, fifth and seventh day of the week. The
 * second week is set to 60 minutes by hand, the third to 15, the fourth is closed. Invented.
 */
export function denseAndShrubs(change: Partial<Plan> = {}): Plan {
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'us',
    name: 'Dense bed and shrubs',
    season: { firstDay: '2027-06-07', weeks: 5 },
    site: {
      latitude: 40,
      soil: 'loam',
      climate: { source: 'invented', eto: DAYS.map((days) => days * ETO_PER_DAY), rain: DAYS.map(() => 0) },
    },
    zones: [
      {
        id: 'border',
        name: 'Border',
        wateringDays: 3,
        application: { kind: 'efficiency', value: 0.8 },
        longestCycleMinutes: 1440,
        plantings: [denseBed, shrubLoops],
      },
    ],
    choices: {
      border: { '2027-06-14': { minutes: 60 }, '2027-06-21': { minutes: 15 }, '2027-06-28': { closed: true } },
    },
    ...change,
  };
}
