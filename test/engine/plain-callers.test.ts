/** Formulas called by plain JavaScript, which no compiler stops: none of them gives NaN. */
import { describe, expect, it } from 'vitest';
import { addDays, dayNumber, isIsoDate, isoDate, weekdayOf } from '../../src/engine/calendar.ts';
import { rootDepthM } from '../../src/engine/ground/index.ts';
import * as engine from '../../src/engine/index.ts';
import * as line from '../../src/engine/line/index.ts';
import { fromSi, toSi, unitOf } from '../../src/engine/units.ts';

type Arguments = readonly unknown[];

const PLAIN = { kind: 'plain', nominalFlowLph: 2, nominalPressureKpa: 100, exponent: 0.5 };
const PIPE = { insideDiameterMm: 13, lengthM: 20, hazenWilliamsC: 130 };
const EXTREMES = { minTemperatureC: 14.8, maxTemperatureC: 26.6 };
const AIR = { vapourPressureKpa: 1.4, windMs: 2, netRadiationMj: 13, soilHeatFluxMj: 0, elevationM: 100 };
const STAGES = { iniDays: 20, devDays: 30, midDays: 40, lateDays: 20 };

/** Arguments that each formula takes; of numbers in any of them, every one is replaced in turn. */
const TAKEN: Readonly<Record<string, Arguments>> = {
  applicationRateMmPerHour: [60, 10],
  lowestQuarterUniformity: [[1, 2, 3, 4]],
  applicationEfficiency: [{ efficiency: 0.8 }],
  grossIrrigation: [5, 0.8],
  netMmPerMinute: [10, 0.8],
  runMinutes: [5, 0.1],
  addDays: ['2027-06-01', 3],
  dayNumber: ['2027-06-01'],
  isoDate: [20_000],
  weekdayOf: [20_000],
  extraterrestrialRadiation: [{ latitudeDeg: -20, dayOfYear: 246 }],
  hargreavesSamani: [{ ...EXTREMES, extraterrestrialMj: 40.6 }],
  penmanMonteith: [{ ...EXTREMES, ...AIR }],
  cropCoefficient: [30, STAGES, { kcIni: 0.3, kcMid: 1.1, kcEnd: 0.6 }],
  landscapeCoefficient: [{ factor: 0.5, density: 1, microclimate: 1 }],
  readilyAvailableWaterMm: [100, 0.5],
  totalAvailableWaterMm: [0.15, 0.6],
  rootZoneDay: [{ depletionMm: 60, rawMm: 40, tawMm: 90, etcMm: 5, rainMm: 1, irrigationMm: 2 }],
  rootDepthM: [30, STAGES, { initialM: 0.15, fullM: 1 }],
  stressCoefficient: [60, 40, 90],
  roofYieldL: [{ rainMm: 10, roofAreaM2: 50, runoffCoefficient: 0.9 }],
  fromSi: [25.4, 'depth', 'us'],
  toSi: [1, 'depth', 'us'],
  asMadeUniformity: [0.05, 1],
  emissionUniformity: [{ flowsLph: [2, 2, 2], manufacturingCv: 0.05, emittersPerPlant: 1 }],
  emitterFlowLph: [PLAIN, 100],
  frictionCoefficient: [PIPE],
  frictionLossKpa: [1e-6, 100],
  lateral: [
    {
      ...{ topology: 'dead-end', outlets: 10, spacingM: 0.3, leadM: 0.3, insideDiameterMm: 13, hazenWilliamsC: 130 },
      ...{ inletPressureKpa: 150, riseMPerM: 0, emittersPerOutlet: 1, emitter: PLAIN },
    },
  ],
  velocityMs: [{ flowLph: 100, insideDiameterMm: 13 }],
};

const calendar = { addDays, dayNumber, isIsoDate, isoDate, weekdayOf };
const formulas = { ...engine, ...line, ...calendar, rootDepthM, fromSi, toSi, unitOf } as unknown as Readonly<
  Record<string, (...given: Arguments) => unknown>
>;

/** Takes of a season what `runSeason` made of a garden: who has a season has no loose numbers. */
const OF_A_SEASON =
  /^(?:cumulative|planting\w+|zone\w+|season\w+|runSeason|openMinutes|openRunMask|refillOf|minutesOnDay|runMask)$/;

/** Every copy of `whole` with one number in it replaced by `instead`. */
function* spoilt(whole: unknown, instead: unknown): Generator {
  if (typeof whole === 'number') yield instead;
  if (typeof whole !== 'object' || whole === null) return;
  for (const [key, part] of Object.entries(whole)) {
    for (const other of spoilt(part, instead)) {
      const copy: Record<string, unknown> = Array.isArray(whole) ? ([...whole] as never) : { ...whole };
      copy[key] = other;
      yield copy;
    }
  }
}

function hasNaN(value: unknown): boolean {
  if (typeof value === 'number') return Number.isNaN(value);
  if (ArrayBuffer.isView(value)) return (value as unknown as readonly number[]).some(Number.isNaN);
  return typeof value === 'object' && value !== null && Object.values(value).some(hasNaN);
}

/** What is thrown instead of a NaN. */
function thrownBy(call: () => unknown, what: string): Error | undefined {
  let result: unknown;
  try {
    result = call();
  } catch (error) {
    expect([TypeError, RangeError], `${what}: ${String(error)}`).toContain((error as Error).constructor);
    return error as Error;
  }
  expect(hasNaN(result), what).toBe(false);
  return undefined;
}

describe('a formula that plain JavaScript calls', () => {
  it('is on the list, if it takes numbers', () => {
    const missing = Object.entries(formulas)
      .filter(([name, value]) => typeof value === 'function' && !OF_A_SEASON.test(name))
      .map(([name]) => name)
      .filter((name) => !(name in TAKEN));
    // A month's rain by a rule is asked for by the season alone; the two others answer any argument.
    expect(missing.sort()).toEqual(['isIsoDate', 'monthlyEffectiveRainMm', 'unitOf']);
  });

  it.each(Object.keys(TAKEN).filter((name) => name in formulas))('%s', (name) => {
    const call = formulas[name] as (...given: Arguments) => unknown;
    const taken = TAKEN[name] ?? [];
    expect(thrownBy(() => call(...taken), 'as it should be')).toBe(undefined);
    thrownBy(() => call(), 'nothing');
    // A unit is told for any number, and of none it says so.
    const instead = /^(?:from|to)Si$/.test(name) ? [] : [Number.NaN, undefined, {}];
    for (const value of instead) {
      for (const args of spoilt(taken, value)) thrownBy(() => call(...(args as Arguments)), JSON.stringify(args));
    }
  });

  it('names the argument in a TypeError', () => {
    const says = (call: () => unknown) => {
      const error = thrownBy(call, 'asked');
      expect(error).toBeInstanceOf(TypeError);
      return error?.message;
    };
    expect(says(() => fromSi(1, 'volume', 'imperial' as 'us'))).toBe(
      'There is no quantity volume in the system imperial.',
    );
    expect(says(() => unitOf('colour' as 'depth', 'us'))).toMatch(/quantity colour/);
    expect(says(() => toSi(1, '__proto__' as 'depth', 'constructor' as 'us'))).toMatch(/quantity __proto__/);
    expect(says(() => engine.runSeason({} as never))).toBe('garden must be a garden.');
    expect(says(() => engine.runSeason(undefined as never))).toBe('garden must be a garden.');
    expect(() => engine.hargreavesSamani({} as never)).toThrow(RangeError);
  });
});
