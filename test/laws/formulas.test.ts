/** Formulas that a program may call by themselves say what the season says. */
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { applicationRateMmPerHour } from '../../src/engine/application/application-rate.ts';
import { lowestQuarterUniformity } from '../../src/engine/application/distribution-uniformity.ts';
import { applicationEfficiency, schedulingMultiplier } from '../../src/engine/application/efficiency.ts';
import { grossIrrigation, netMmPerMinute, runMinutes } from '../../src/engine/application/run-time.ts';
import { addDays, dayNumber, dayOfYear, isIsoDate, isLeapYear, isoDate, yearOf } from '../../src/engine/calendar.ts';
import type { Garden, GardenPlanting } from '../../src/engine/garden.ts';
import { landscapeCoefficient } from '../../src/engine/plants/landscape-coefficient.ts';
import { landscapeFactorRange } from '../../src/engine/plants/landscape-factor-range.ts';
import { WATER_USE_CLASSES } from '../../src/engine/plants/water-use-classes.data.ts';
import { monthlyEffectiveRainMm, RAIN_METHODS } from '../../src/engine/rain/effective-rain.ts';
import { gammaCumulative, gammaQuantile } from '../../src/engine/rain/gamma-distribution.ts';
import { recordNormals } from '../../src/engine/record/record-normals.ts';
import { plantingWeek } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import type { PlantingSeason, ZoneSeason } from '../../src/engine/season/season.ts';
import { minutesOnDay } from '../../src/engine/season/zone-week.ts';
import { restOn } from '../oracle/crop.ts';
import { adjustedKcEnd, adjustedKcMid } from '../published/formulas/climate-adjustment.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { between, some } from '../support/garden-numbers.ts';
import { law } from './law.ts';

/** Of reference ET: nothing while it has no leaves or the ground is frozen. */
function landscapeShareOn(planting: GardenPlanting, date: number): number {
  const { coefficient, establishing } = planting;
  if (coefficient.kind === 'crop' || restOn(planting, date) === 'asleep') return 0;
  const isYoung = establishing !== undefined && date <= establishing.until;
  return landscapeCoefficient(coefficient) * (coefficient.mulchFactor ?? 1) * (isYoung ? establishing.factor : 1);
}

describe('formulas by themselves', () => {
  law('turn net depths into gross ones, and these at a line’s rate into the minutes of the week', {
    on: arbitraryGarden({ mostWeeks: 6 }),
    runs: 150,
    holds: (garden) => {
      for (const zone of runSeason(garden).zones) {
        for (const own of zone.plantings) {
          for (let week = 0; week < zone.weeks; week += 1) expectNetAndGross(garden, zone, own, week);
        }
      }
    },
  });

  law('make a landscape’s demand of reference ET, day by day', {
    on: arbitraryGarden({ mostWeeks: 6 }),
    runs: 150,
    holds: (garden) => {
      const { zones, weather } = runSeason(garden);
      for (const { planting, demand } of zones.flatMap(({ plantings }) => plantings)) {
        if (planting.coefficient.kind === 'crop') continue;
        for (let day = demand.first; day < demand.end; day += 1) {
          const share = landscapeShareOn(planting, garden.span.firstDay + day);
          expectNear(demand.etcMm[day] as number, share * (weather.eto.mm[day] as number));
        }
      }
    },
  });

  law('leave crops as the table has them in its own climate, and let wind and dry air tell on all but drying ones', {
    on: fc.record({
      kc: between(0.2, 1.3),
      windMs: between(2, 9),
      rhMinPercent: between(5, 45),
      heightM: between(0, 12),
    }),
    runs: 150,
    holds: ({ kc, ...climate }) => {
      const table = { windMs: 2, rhMinPercent: 45, heightM: climate.heightM };
      expectNear(adjustedKcMid(kc, table), kc);
      expectNear(adjustedKcEnd(kc, table), kc);
      expect(adjustedKcMid(kc, climate)).toBeGreaterThanOrEqual(kc);
      expectNear(adjustedKcEnd(kc, climate), kc < 0.45 ? kc : adjustedKcMid(kc, climate));
    },
  });

  law('keep each class of water use within the published factors', {
    on: fc.constantFrom(...WATER_USE_CLASSES),
    runs: 20,
    holds: ({ speciesFactorMin: min, speciesFactorMax: max }) => {
      const all = landscapeFactorRange('species');
      expect([min >= all.min, min < max, max <= all.max]).toEqual([true, true, true]);
    },
  });

  law('reckon a uniformity alike by catches and by the multiplier of its efficiency', {
    on: fc.array(between(0.1, 9), { minLength: 4, maxLength: 40 }),
    runs: 150,
    holds: (catches) => {
      const uniformity = lowestQuarterUniformity(catches);
      const mean = catches.reduce((sum, caught) => sum + caught, 0) / catches.length;
      expect(uniformity).toBeGreaterThanOrEqual((Math.min(...catches) / mean) * (1 - 1e-12));
      expect(uniformity).toBeLessThanOrEqual(1);
      expectNear(lowestQuarterUniformity([...catches, ...catches, ...catches, ...catches]), uniformity);
      const efficiency = applicationEfficiency({ distributionUniformity: uniformity });
      expectNear(efficiency * schedulingMultiplier(uniformity), 1);
      expect(efficiency).toBeGreaterThanOrEqual(uniformity);
    },
  });

  law('lay down by rows what they lay down by flow and ground', {
    on: fc.record({ emitterFlowLph: between(0.5, 9), emitterSpacingM: between(0.1, 1), rowSpacingM: between(0.1, 1) }),
    runs: 150,
    holds: (layout) => {
      const flowLph = 12 * 30 * layout.emitterFlowLph;
      const areaM2 = 12 * layout.rowSpacingM * 30 * layout.emitterSpacingM;
      const { emitterFlowLph, emitterSpacingM, rowSpacingM } = layout;
      expectNear(applicationRateMmPerHour(flowLph, areaM2), emitterFlowLph / (emitterSpacingM * rowSpacingM));
    },
  });

  law('make normals of daily readings: each month’s mean, and of its rain for all its days', {
    on: fc.record({
      first: fc.integer({ min: -20_000, max: 40_000 }),
      readings: fc.array(arbitraryReading(), { minLength: 400, maxLength: 800 }),
    }),
    runs: 60,
    holds: ({ first, readings }) => {
      const column = (reading: Reading) => Float64Array.from(readings, (day) => day[reading] ?? Number.NaN);
      const columns = { rainMm: column('rainMm'), minTemperatureC: column('minTemperatureC') };
      const normals = recordNormals(
        { firstDay: first, dayCount: readings.length, columns },
        { etoMm: column('rainMm'), rainDayThresholdMm: 5 },
      );
      for (const [month, days] of MONTH_DAYS.entries()) {
        const ofMonth = readings.filter((_, index) => Number(isoDate(first + index).slice(5, 7)) === month + 1);
        const rain = ofMonth.map((day) => day.rainMm);
        const wet = rain.map((mm) => (Number.isNaN(mm) ? undefined : Number(mm >= 5)));
        expectNear(normals.rainMm?.[month], days * meanOf(rain));
        expectNear(normals.etoMm?.[month], days * meanOf(rain));
        expectNear(normals.rainDays?.[month], days * meanOf(wet));
        expectNear(normals.minTemperatureC?.[month], meanOf(ofMonth.map((day) => day.minTemperatureC)));
      }
    },
  });

  law('count days as the calendar does', {
    on: fc.integer({ min: -670_000, max: 2_900_000 }),
    runs: 300,
    holds: (day) => {
      const asDate = new Date(day * 86_400_000);
      expect(isoDate(day)).toBe(asDate.toISOString().slice(0, 10));
      expect(dayNumber(isoDate(day))).toBe(day);
      expect(addDays(isoDate(day), 1)).toBe(isoDate(day + 1));
      const next = Date.UTC(asDate.getUTCFullYear() + 1, 0, 1) / 86_400_000;
      const length = isLeapYear(yearOf(day)) ? 366 : 365;
      expect(length - dayOfYear(day)).toBe(next - day - 1);
      expect(isIsoDate(isoDate(day).replace(/..$/, '32'))).toBe(false);
      expect(isIsoDate(isoDate(day).replace(/-..-/, '-13-'))).toBe(false);
    },
  });
});

describe('formulas of rain', () => {
  law('a share of a gamma distribution and the depth that it lies below undo each other', {
    on: fc.tuple(between(0.05, 50), between(-0.2, 1.2)),
    runs: 500,
    holds: ([shape, probability]) => {
      const depth = gammaQuantile(probability, shape, 1);
      expectNear(gammaCumulative(depth, shape), Math.min(1, Math.max(0, probability)));
    },
  });

  law('no method counts more rain than fell, nor less than none', {
    on: fc.record({
      rainMm: between(0, 400),
      etcMm: between(0, 300),
      usableStorageMm: between(1, 250),
      fraction: between(0, 1),
    }),
    runs: 300,
    holds: (month) => {
      for (const method of RAIN_METHODS) {
        const counted = monthlyEffectiveRainMm(method, month);
        expect(counted).toBeGreaterThanOrEqual(0);
        expect(counted).toBeLessThanOrEqual(month.rainMm + 1e-9);
      }
    },
  });
});

/** Rate of a line that lies alone and all season under a planting that stands there all season. */
function steadyRate({ span }: Garden, { lines, from, to, areaM2 }: GardenPlanting): number | undefined {
  const [line] = lines;
  const isSteady = from <= span.firstDay && to >= span.firstDay + 7 * span.weeks - 1;
  if (!isSteady || line === undefined || lines.length > 1 || line.from > span.firstDay || line.to !== undefined)
    return undefined;
  return line.flowLph > 0 ? applicationRateMmPerHour(line.flowLph, areaM2) : undefined;
}

function expectNetAndGross(garden: Garden, zone: ZoneSeason, own: PlantingSeason, week: number): void {
  const share = steadyEfficiency(own.planting, zone.zone.efficiency);
  if (share === undefined) return;
  const efficiency = applicationEfficiency({ efficiency: share });
  const { irrigationNetMm, irrigationGrossMm, openMask } = plantingWeek(own, week);
  expectNear(grossIrrigation(irrigationNetMm, efficiency), irrigationGrossMm);
  const rateMmPerHour = steadyRate(garden, own.planting);
  if (rateMmPerHour === undefined) return;
  const minutes = [0, 1, 2, 3, 4, 5, 6].reduce((sum, offset) => {
    return sum + ((openMask >> offset) & 1) * minutesOnDay(zone, 7 * week + offset);
  }, 0);
  expectNear(runMinutes(irrigationNetMm, netMmPerMinute(rateMmPerHour, efficiency)), minutes);
}

/** Undefined where lines bring each another share of their water. */
function steadyEfficiency({ flows }: GardenPlanting, usual: number): number | undefined {
  const [first = usual, ...others] = flows.map(({ efficiency }) => efficiency);
  return others.every((other) => other === first) ? first : undefined;
}

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

type Reading = 'rainMm' | 'minTemperatureC';

function arbitraryReading(): fc.Arbitrary<{ readonly rainMm: number; readonly minTemperatureC?: number | undefined }> {
  return fc.record({
    rainMm: fc.oneof(fc.constant(Number.NaN), fc.constant(0), between(0, 40), between(0, 10)),
    minTemperatureC: some(between(-20, 20)),
  });
}

function meanOf(readings: readonly (number | undefined)[]): number {
  const known = readings.filter((reading) => reading !== undefined && Number.isFinite(reading)) as number[];
  return known.reduce((sum, reading) => sum + reading, 0) / known.length;
}

function expectNear(one: number | undefined, other: number): void {
  if (one === undefined) expect.fail(`nothing instead of ${other}`);
  if (!(Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other)))) expect.fail(`${one} is not ${other}`);
}
