import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  fewestCycles,
  longestCycleMinutes,
  nearestRun,
  soakPauseMinutes,
} from '../../../src/engine/soil/cycle-and-soak.ts';
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

const WITHOUT_LIMIT = Number.POSITIVE_INFINITY;

/** Wanted minutes, the timer's step, the longest cycle and the starts a day; cycles and minutes of all of them. */
type Case = readonly [string, readonly [number, number, number, number], readonly [number, number]];

function runOf([wanted, timerStepMinutes, longest, startsADay]: Case[1], isAtLeast = false) {
  const timer = Object.freeze({ longestCycleMinutes: longest, timerStepMinutes, startsADay });
  return nearestRun(wanted, timer, isAtLeast);
}

/** Rounding and cycles are rules of this kit, without a source: each figure is worked by hand. */
describe('the nearest run', () => {
  test.each<Case>([
    // Up to 2 steps a cycle: 1 x 10, 2 x 5 or 2 x 10, 3 x 5, 4 x 5; 15 is nearest to 13.3.
    ['13.3 min, step 5, longest 11.4', [13.3, 5, 11.4, 4], [3, 15]],
    ['without the third start 2 x 5 is as good as 1 x 10, in more cycles', [13.3, 5, 11.4, 2], [1, 10]],
    ['one cycle where nothing limits it', [34.6, 1, WITHOUT_LIMIT, 4], [1, 35]],
    // 1 x 13, 2 x 13, 3 x 12 = 36 (34.6 / 3 = 11.5), 4 x 9 = 36: the fewer of equally near.
    ['34.6 min at 13.95 min a cycle', [34.6, 1, 13.95, 4], [3, 36]],
    ['two equal cycles come nearer than one longer', [22.9, 5, 15, 4], [2, 20]],
    ['half a step is a whole one', [2.5, 5, WITHOUT_LIMIT, 4], [1, 5]],
    ['just under half a step is no run', [2.49, 5, WITHOUT_LIMIT, 4], [0, 0]],
    ['a half step goes up', [32.5, 5, WITHOUT_LIMIT, 4], [1, 35]],
    ['steps of a tenth', [0.3, 0.1, WITHOUT_LIMIT, 4], [1, 0.3]],
    ['nothing to run', [0, 1, 10, 4], [0, 0]],
    // A step of 30 is the least that the timer can do: 1 x 30, though the soil takes 3.3.
    ['a step longer than the longest cycle', [20, 30, 3.3, 4], [1, 30]],
    // Twelve runs of 120 fill a day, however many starts there are.
    ['no more than a day has, in steps of two hours', [3000, 120, WITHOUT_LIMIT, 24], [1, 1440]],
    ['and in cycles of one step each', [3000, 120, 120, 24], [12, 1440]],
    ['and as many as come nearest', [70, 30, 3.3, 4], [2, 60]],
    ['as much as the starts can do, where that is not enough', [100, 1, 10, 4], [4, 40]],
    ['never more than a day has', [5000, 7, WITHOUT_LIMIT, 1], [1, 1435]],
    ['a run that would take a million cycles', [1_000_000, 1, 1, 24], [24, 24]],
    // 1440 / 24 = 60 steps each, were they not one.
    ['starts without number, a day of cycles', [2000, 60, 60, 24], [24, 1440]],
  ])('%s', (_name, given, [cycles, minutes]) => {
    const run = runOf(given);
    expect(run.cycles).toBe(cycles);
    expect(run.minutes).toBeCloseTo(minutes, 12);
  });

  test.each<Case>([
    ['up to the next step', [31, 5, WITHOUT_LIMIT, 4], [1, 35]],
    ['never up from a whole step', [30, 5, WITHOUT_LIMIT, 4], [1, 30]],
    ['from less than half a step', [0.4, 5, WITHOUT_LIMIT, 4], [1, 5]],
    // 2 x 10 = 20 and 3 x 5 = 15 both reach 13.3.
    ['13.3 min, step 5, longest 11.4', [13.3, 5, 11.4, 4], [3, 15]],
    // 17 / (2 x 5) goes up to 2 steps: 20; 3 x 10 = 30; 4 x 5 = 20: the fewest cycles of equal ones.
    ['17 min, step 5, longest 11.4', [17, 5, 11.4, 4], [2, 20]],
    ['the most that the starts can do, where nothing reaches it', [100, 1, 10, 4], [4, 40]],
    ['nothing from nothing', [0, 5, 10, 4], [0, 0]],
  ])('that is not less: %s', (_name, given, [cycles, minutes]) => {
    const run = runOf(given, true);
    expect(run.cycles).toBe(cycles);
    expect(run.minutes).toBeCloseTo(minutes, 12);
  });

  test.each([
    ['a timer step of 0', [10, 0, 10, 4], 'step is 0 min'],
    ['a run below 0', [-1, 1, 10, 4], 'The run is -1 min'],
    ['a run that is not a number', [Number.NaN, 1, 10, 4], 'The run is NaN min'],
    ['a run without end', [Number.POSITIVE_INFINITY, 1, 10, 4], 'The run is Infinity min'],
  ] as const)('refuses %s', (_name, given, message) => {
    expect(() => runOf(given)).toThrow(RangeError);
    expect(() => runOf(given)).toThrow(message);
  });

  const arbitraryRun = fc.tuple(
    fc.double({ min: 0.001, max: 1500, noNaN: true }),
    fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 5, 10, 15, 30),
    fc.oneof(fc.double({ min: 0.1, max: 600, noNaN: true }), fc.constant(WITHOUT_LIMIT)),
    fc.integer({ min: 1, max: 24 }),
  );

  test('is the best of all that the timer can do, tried one by one', () => {
    fc.assert(
      fc.property(arbitraryRun, (given) => {
        const run = runOf(given);
        if (run.cycles === 0) expect(given[0]).toBeLessThan(given[1] / 2);
        else expect(run.minutes).toBeCloseTo(nearestOf(possibleTotals(given), given[0], run.minutes), 6);
        expectPossible(run, given);
      }),
      { numRuns: 300 },
    );
  });

  test('that is not less is the least of all that are enough, else the greatest', () => {
    fc.assert(
      fc.property(arbitraryRun, (given) => {
        const run = runOf(given, true);
        const totals = possibleTotals(given);
        const enough = totals.filter((minutes) => minutes >= given[0] - 1e-9);
        expect(run.minutes).toBeCloseTo(enough.length > 0 ? Math.min(...enough) : Math.max(...totals), 6);
        expectPossible(run, given);
      }),
      { numRuns: 300 },
    );
  });
});

/** Whatever equal cycles of whole steps come to: at least a step each, else within the longest cycle and the day. */
function possibleTotals([, step, longest, starts]: Case[1]): readonly number[] {
  const totals: number[] = [];
  for (let cycles = 1; cycles <= starts; cycles++) {
    totals.push(cycles * step);
    const most = Math.min(longest, 1440 / cycles) + 1e-9;
    for (let steps = 2; steps * step <= most; steps++) totals.push(cycles * steps * step);
  }
  return totals;
}

/** The nearest total; of two as near as each other, the one that was taken. */
function nearestOf(totals: readonly number[], wanted: number, taken: number): number {
  const least = Math.min(...totals.map((minutes) => Math.abs(minutes - wanted)));
  return Math.abs(taken - wanted) <= least + 1e-6 ? taken : Number.NaN;
}

function expectPossible({ cycles, minutes }: ReturnType<typeof nearestRun>, [, step, longest, starts]: Case[1]): void {
  expect(cycles).toBeLessThanOrEqual(starts);
  if (cycles === 0) return;
  const steps = minutes / cycles / step;
  expect(Math.abs(steps - Math.round(steps))).toBeLessThanOrEqual(1e-6);
  expect(minutes / cycles).toBeLessThanOrEqual(Math.max(step, longest) + 1e-6);
}

describe('cycles of minutes set by hand', () => {
  test('are as few as keep each within the longest, at least one', () => {
    expect(fewestCycles(30, 13)).toBe(3);
    expect(fewestCycles(26, 13)).toBe(2);
    expect(fewestCycles(5, WITHOUT_LIMIT)).toBe(1);
    // 9.9 / 3.3 is 3.0000000000000004 to a computer.
    expect(fewestCycles(9.9, 3.3)).toBe(3);
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
