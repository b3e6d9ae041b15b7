/** The weeks of a problem, joined, so that a lasting one is told once. */

export interface Run {
  readonly firstWeek: number;
  readonly lastWeek: number;
  /** In order; there may be gaps. */
  readonly weeks: readonly number[];
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
