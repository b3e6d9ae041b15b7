export interface CycleRun {
  readonly minutes: number;
  /** Least pause from this cycle's end to the start of the next one of the same job. */
  readonly soakMinutes: number;
}

export interface StartedCycle {
  /** Index of the job. */
  readonly job: number;
  /** Index of the cycle in its job. */
  readonly cycle: number;
  readonly startMinute: number;
  readonly endMinute: number;
}

interface Waiting {
  readonly job: number;
  cycle: number;
  readyMinute: number;
}

type Jobs = readonly (readonly CycleRun[])[];
type Choose = (unfinished: readonly Waiting[], jobs: Jobs, now: number) => Waiting | undefined;

/**
 * Puts cycles one after another in time, each job's own in order with its pauses between. Three orders are tried and
 * the shortest is taken: one job after the other, pauses waited out; whichever is ready, the one with the longest
 * pauses and cycles still behind it first; and the same, but holding the line free for such a job rather than starting
 * one that would make it late.
 *
 * Rules of thumb that a person can follow, not a proven least: to find the shortest such day is a hard problem.
 *
 * @param mayInterleave false: only the first order, as a timer does that finishes one zone before it starts the next
 */
export function interleave(jobs: Jobs, mayInterleave: boolean): StartedCycle[] {
  const inOrder = scheduled(jobs, (unfinished) => unfinished[0]);
  if (!mayInterleave) return inOrder;
  const others = [scheduled(jobs, readyFirst), scheduled(jobs, heldFor)];
  return others.reduce((best, other) => (endOf(other) < endOf(best) ? other : best), inOrder);
}

function endOf(started: readonly StartedCycle[]): number {
  return started.at(-1)?.endMinute ?? 0;
}

function scheduled(jobs: Jobs, choose: Choose): StartedCycle[] {
  const started: StartedCycle[] = [];
  let now = 0;
  const waiting: Waiting[] = jobs.map((_, job) => ({ job, cycle: 0, readyMinute: 0 }));
  for (;;) {
    const unfinished = waiting.filter((candidate) => runOf(candidate, jobs) !== undefined);
    const next = choose(unfinished, jobs, now);
    const run = next && runOf(next, jobs);
    if (!next || !run) return started;
    const startMinute = Math.max(now, next.readyMinute);
    now = startMinute + run.minutes;
    started.push({ job: next.job, cycle: next.cycle, startMinute, endMinute: now });
    next.cycle += 1;
    next.readyMinute = now + run.soakMinutes;
  }
}

function runOf({ job, cycle }: Waiting, jobs: Jobs): CycleRun | undefined {
  return jobs[job]?.[cycle];
}

/** Of the jobs that are ready, or will be first, the most urgent. */
const readyFirst: Choose = (unfinished, jobs, now) => {
  const firstReady = Math.min(...unfinished.map(({ readyMinute }) => readyMinute));
  return mostUrgent(
    unfinished.filter(({ readyMinute }) => readyMinute <= Math.max(now, firstReady)),
    jobs,
  );
};

/** The most urgent job; while it soaks, the most urgent of those that are done before it is ready. */
const heldFor: Choose = (unfinished, jobs, now) => {
  const urgent = mostUrgent(unfinished, jobs);
  if (urgent === undefined || urgent.readyMinute <= now) return urgent;
  const doneBefore = unfinished.filter((candidate) => {
    const start = Math.max(now, candidate.readyMinute);
    return start + (runOf(candidate, jobs)?.minutes ?? 0) <= urgent.readyMinute;
  });
  return mostUrgent(doneBefore, jobs) ?? urgent;
};

/** The job with the longest way to go after its next cycle; of equal ones the first given. */
function mostUrgent(candidates: readonly Waiting[], jobs: Jobs): Waiting | undefined {
  return candidates.reduce<Waiting | undefined>(
    (best, other) => (best === undefined || minutesBehind(other, jobs) > minutesBehind(best, jobs) ? other : best),
    undefined,
  );
}

function minutesBehind({ job, cycle }: Waiting, jobs: Jobs): number {
  const left = (jobs[job] ?? []).slice(cycle);
  const soaking = left.slice(0, -1).reduce((sum, { soakMinutes }) => sum + soakMinutes, 0);
  return left.slice(1).reduce((sum, { minutes }) => sum + minutes, soaking);
}
