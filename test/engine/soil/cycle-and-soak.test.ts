import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestCycleMinutes, soakPauseMinutes, splitIntoCycles } from '../../../src/engine/soil/cycle-and-soak.ts';
import { surfaceStorage } from '../../../src/engine/soil/surface-storage.ts';

const MM = 25.4;

describe('longest cycle', () => {
  test('Irrigation Association protocol (2008, from memory): flat clay, 0.96 in/h against 0.10, ASA 0.20 in: 13.95 min', () => {
    const { basicIntakeMmPerHour, accumulationMm } = surfaceStorage('clay', 0);
    const minutes = longestCycleMinutes(
      Object.freeze({
        applicationRateMmPerHour: 0.96 * MM,
        intakeRateMmPerHour: basicIntakeMmPerHour,
        accumulationMm,
      }),
    );
    expect(Math.abs(minutes - 13.95)).toBeLessThanOrEqual(0.005);
  });

  test.each([5, 10])('is without end where the soil keeps up (rate %d, intake 10 mm/h)', (applicationRateMmPerHour) => {
    expect(longestCycleMinutes({ applicationRateMmPerHour, intakeRateMmPerHour: 10, accumulationMm: 5 })).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});

describe('splitting a run into cycles', () => {
  test.each([
    ['one cycle where nothing limits it', 34.6, Number.POSITIVE_INFINITY, 1, [1, 35, 35]],
    ['35 min at 13.95 min a cycle', 34.6, 13.95, 1, [3, 12, 36]],
    ['a longest cycle off the step', 30, 13.95, 5, [3, 10, 30]],
    ['a longest cycle below one step', 12, 3, 5, [3, 5, 15]],
    ['steps of a tenth', 0.3, Number.POSITIVE_INFINITY, 0.1, [1, 0.3, 0.3]],
    ['nothing to run', 0, 10, 1, [0, 0, 0]],
  ] as const)('%s', (_name, minutes, longest, timerStepMinutes, [cycles, minutesPerCycle, total]) => {
    const run = Object.freeze({ minutes, longestCycleMinutes: longest, timerStepMinutes });
    const split = splitIntoCycles(run);
    expect(split.cycles).toBe(cycles);
    expect(split.minutesPerCycle).toBeCloseTo(minutesPerCycle, 12);
    expect(split.minutes).toBeCloseTo(total, 12);
  });

  test.each([
    ['a timer step of 0', { minutes: 10, timerStepMinutes: 0 }, 'The timer step is 0 min'],
    ['a run below 0', { minutes: -1, timerStepMinutes: 1 }, 'The run is -1 min'],
    ['a run that is not a number', { minutes: Number.NaN, timerStepMinutes: 1 }, 'The run is NaN min'],
    ['a run without end', { minutes: Number.POSITIVE_INFINITY, timerStepMinutes: 1 }, 'The run is Infinity min'],
  ])('refuses %s', (_name, run, message) => {
    expect(() => splitIntoCycles({ ...run, longestCycleMinutes: 10 })).toThrow(RangeError);
    expect(() => splitIntoCycles({ ...run, longestCycleMinutes: 10 })).toThrow(message);
  });

  test('gives at least what was asked, in whole steps, within the longest cycle, and a step less per cycle is too little', () => {
    const longest = fc.oneof(fc.double({ min: 0.1, max: 600, noNaN: true }), fc.constant(Number.POSITIVE_INFINITY));
    const step = fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 5, 10, 15);
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1500, noNaN: true }), longest, step, (asked, limit, timerStep) => {
        const run = Object.freeze({ minutes: asked, longestCycleMinutes: limit, timerStepMinutes: timerStep });
        const { cycles, minutesPerCycle, minutes } = splitIntoCycles(run);
        const steps = minutesPerCycle / timerStep;
        expect(minutes).toBeGreaterThanOrEqual(asked - 1e-6);
        expect(minutes).toBeCloseTo(cycles * minutesPerCycle, 6);
        expect(Math.abs(steps - Math.round(steps))).toBeLessThanOrEqual(1e-6);
        expect(minutesPerCycle).toBeLessThanOrEqual(Math.max(timerStep, limit) + 1e-6);
        expect(cycles * (minutesPerCycle - timerStep)).toBeLessThan(asked);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('soak pause', () => {
  // Common practice, no source.
  test.each([
    ['until what stands is in: 12 min at 20 against 4 mm/h', 12, 20, 4, 48],
    ['at least half an hour', 2, 20, 10, 30],
    ['none where the soil keeps up', 12, 4, 4, 0],
  ] as const)(
    '%s (common practice)',
    (_name, minutesPerCycle, applicationRateMmPerHour, intakeRateMmPerHour, minutes) => {
      expect(soakPauseMinutes({ minutesPerCycle, applicationRateMmPerHour, intakeRateMmPerHour })).toBe(minutes);
    },
  );

  test('refuses a soil that takes nothing in', () => {
    expect(() =>
      soakPauseMinutes({ minutesPerCycle: 10, applicationRateMmPerHour: 20, intakeRateMmPerHour: 0 }),
    ).toThrow(RangeError);
  });
});
