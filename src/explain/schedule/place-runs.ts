/** Runs of a week put into the day one after another: each starts at the same minute on all of its days. */

/** What a zone runs on each of its days of a week. */
export interface WeeklyRun {
  /** Bit 0 = the week's first day. */
  readonly mask: number;
  readonly minutesPerCycle: number;
  readonly cycles: number;
  /** Least pause from a cycle's end to the start of the next. */
  readonly pauseMinutes: number;
  readonly flowLpm: number;
}

export interface PlacedRun {
  /** Of each cycle, from the window's opening. */
  readonly startMinutes: readonly number[];
  readonly endMinute: number;
}

interface Placed {
  readonly mask: number;
  readonly start: number;
  readonly end: number;
  readonly flowLpm: number;
}

/** Two times this close are the same. */
const SAME_MINUTE = 1e-6;

/**
 * Each run as early as it fits, in the order given, on whole minutes: two that share a day never overlap, unless together they ask no
 * more than `limitLpm`; cycles keep their pause, in which a shorter run may find its place.
 *
 * @param limitLpm 0: one zone at a time
 */
export function placeRuns(runs: readonly WeeklyRun[], limitLpm: number): readonly PlacedRun[] {
  const placed: Placed[] = [];
  return runs.map((run) => {
    const start = earliest(run, placed, limitLpm);
    const cycles = cyclesFrom(run, start);
    placed.push(...cycles);
    return { startMinutes: cycles.map((cycle) => cycle.start), endMinute: cycles.at(-1)?.end ?? start };
  });
}

function cyclesFrom({ mask, minutesPerCycle, cycles, pauseMinutes, flowLpm }: WeeklyRun, start: number): Placed[] {
  const step = Math.ceil(minutesPerCycle + pauseMinutes - SAME_MINUTE);
  return Array.from({ length: cycles }, (_, cycle) => {
    const from = start + cycle * step;
    return { mask, start: from, end: from + minutesPerCycle, flowLpm };
  });
}

/** The first whole minute from which all cycles fit: the opening, or one at which something that is in the way has ended. */
function earliest(run: WeeklyRun, placed: readonly Placed[], limitLpm: number): number {
  let start = 0;
  for (;;) {
    const cycles = cyclesFrom(run, start);
    let later = start;
    for (const cycle of cycles) {
      const end = endOfConflict(cycle, placed, limitLpm);
      if (end !== undefined) later = Math.max(later, start + Math.ceil(end - cycle.start - SAME_MINUTE));
    }
    if (later === start) return start;
    start = later;
  }
}

/** When the first thing ends that keeps a cycle from running where it is; undefined where nothing does. */
function endOfConflict(cycle: Placed, placed: readonly Placed[], limitLpm: number): number | undefined {
  const beside = placed.filter(
    ({ mask, start, end }) =>
      (mask & cycle.mask) !== 0 && start < cycle.end - SAME_MINUTE && end > cycle.start + SAME_MINUTE,
  );
  if (beside.length === 0) return undefined;
  if (mostFlow(cycle, beside) + cycle.flowLpm <= limitLpm) return undefined;
  return Math.min(...beside.map(({ end }) => end));
}

/** The greatest flow of what runs beside a cycle, on any of its days and at any minute. */
function mostFlow(cycle: Placed, beside: readonly Placed[]): number {
  const minutes = [cycle.start, ...beside.map(({ start }) => start).filter((start) => start > cycle.start)];
  let most = 0;
  for (let day = 0; day < 7; day++) {
    const onDay = beside.filter(({ mask }) => (mask & cycle.mask & (1 << day)) !== 0);
    for (const minute of minutes) {
      const running = onDay.filter(({ start, end }) => start <= minute + SAME_MINUTE && end > minute + SAME_MINUTE);
      most = Math.max(
        most,
        running.reduce((sum, { flowLpm }) => sum + flowLpm, 0),
      );
    }
  }
  return most;
}
