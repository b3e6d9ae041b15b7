/** Which job's next cycle to start: the orders that `interleave` tries. */

export interface CycleRun {
  readonly minutes: number;
  /** Least pause from this cycle's end to the start of the next one of the same job. */
  readonly soakMinutes: number;
}

/** The jobs, and how far each has come at some minute. */
export interface Progress {
  readonly jobs: Jobs;
  /** Of each job, by its next cycle: minutes from that cycle's end to the job's, pauses and all. */
  readonly behind: readonly (readonly number[])[];
  /** Of each job: its next cycle, and the minute from which that may start. */
  readonly cycle: number[];
  readonly readyMinute: number[];
}

export type Jobs = readonly (readonly CycleRun[])[];
/** The job whose next cycle is started next, or -1 where all are done. */
export type Choose = (progress: Progress, now: number) => number;

/** Of each cycle of a job: minutes from its end to the job's. */
export function minutesBehind(job: readonly CycleRun[]): number[] {
  const behind = job.map(() => 0);
  for (let cycle = job.length - 2; cycle >= 0; cycle -= 1) {
    const { soakMinutes } = job[cycle] as CycleRun;
    behind[cycle] = soakMinutes + (job[cycle + 1] as CycleRun).minutes + (behind[cycle + 1] as number);
  }
  return behind;
}

function isUnfinished({ jobs, cycle }: Progress, job: number): boolean {
  return (cycle[job] as number) < (jobs[job] as readonly CycleRun[]).length;
}

/** The job that has run the fewest cycles. */
export const leastCycle: Choose = (progress) => {
  let least = -1;
  for (let job = 0; job < progress.jobs.length; job += 1) {
    const cycle = progress.cycle[job] as number;
    if (isUnfinished(progress, job) && (least < 0 || cycle < (progress.cycle[least] as number))) least = job;
  }
  return least;
};

export const inTurn: Choose = (progress) => progress.jobs.findIndex((_, job) => isUnfinished(progress, job));

/** Of the jobs that are ready, or will be first, the most urgent. */
export const readyFirst: Choose = (progress, now) => {
  let firstReady = Number.POSITIVE_INFINITY;
  for (let job = 0; job < progress.jobs.length; job += 1) {
    if (isUnfinished(progress, job)) firstReady = Math.min(firstReady, progress.readyMinute[job] as number);
  }
  const latest = Math.max(now, firstReady);
  return mostUrgent(progress, (job) => (progress.readyMinute[job] as number) <= latest);
};

/** The most urgent job; while it soaks, the most urgent of those that are done before it is ready. */
export const heldFor: Choose = (progress, now) => {
  const { jobs, cycle, readyMinute } = progress;
  const urgent = mostUrgent(progress, () => true);
  const ready = readyMinute[urgent] ?? 0;
  if (ready <= now) return urgent;
  const before = mostUrgent(progress, (job) => {
    const { minutes } = (jobs[job] as readonly CycleRun[])[cycle[job] as number] as CycleRun;
    return Math.max(now, readyMinute[job] as number) + minutes <= ready;
  });
  return before < 0 ? urgent : before;
};

/** The unfinished job with the longest way to go after its next cycle; of equal ones the first given. */
function mostUrgent(progress: Progress, isCandidate: (job: number) => boolean): number {
  let urgent = -1;
  let most = -1;
  for (let job = 0; job < progress.jobs.length; job += 1) {
    if (!isUnfinished(progress, job)) continue;
    const behind = (progress.behind[job] as readonly number[])[progress.cycle[job] as number] as number;
    if (behind > most && isCandidate(job)) {
      most = behind;
      urgent = job;
    }
  }
  return urgent;
}
