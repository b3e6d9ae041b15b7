import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CycleRun } from '../../../src/engine/supply/cycle-order.ts';
import { interleave, interleavedMinutes } from '../../../src/engine/supply/interleave-cycles.ts';

const times = (count: number, minutes: number, soakMinutes: number): CycleRun[] =>
  Array.from({ length: count }, () => ({ minutes, soakMinutes }));
const lastEnd = (started: readonly { endMinute: number }[]) => started.at(-1)?.endMinute ?? 0;

describe('cycles and soak pauses in time', () => {
  it('while one soaks another runs: two jobs of two cycles of 10 with pauses of 10 need 40 min and no waiting', () => {
    const started = interleave([times(2, 10, 10), times(2, 10, 10)], true);
    expect(started.map(({ job, cycle, startMinute }) => [job, cycle, startMinute])).toEqual([
      [0, 0, 0],
      [1, 0, 10],
      [0, 1, 20],
      [1, 1, 30],
    ]);
  });

  it('a timer that waits its pauses out needs 60 for the same', () => {
    const started = interleave([times(2, 10, 10), times(2, 10, 10)], false);
    expect(started.map(({ job, startMinute, endMinute }) => [job, startMinute, endMinute])).toEqual([
      [0, 0, 10],
      [0, 20, 30],
      [1, 30, 40],
      [1, 50, 60],
    ]);
  });

  it('the job with the longest way to go starts first, and a short one fits in its pause', () => {
    const started = interleave([times(1, 15, 0), times(3, 10, 20)], true);
    expect(started.map(({ job }) => job)).toEqual([1, 0, 1, 1]);
    expect(lastEnd(started)).toBe(70);
  });

  it('a job with a pause to come goes before a longer one without: 10, pause of 60 in which 100 run, 10', () => {
    const started = interleave([times(1, 100, 0), times(2, 10, 60)], true);
    expect(started.map(({ job, startMinute }) => [job, startMinute])).toEqual([
      [1, 0],
      [0, 10],
      [1, 110],
    ]);
  });

  it('the line is held five minutes for a job that has the longest way to go', () => {
    const started = interleave([times(3, 10, 30), times(1, 25, 0), times(1, 25, 0)], true);
    expect(started.map(({ job, startMinute }) => [job, startMinute])).toEqual([
      [0, 0],
      [1, 10],
      [0, 40],
      [2, 50],
      [0, 80],
    ]);
  });

  it('in rounds, where that leaves no minute idle', () => {
    const started = interleave([times(2, 10, 20), times(2, 20, 10), times(1, 5, 0)], true);
    expect(started.map(({ job, startMinute }) => [job, startMinute])).toEqual([
      [0, 0],
      [1, 10],
      [2, 30],
      [0, 35],
      [1, 45],
    ]);
    expect(lastEnd(started)).toBe(65);
  });

  it('no jobs and empty jobs need no time', () => {
    expect(interleave([], true)).toEqual([]);
    expect(interleave([[], []], false)).toEqual([]);
  });

  it('any jobs: one at a time, pauses kept, nothing left out, between the least possible and waiting everything out', () => {
    const anyJob = fc
      .record({
        count: fc.integer({ min: 0, max: 5 }),
        minutes: fc.integer({ min: 1, max: 30 }),
        soak: fc.integer({ min: 0, max: 60 }),
      })
      .map(({ count, minutes, soak }) => times(count, minutes, soak));
    fc.assert(
      fc.property(fc.array(anyJob, { maxLength: 6 }), (jobs) => {
        const started = interleave(Object.freeze(jobs), true);
        expect(started).toHaveLength(jobs.flat().length);
        let free = 0;
        const endOf = new Map<number, number>();
        for (const { job, cycle, startMinute, endMinute } of started) {
          const run = jobs[job]?.[cycle] as CycleRun;
          expect(startMinute).toBeGreaterThanOrEqual(free);
          expect(endMinute - startMinute).toBe(run.minutes);
          if (cycle > 0) expect(startMinute).toBeGreaterThanOrEqual((endOf.get(job) as number) + run.soakMinutes);
          endOf.set(job, endMinute);
          free = endMinute;
        }
        const running = jobs.flat().reduce((sum, run) => sum + run.minutes, 0);
        const longestJob = Math.max(0, ...jobs.map((job) => lastEnd(interleave([job], true))));
        expect(lastEnd(started)).toBeGreaterThanOrEqual(Math.max(running, longestJob));
        expect(lastEnd(started)).toBeLessThanOrEqual(lastEnd(interleave(jobs, false)));
        expect(interleavedMinutes(jobs)).toBeCloseTo(lastEnd(started), 9);
      }),
    );
  });
});
