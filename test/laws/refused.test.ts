import fc from 'fast-check';
import { describe, expect } from 'vitest';
import type { Garden, GardenPlanting, MonthlyClimate, ObservedDay } from '../../src/engine/garden.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { arbitraryGarden } from '../support/arbitrary-garden.ts';
import { plainPlanting, plainZone } from '../support/plain-garden.ts';
import { law } from './law.ts';

/** What cannot be, put into a garden that can; and what the refusal must say. */
interface Impossible {
  readonly into: (garden: Garden) => Garden;
  readonly says: string;
}

const of = (value: number, count = 12) => Array.from({ length: count }, () => value);

const impossible: readonly Impossible[] = [
  { into: (garden) => inClimate(garden, { etoMm: of(100, 11) }), says: 'monthly totals must be twelve' },
  { into: (garden) => inClimate(garden, { rainMm: of(50, 13) }), says: 'monthly totals must be twelve' },
  { into: (garden) => inClimate(garden, { rainMm: [-1, ...of(50, 11)] }), says: 'the total of month 1 must be' },
  { into: (garden) => inClimate(garden, { etoMm: of(Number.NaN) }), says: 'the total of month 1 must be' },
  { into: (garden) => byTemperatures(garden, of(20), of(10)), says: 'exchange or correct them' },
  { into: (garden) => byTemperatures(garden, of(10, 11), of(20)), says: 'month 12 needs its mean lowest' },
  { into: (garden) => onFirstDay(garden, { etoMm: -0.5 }), says: 'observed ETo must be 0 mm or more' },
  {
    into: (garden) => onFirstDay(garden, { minTemperatureC: 20, maxTemperatureC: 10 }),
    says: 'exchange or correct them',
  },
  {
    into: (garden) => onFirstDay(atHeight(garden, 0.2), { minTemperatureC: 10, maxTemperatureC: 20, windMs: 3 }),
    says: 'wind must be measured at least 0.5 m above the ground',
  },
  { into: (garden) => withPlainZone(inRain(garden, 1.5)), says: 'The fraction of rain that counts is 1.5' },
  { into: (garden) => withPlainZone(garden, { timerStepMinutes: 0 }), says: 'step is 0 min' },
];

describe('a garden that cannot be', () => {
  law('is refused in words, never reckoned into figures that are none', {
    on: fc.tuple(arbitraryGarden({ mostZones: 1, mostWeeks: 4 }), fc.constantFrom(...impossible)),
    runs: 200,
    holds: ([garden, { into, says }]) => {
      expect(() => runSeason(into(garden))).toThrow(RangeError);
      expect(() => runSeason(into(garden))).toThrow(says);
    },
  });
});

function inClimate({ site, ...rest }: Garden, change: Partial<MonthlyClimate>): Garden {
  return { ...rest, site: { ...site, climate: { ...site.climate, ...change } } };
}

function byTemperatures(
  garden: Garden,
  minTemperatureC: readonly number[],
  maxTemperatureC: readonly number[],
): Garden {
  return inClimate(garden, { etoMm: undefined, minTemperatureC, maxTemperatureC });
}

function onFirstDay(garden: Garden, seen: ObservedDay): Garden {
  return { ...garden, observed: { ...garden.observed, days: new Map([[garden.span.firstDay, seen]]) } };
}

function atHeight({ site, ...rest }: Garden, windHeightM: number): Garden {
  return { ...rest, site: { ...site, windHeightM, whenIncomplete: 'penman-monteith' } };
}

/** Of 50 mm of normal rain in every month, by the method that takes a plain share; without an observation. */
function inRain(garden: Garden, fraction: number): Garden {
  const { site, ...rest } = inClimate(garden, { rainMm: of(50) });
  return { ...rest, site: { ...site, rain: { ...site.rain, method: 'fraction', fraction } } };
}

/** A zone whose planting is in the ground all season and asks for water in its first week. */
function withPlainZone(garden: Garden, change: Partial<Garden['zones'][number]> = {}): Garden {
  return { ...garden, zones: [...garden.zones, plainZone({ plantings: [dryBed(garden)], ...change })] };
}

function dryBed({ span }: Garden): GardenPlanting {
  const from = span.firstDay - 100;
  const lines = plainPlanting().lines.map((line) => ({ ...line, from }));
  return plainPlanting({ from, to: span.firstDay + 1000, lines, rootZone: { startDepletion: 1 } });
}
