/** What no formula can reckon with: a number that is none, below what it must be, or beyond what it can be. */
import fc from 'fast-check';
import { describe, expect } from 'vitest';
import { applicationRateMmPerHour } from '../../src/engine/application/application-rate.ts';
import { lowestQuarterUniformity } from '../../src/engine/application/distribution-uniformity.ts';
import type { WateringMethod } from '../../src/engine/application/efficiencies.data.ts';
import { applicationEfficiency, defaultEfficiency } from '../../src/engine/application/efficiency.ts';
import { grossIrrigation, netMmPerMinute, runMinutes } from '../../src/engine/application/run-time.ts';
import { dayNumber, daysInMonth, isoDate } from '../../src/engine/calendar.ts';
import { monthlyReferenceEt } from '../../src/engine/climate/monthly-reference-et.ts';
import { frictionCoefficient } from '../../src/engine/line/friction.ts';
import { type Lateral, lateral } from '../../src/engine/line/lateral.ts';
import type { CropId } from '../../src/engine/plants/crops.data.ts';
import { findCrop } from '../../src/engine/plants/find-crop.ts';
import { landscapeCoefficient } from '../../src/engine/plants/landscape-coefficient.ts';
import { nearestRun, soakPauseMinutes } from '../../src/engine/soil/cycle-and-soak.ts';
import { findTexture } from '../../src/engine/soil/find-texture.ts';
import { surfaceStorage } from '../../src/engine/soil/surface-storage.ts';
import type { SoilTextureId } from '../../src/engine/soil/textures.data.ts';
import { roofYieldL } from '../../src/engine/supply/roof-yield.ts';
import { tankSeason } from '../../src/engine/supply/tank.ts';
import { wateringDay } from '../../src/engine/supply/watering-window.ts';
import { between } from '../support/garden-numbers.ts';
import { law } from './law.ts';

interface Refusal {
  readonly of: (value: number) => unknown;
  readonly says: string;
}

/** Of any number below 0, and of one that is none. */
const BELOW_ZERO: readonly Refusal[] = [
  { of: (value) => applicationRateMmPerHour(60, value), says: 'The watered area is' },
  { of: (value) => runMinutes(5, value), says: 'A minute brings' },
  { of: (value) => netMmPerMinute(5, value), says: 'it must be above 0 and at most 1' },
  { of: (value) => grossIrrigation(5, value), says: 'it must be above 0 and at most 1' },
  { of: (value) => applicationEfficiency({ efficiency: value }), says: 'The efficiency is' },
  { of: (value) => applicationEfficiency({ distributionUniformity: value }), says: 'The distribution uniformity is' },
  { of: (value) => lowestQuarterUniformity([1, 2, value, 3]), says: 'each must be 0 or more' },
  { of: (value) => landscape({ factor: value }), says: 'The species factor is' },
  { of: (value) => landscape({ density: value }), says: 'The density factor is' },
  { of: (value) => surfaceStorage('loam', value), says: 'The slope is' },
  { of: (value) => cycles(value, {}), says: 'The run is' },
  { of: (value) => cycles(30, { timerStepMinutes: value }), says: "The timer's step is" },
  { of: (value) => soak(value), says: 'The intake rate is' },
  { of: (value) => daysInMonth(2027, value), says: 'month must be 0 to 11' },
  { of: (value) => isoDate(value * 1_000_000 - 800_000), says: 'is not a whole day in the years 0000 to 9999' },
  { of: (value) => lineOf({ outlets: value }), says: 'number of outlets' },
  { of: (value) => lineOf({ spacingM: value }), says: 'spacing of outlets' },
  { of: (value) => lineOf({ insideDiameterMm: value }), says: 'inside diameter (mm)' },
  { of: (value) => loss(value), says: 'The length of pipe (m) is' },
  { of: (value) => tankSeason({ ...TANK, capacityL: value }), says: 'capacity of the tank (L)' },
  { of: (value) => tankSeason({ ...TANK, drawL: [1, value] }), says: 'draw of day 2 (L)' },
];

/** Of any number above 1, the share that is the whole. */
const ABOVE_ONE: readonly Refusal[] = [
  { of: (value) => grossIrrigation(5, value), says: 'it must be above 0 and at most 1' },
  { of: (value) => applicationEfficiency({ efficiency: value }), says: 'it must be above 0 and at most 1' },
  { of: (value) => roof(value), says: 'at most 1' },
  { of: (value) => wateringDay({ groups: [], windowHours: 24 * value, interleaves: true }), says: 'at most 24' },
  { of: (value) => daysInMonth(2027, 11 + value), says: 'month must be 0 to 11' },
  { of: (value) => lineOf({ outlets: Math.floor(value) + 0.5 }), says: 'it must be whole' },
];

const NOWHERE = 'nowhere' as string;

/** Of what is not there at all; each is asked with any number. */
const NOT_THERE: readonly Refusal[] = [
  { of: () => findCrop(NOWHERE as CropId), says: 'There is no crop' },
  { of: () => findTexture(NOWHERE as SoilTextureId), says: 'There is no soil texture' },
  { of: () => defaultEfficiency(NOWHERE as WateringMethod), says: 'There is no efficiency for' },
  { of: (value) => lowestQuarterUniformity([value, value, value]), says: 'at least 4 are needed' },
  { of: () => lowestQuarterUniformity([0, 0, 0, 0]), says: 'no uniformity without water' },
  { of: (value) => monthlyReferenceEt([], { latitudeDeg: value, elevationM: 0 }), says: 'months must be twelve' },
  { of: (value) => dayNumber(`2027-02-${30 + Math.round(value)}`), says: 'is not a day of the calendar' },
  { of: (value) => dayNumber(`day ${value}`), says: 'is not a day of the calendar' },
  { of: (value) => tankSeason({ ...TANK, roofL: [value] }), says: 'they must be the same days' },
];

const BOTH = { efficiency: 0.8, distributionUniformity: 0.8 } as unknown as Parameters<typeof applicationEfficiency>[0];
const NEITHER = {} as typeof BOTH;

describe('a formula', () => {
  law('refuses in words what is below 0 or no number', {
    on: fc.tuple(fc.constantFrom(...BELOW_ZERO), fc.oneof(fc.constant(Number.NaN), between(-90, -0.1))),
    runs: 400,
    holds: expectRefused,
  });

  law('refuses in words what is more than the whole', {
    on: fc.tuple(fc.constantFrom(...ABOVE_ONE), between(1.001, 900)),
    runs: 150,
    holds: expectRefused,
  });

  law('refuses in words what is not there', {
    on: fc.tuple(fc.constantFrom(...NOT_THERE), between(0, 60)),
    runs: 200,
    holds: expectRefused,
  });

  law('of efficiency takes one of two figures, and needs no rate where nothing is to be applied', {
    on: between(-9, 9),
    runs: 20,
    holds: (rate) => {
      expect(() => applicationEfficiency(BOTH)).toThrow('not both');
      expect(() => applicationEfficiency(NEITHER)).toThrow('Give an efficiency or a distribution uniformity');
      expect(runMinutes(0, rate)).toBe(0);
    },
  });
});

function expectRefused([{ of, says }, value]: readonly [Refusal, number]): void {
  expect(() => of(value)).toThrow(RangeError);
  expect(() => of(value)).toThrow(says);
}

const TANK = { capacityL: 100, startL: 50, roofL: [1, 2], drawL: [1, 2], mainsTopUp: false };

const landscape = (change: object) => landscapeCoefficient({ factor: 0.5, density: 1, microclimate: 1, ...change });
const cycles = (minutes: number, change: object) =>
  nearestRun(minutes, { longestCycleMinutes: 10, timerStepMinutes: 1, startsADay: 4, ...change });
const soak = (intakeRateMmPerHour: number) =>
  soakPauseMinutes({ minutesPerCycle: 10, applicationRateMmPerHour: 20, intakeRateMmPerHour });
const loss = (lengthM: number) => frictionCoefficient({ insideDiameterMm: 13, lengthM, hazenWilliamsC: 130 });
const roof = (runoffCoefficient: number) => roofYieldL({ rainMm: 10, roofAreaM2: 50, runoffCoefficient });

function lineOf(change: Partial<Lateral>): unknown {
  return lateral({
    topology: 'dead-end',
    outlets: 10,
    spacingM: 0.3,
    insideDiameterMm: 13,
    inletPressureKpa: 150,
    emitter: { kind: 'compensating', nominalFlowLph: 2, leastPressureKpa: 70 },
    ...change,
  });
}
