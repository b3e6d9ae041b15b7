import {
  type Choose,
  heldFor,
  inTurn,
  type Jobs,
  leastCycle,
  minutesBehind,
  type Progress,
  readyFirst,
} from './cycle-order.ts';

export interface StartedCycle {
  /** Index of the job. */
  readonly job: number;
  /** Index of the cycle in its job. */
  readonly cycle: number;
  readonly startMinute: number;
  readonly endMinute: number;
}

/**
 * Puts cycles one after another in time, each job's own in order with its pauses between. Where the first cycle of each
 * job, then the second of each, and so on leaves no minute idle, that is it. Else three more orders are tried and the
 * shortest is taken: one job after the other, pauses waited out; whichever is ready, the one with the longest pauses and
 * cycles still behind it first; and the same, but holding the line free for such a job rather than starting one that
 * would make it late.
 *
 * Rules of thumb that a person can follow, not a proven least: to find the shortest such day is a hard problem.
 *
 * @param mayInterleave false: one job after the other, as a timer does that finishes one zone before it starts the next
 */
export function interleave(jobs: Jobs, mayInterleave: boolean): StartedCycle[] {
  const behind = jobs.map(minutesBehind);
  if (!mayInterleave) return scheduled(jobs, behind, inTurn);
  if (!hasIdleMinutes(jobs)) return scheduled(jobs, behind, leastCycle);
  const others = [inTurn, readyFirst, heldFor].map((choose) => scheduled(jobs, behind, choose));
  return others.reduce((best, other) => (endOf(other) < endOf(best) ? other : best));
}

/** When the last cycle of `interleave` ends, without the list of cycles. */
export function interleavedMinutes(jobs: Jobs): number {
  return hasIdleMinutes(jobs) ? endOf(interleave(jobs, true)) : runningMinutes(jobs);
}

/** Whether something waits when the first cycle of each job is run, then the second of each, and so on. */
function hasIdleMinutes(jobs: Jobs): boolean {
  const readyMinute = new Float64Array(jobs.length);
  const rounds = jobs.reduce((most, job) => Math.max(most, job.length), 0);
  let now = 0;
  for (let cycle = 0; cycle < rounds; cycle += 1) {
    for (const [job, cycles] of jobs.entries()) {
      const run = cycles[cycle];
      if (run === undefined) continue;
      if ((readyMinute[job] as number) > now) return true;
      now += run.minutes;
      readyMinute[job] = now + run.soakMinutes;
    }
  }
  return false;
}

function runningMinutes(jobs: Jobs): number {
  return jobs.reduce((sum, job) => job.reduce((total, { minutes }) => total + minutes, sum), 0);
}

/** Of at least one cycle. */
function endOf(started: readonly StartedCycle[]): number {
  return (started.at(-1) as StartedCycle).endMinute;
}

function scheduled(jobs: Jobs, behind: Progress['behind'], choose: Choose): StartedCycle[] {
  const started: StartedCycle[] = [];
  const progress: Progress = { jobs, behind, cycle: jobs.map(() => 0), readyMinute: jobs.map(() => 0) };
  let now = 0;
  for (;;) {
    const job = choose(progress, now);
    const cycle = progress.cycle[job] as number;
    const run = jobs[job]?.[cycle];
    if (run === undefined) return started;
    const startMinute = Math.max(now, progress.readyMinute[job] as number);
    now = startMinute + run.minutes;
    started.push({ job, cycle, startMinute, endMinute: now });
    progress.cycle[job] = cycle + 1;
    progress.readyMinute[job] = now + run.soakMinutes;
  }
}
