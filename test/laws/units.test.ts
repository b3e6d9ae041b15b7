/**
 * One plan written in metric and in US units comes to the same litres. The factors stand here by themselves: the yard and
 * pound agreement of 1959, the gallon of 231 cubic inches, standard gravity (NIST SP 811, appendix B).
 */
import { describe, expect } from 'vitest';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { gardenOf } from '../../src/plan/garden-of.ts';
import { checkPlan } from '../../src/plan/reading/check-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { law } from './law.ts';
import { litresByWeek } from './weeks-of.ts';

const FOOT = 0.3048;
const INCH = 0.0254;
const GALLON = 231 * 2.54 ** 3 * 1e-3;
const PSI = (0.45359237 * 9.80665) / INCH ** 2 / 1000;

/** What a metric value of each field is divided by. Centimetres are the metric unit of spacings, depths of roots, canopies, trunks and pots. */
const US_UNITS: Readonly<Record<string, number>> = {
  rain: 25.4,
  rainDayThreshold: 25.4,
  eto: 25.4,
  wind: 0.44704,
  elevation: FOOT,
  area: FOOT ** 2,
  roofArea: FOOT ** 2,
  length: FOOT,
  diameter: 2.54,
  opening: 2.54,
  trunk: 2.54,
  spacing: 2.54,
  rootDepth: 2.54,
  windHeight: FOOT,
  insideDiameter: 25.4,
  flow: GALLON,
  leastPressure: PSI,
  pressure: PSI,
  waterHeight: FOOT,
  volume: GALLON,
  perWeek: GALLON,
  perSeason: GALLON,
  perArea: GALLON / FOOT ** 2,
  capacity: GALLON,
  start: GALLON,
};

const TEMPERATURES = new Set(['minTemperature', 'maxTemperature', 'dewPoint']);

describe('units', () => {
  law('a metric plan and the same plan in US units take the same litres', {
    on: arbitraryPlan({ units: 'metric', mostZones: 3, mostWeeks: 20 }).map(withoutYears),
    runs: 500,
    holds: (plan) => {
      const inUs = { ...(inUsUnits(plan) as Plan), units: 'us' as const };
      expect(checkPlan(inUs)).toMatchObject({ ok: true });
      const metricLitres = litresByWeek(runSeason(gardenOf(plan)));
      litresByWeek(runSeason(gardenOf(inUs))).forEach((litres, week) => {
        expect(Math.abs(litres - (metricLitres[week] ?? Number.NaN))).toBeLessThanOrEqual(1e-9 * litres);
      });
    },
  });
});

/** Days of recorded years are whole figures of either unit: no day of one is quite a day of the other. */
function withoutYears(plan: Plan): Plan {
  const { years: _, ...site } = plan.site;
  return { ...plan, site };
}

/** The value with every number of a known field in its US unit. */
function inUsUnits(value: unknown, field = ''): unknown {
  if (typeof value === 'number') return TEMPERATURES.has(field) ? value * 1.8 + 32 : value / (US_UNITS[field] ?? 1);
  if (Array.isArray(value)) return value.map((item) => inUsUnits(item, field));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, inUsUnits(part, key)]));
}
