import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayMinutes } from '../../../src/engine/supply/day-minutes.ts';
import { type DayRun, dayTiming } from '../../../src/engine/supply/day-timing.ts';

const once = (id: string, flowLpm: number, minutes: number): DayRun => ({
  id,
  flowLpm,
  minutesPerCycle: minutes,
  cycles: 1,
  soakMinutes: 0,
});

const anyRuns = (cycles: number): fc.Arbitrary<DayRun[]> =>
  fc
    .array(
      fc.record({
        flowLpm: fc.integer({ min: 1, max: 130 }),
        minutesPerCycle: fc.integer({ min: 1, max: 40 }),
        cycles: fc.integer({ min: 1, max: cycles }),
        soakMinutes: fc.integer({ min: 0, max: 90 }),
      }),
      { maxLength: 7 },
    )
    .map((runs) => runs.map((run, index) => ({ ...run, id: `zone-${index}` })));
const sources = fc.constantFrom(Number.NaN, 60, 100, 200);
const flowsOf = (runs: readonly DayRun[]) => runs.map(({ flowLpm }) => flowLpm);

describe('the timing of a day', () => {
  const runs = [once('beds', 8, 30), once('pots', 3, 10), once('hedge', 7, 40)];

  it('runs together what the source feeds: 8 of 10 L/min for 30 min, then 7 and 3 for 40', () => {
    expect(dayTiming(runs, 10, 24)).toMatchObject({
      groups: [['beds'], ['hedge', 'pots']],
      tooGreat: [],
      minutesNeeded: 70,
      timeline: [
        { ids: ['beds'], startMinute: 0, endMinute: 30 },
        { ids: ['hedge', 'pots'], startMinute: 30, endMinute: 70 },
      ],
    });
  });

  it('runs one zone after another where the flow is not known', () => {
    expect(dayTiming(runs, Number.NaN, 24)).toMatchObject({
      groups: [['beds'], ['pots'], ['hedge']],
      minutesNeeded: 80,
    });
  });

  it('gives a zone that asks too much its own time, and names it', () => {
    expect(dayTiming(runs, 7.5, 1)).toMatchObject({
      groups: [['beds'], ['hedge'], ['pots']],
      tooGreat: ['beds'],
      minutesNeeded: 80,
      fits: false,
      minutesOver: 20,
    });
  });

  it('on any day: every zone once, no group above the flow but of one zone that is too great', () => {
    fc.assert(
      fc.property(anyRuns(4), sources, (watering, sourceLpm) => {
        const { groups, tooGreat } = dayTiming(watering, sourceLpm, 24);
        expect(groups.flat().sort()).toEqual(watering.map(({ id }) => id).sort());
        for (const group of groups) {
          const flow = watering.filter(({ id }) => group.includes(id)).reduce((sum, run) => sum + run.flowLpm, 0);
          const alone = Number.isNaN(sourceLpm) || tooGreat.includes(group[0] as string);
          if (alone) expect(group).toHaveLength(1);
          else expect(flow).toBeLessThanOrEqual(sourceLpm);
        }
      }),
    );
  });

  it('on any day: the minutes alone are those of the timetable', () => {
    fc.assert(
      fc.property(anyRuns(4), sources, (watering, sourceLpm) => {
        const minutes = dayMinutes(watering, flowsOf(watering), sourceLpm);
        expect(minutes).toBeCloseTo(dayTiming(watering, sourceLpm, 24).minutesNeeded, 9);
      }),
    );
  });

  it('where no soil needs a pause, more minutes for a zone never make the day shorter', () => {
    fc.assert(
      fc.property(anyRuns(1), sources, fc.nat(6), fc.integer({ min: 1, max: 60 }), (watering, sourceLpm, at, more) => {
        const longer = watering.map((run, index) => ({
          ...run,
          minutesPerCycle: run.minutesPerCycle + (index === at ? more : 0),
        }));
        const minutes = dayMinutes(longer, flowsOf(watering), sourceLpm);
        expect(minutes).toBeGreaterThanOrEqual(dayMinutes(watering, flowsOf(watering), sourceLpm));
      }),
    );
  });

  it('with pauses it lies between running without a stop and waiting every pause out', () => {
    fc.assert(
      fc.property(anyRuns(4), (watering) => {
        const running = watering.reduce((sum, run) => sum + run.cycles * run.minutesPerCycle, 0);
        const waiting = watering.reduce((sum, run) => sum + (run.cycles - 1) * run.soakMinutes, running);
        const minutes = dayMinutes(watering, flowsOf(watering), Number.NaN);
        expect(minutes).toBeGreaterThanOrEqual(running - 1e-9);
        expect(minutes).toBeLessThanOrEqual(waiting + 1e-9);
      }),
    );
  });
});
