/**
 * A garden that can be worked by hand, of invented figures: 5 mm of reference ET every day and no rain; one planting of
 * 10 m2 that uses half of it; soil that holds 75 mm, half of it readily; a line of 6 mm/h, of which 80 % counts; water on
 * the fourth and the seventh day of the week. 17.5 mm a week go, 4.8 mm/h come: 110 minutes on each watering day.
 */
import type { Garden, GardenPlanting, GardenZone, RootZone } from '../../src/engine/garden.ts';
import { lineOf } from './garden-planting.ts';
import { plantingWithFlows, withFlows, zoneWithFlows } from './with-flows.ts';

/** Monday 3 May 2027. */
export const FIRST_DAY = 20_941;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Of the root zone, what is left out stays. */
export type PlantingChange = Partial<Omit<GardenPlanting, 'rootZone'>> & { readonly rootZone?: Partial<RootZone> };

export function plainPlanting({ rootZone, ...change }: PlantingChange = {}): GardenPlanting {
  const planting = {
    id: 'bed',
    name: 'Bed',
    coefficient: {
      kind: 'landscape',
      name: { en: 'moderate' },
      factor: 0.5,
      density: 1,
      microclimate: 1,
      source: 'invented',
    },
    areaM2: 10,
    rootZone: {
      depthM: 0.5,
      allowedDepletion: 0.5,
      adjustsDepletion: false,
      targetDepletion: 0,
      startDepletion: 0,
      ...rootZone,
    },
    watering: 'keep',
    from: FIRST_DAY - 100,
    to: FIRST_DAY + 1000,
    hasShutOff: false,
    lines: [lineOf(FIRST_DAY - 100, 'dripline', 60)],
    flows: [],
    ...change,
  } satisfies GardenPlanting;
  return plantingWithFlows(planting, 0.8);
}

/** The same with another share of reference ET. */
export function thirsty(factor: number, change: PlantingChange = {}): GardenPlanting {
  const { coefficient, ...planting } = plainPlanting(change);
  return { ...planting, coefficient: { ...coefficient, factor } as GardenPlanting['coefficient'] };
}

export function plainZone(change: Partial<GardenZone> = {}): GardenZone {
  const zone: GardenZone = {
    id: 'zone',
    name: 'Zone',
    soil: { texture: 'loam', availableWater: 0.15, intakeMmPerHour: 10, slopePercent: 0 },
    wateringDays: 0b1001000,
    rule: { kind: 'thirstiest' },
    timerStepMinutes: 1,
    longestCycleMinutes: Number.POSITIVE_INFINITY,
    startsADay: 4,
    efficiency: 0.8,
    efficiencyBasis: 'efficiency',
    plantings: [plainPlanting()],
    choices: new Map(),
    ...change,
  };
  return zoneWithFlows(zone);
}

/** Ten weeks. */
export function plainGarden(zones: readonly GardenZone[] = [plainZone()], change: Partial<Garden> = {}): Garden {
  const garden: Garden = {
    span: { firstDay: FIRST_DAY, weeks: 10 },
    site: {
      latitudeDeg: 40,
      elevationM: 100,
      climate: {
        source: 'invented',
        etoMm: MONTH_DAYS.map((days) => 5 * days),
        rainMm: MONTH_DAYS.map(() => 0),
      },
      rain: { method: 'tr21', fraction: 0.25, runoffFraction: 0 },
    },
    observed: { days: new Map(), weeks: new Map() },
    supply: { sources: [], windowWeekdays: 127, windowHoursPerDay: 24 },
    zones,
    ...change,
  };
  return withFlows(garden);
}
