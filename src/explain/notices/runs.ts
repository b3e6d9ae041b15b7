/** Weeks in a row, joined, so that a lasting problem is told once. */

export interface Run {
  readonly firstWeek: number;
  readonly lastWeek: number;
  /** In order; a collapsed run has gaps. */
  readonly weeks: readonly number[];
}

/** A problem that comes back more often than this is told once for all its weeks. */
const MOST_RUNS = 2;

/** Runs of weeks that follow one another, of weeks in order. */
export function runsOf(weeks: readonly number[]): readonly Run[] {
  const runs: number[][] = [];
  for (const week of weeks) {
    const run = runs.at(-1);
    if (run?.at(-1) === week - 1) run.push(week);
    else runs.push([week]);
  }
  return runs.map(runOf);
}

/** The same; where there are more than two, one that holds them all. */
export function fewRunsOf(weeks: readonly number[]): readonly Run[] {
  const runs = runsOf(weeks);
  return runs.length > MOST_RUNS ? [runOf(weeks)] : runs;
}

/** All the weeks as one run, if there are any. */
export function oneRunOf(weeks: readonly number[]): readonly Run[] {
  return weeks.length === 0 ? [] : [runOf(weeks)];
}

function runOf(weeks: readonly number[]): Run {
  return { firstWeek: weeks[0] as number, lastWeek: weeks.at(-1) as number, weeks };
}

/** Weeks of a season that are wanted, in order. */
export function weeksWhere(weeks: number, isWanted: (week: number) => boolean): readonly number[] {
  const wanted: number[] = [];
  for (let week = 0; week < weeks; week++) if (isWanted(week)) wanted.push(week);
  return wanted;
}
