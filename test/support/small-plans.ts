/**
 * Small plans that a reader can hold in the head. The gardens are invented; the climates are published.
 * Each call makes a new plan, so that no test can spoil another's.
 */
import type { Plan, PlanClimate, PlanPlanting, PlanSite, PlanZone } from '../../src/plan/schema/plan-schema.ts';

/**
 * San Francisco, inches and °F. ETo: California Code of Regulations, Title 23, Appendix A. Rain and temperatures: normals 1961-1990,
 * Western Regional Climate Center.
 */
export const SAN_FRANCISCO: PlanClimate = {
  source: 'ETo: California Code of Regulations, Title 23, Appendix A; rain: normals 1961-1990, WRCC',
  eto: [1.5, 1.3, 2.4, 3, 3.7, 4.6, 4.9, 4.8, 4.1, 2.8, 1.3, 0.7],
  rain: [4.06, 2.95, 3.07, 1.29, 0.25, 0.15, 0.04, 0.07, 0.26, 1.26, 3.21, 3.1],
};

/** Monthly means of the daily Seattle weather 2012 to 2015 (NOAA, npm package vega-datasets), °C and mm. */
export const SEATTLE: PlanClimate = {
  source: 'Seattle 2012 to 2015, NOAA',
  minTemperature: [2.7, 4.05, 4.86, 6.36, 9.61, 12.24, 14.2, 14.77, 12.36, 9.35, 4.7, 3.32],
  maxTemperature: [8.23, 9.86, 12.39, 15.02, 19.3, 22.4, 26, 26.11, 21.92, 16.39, 11.02, 8.19],
  rain: [116.5, 105.5, 151.6, 93.9, 51.9, 33.2, 12.1, 40.9, 58.9, 125.9, 160.6, 155.7],
};

const sanFrancisco: PlanSite = { latitude: 37.77, soil: 'loam', climate: SAN_FRANCISCO };
const seattle: PlanSite = { latitude: 47.45, elevation: 122, soil: 'sandy-loam', climate: SEATTLE };

/** Tomatoes on 120 ft² in 4 rows of 0.9 gph dripline, emitters every 12 in. */
export function tomatoes(change: Partial<PlanPlanting> = {}): PlanPlanting {
  return {
    id: 'tomatoes',
    name: 'Tomatoes',
    need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-05-10' },
    extent: { kind: 'area', area: 120 },
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 4, length: 20 } }],
    ...change,
  };
}

/** Nine shrubs, 36 in across, each with one loop of 0.6 gph dripline, behind a shut-off. */
export function shrubs(change: Partial<PlanPlanting> = {}): PlanPlanting {
  return {
    id: 'shrubs',
    name: 'Shrubs',
    need: { kind: 'class', class: 'low' },
    extent: { kind: 'canopy', count: 9, diameter: 36 },
    shutOff: true,
    lines: [{ kind: 'dripline', flow: 0.6, spacing: 18, layout: { kind: 'loops', perPlant: 1 } }],
    ...change,
  };
}

export function zone(change: Partial<PlanZone> = {}): PlanZone {
  return { id: 'beds', name: 'Beds', wateringDays: 3, plantings: [tomatoes()], ...change };
}

/** One zone, one planting, 4 weeks, US units: the least that computes. */
export function oneBed(change: Partial<Plan> = {}): Plan {
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'us',
    name: 'One bed',
    season: { firstDay: '2027-06-07', weeks: 4 },
    site: sanFrancisco,
    zones: [zone()],
    ...change,
  };
}

/** A mixed zone (tomatoes, and shrubs behind a shut-off) and containers, 30 weeks from Monday 5 April 2027, US units. */
export function mixedGarden(change: Partial<Plan> = {}): Plan {
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'us',
    name: 'Mixed garden',
    notes: 'An invented garden.',
    season: { firstDay: '2027-04-05', weeks: 30 },
    site: sanFrancisco,
    supply: {
      sources: [
        { name: 'Hose bib', flow: { kind: 'bucket', volume: 5, seconds: 60 }, pressure: 45 },
        { from: '2027-06-01', name: 'Main', flow: { kind: 'typed', flow: 8 }, pressure: 50 },
      ],
      window: { weekdays: ['mon', 'wed', 'fri', 'sun'], hoursPerDay: 4 },
      allowance: { perWeek: 600 },
    },
    zones: [
      zone({ plantings: [tomatoes(), shrubs()] }),
      zone({
        id: 'containers',
        name: 'Containers',
        wateringDays: 7,
        plantings: [
          {
            id: 'pots',
            name: 'Pots by the door',
            need: { kind: 'type', type: 'annual-flowers' },
            extent: { kind: 'canopy', count: 6, diameter: 18 },
            lines: [{ kind: 'point', flow: 0.5, count: 2 }],
          },
        ],
      }),
    ],
    log: {
      days: { '2027-04-20': { rain: 0.4 }, '2027-04-21': { rain: 0.05, eto: 0.11 } },
      weeks: { '2027-05-03': { rain: 0.3 } },
      runs: { beds: { '2027-05-17': 90 } },
    },
    choices: {
      beds: { '2027-07-05': { minutes: 120 }, '2027-07-12': { openDays: { shrubs: 1 }, note: 'Heat is coming.' } },
      containers: { '2027-08-02': { closed: true } },
    },
    ...change,
  };
}

/** Vegetables and a hedge in metric units, ETo from temperatures; the beds are re-laid in June, the peas come and go. */
export function metricGarden(change: Partial<Plan> = {}): Plan {
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'metric',
    name: 'Metric garden',
    season: { firstDay: '2027-04-01', weeks: 20 },
    site: seattle,
    zones: [
      {
        id: 'vegetables',
        name: 'Vegetables',
        wateringDays: ['mon', 'thu', 'sat'],
        rule: { kind: 'area-weighted' },
        application: { kind: 'distribution-uniformity', value: 0.8 },
        plantings: [
          {
            id: 'lettuce',
            name: 'Lettuce',
            need: { kind: 'crop', crop: 'lettuce', plantedOn: '2027-04-10' },
            extent: { kind: 'area', area: 6 },
            lines: [
              { kind: 'dripline', flow: 2.3, spacing: 30, layout: { kind: 'length', length: 18 } },
              {
                kind: 'dripline',
                from: '2027-06-01',
                flow: 2.3,
                spacing: 15,
                layout: { kind: 'length', length: 18 },
              },
            ],
          },
          {
            id: 'peas',
            name: 'Peas',
            need: { kind: 'crop', crop: 'peas-fresh', plantedOn: '2027-04-05' },
            extent: { kind: 'area', area: 4 },
            inGround: { from: '2027-04-05', to: '2027-07-04' },
            lines: [{ kind: 'dripline', flow: 2.3, spacing: 30, layout: { kind: 'rows', rows: 2, length: 6 } }],
          },
        ],
      },
      {
        id: 'hedge',
        name: 'Hedge',
        wateringDays: 2,
        plantings: [
          {
            id: 'laurel',
            name: 'Laurel',
            need: { kind: 'class', class: 'moderate', density: 1.1 },
            extent: { kind: 'canopy', count: 12, diameter: 80 },
            establishing: { until: '2027-06-30', factor: 1.4 },
            lines: [{ kind: 'point', flow: 4, count: 2 }],
          },
        ],
      },
    ],
    ...change,
  };
}
