import { requireNumber } from '../require-number.ts';

export interface AllowanceInput {
  /** Water used in each week of the season, L. */
  readonly usedL: ArrayLike<number>;
  readonly perWeekL?: number | undefined;
  readonly perSeasonL?: number | undefined;
}

export interface AllowanceUse {
  /** Used from the first week to the end of each. */
  readonly cumulativeL: Float64Array;
  /** Weeks (index) that use more than a week's allowance. */
  readonly weeksOver: readonly number[];
  /** First week (index) by whose end the season's allowance is passed, or -1. */
  readonly firstWeekOverSeason: number;
  /** What is left of the season's allowance at the end; negative: over by so much. Undefined where there is none. */
  readonly seasonLeftL: number | undefined;
}

/** What rounding may add before an allowance counts as passed. */
const ROUNDING = 1e-9;

/**
 * Water used against a weekly and a season's allowance. To use an allowance up exactly is within it.
 *
 * @throws RangeError where a value is negative
 */
export function allowanceUse({ usedL, perWeekL, perSeasonL }: AllowanceInput): AllowanceUse {
  if (perWeekL !== undefined) requireNumber('allowance of a week (L)', perWeekL, { atLeast: 0 });
  if (perSeasonL !== undefined) requireNumber('allowance of the season (L)', perSeasonL, { atLeast: 0 });
  const over = (used: number, allowed: number | undefined) => allowed !== undefined && used > allowed * (1 + ROUNDING);
  const cumulativeL = new Float64Array(usedL.length);
  const weeksOver: number[] = [];
  let total = 0;
  for (let week = 0; week < usedL.length; week += 1) {
    const used = usedL[week] as number;
    requireNumber(`water used in week ${week + 1} (L)`, used, { atLeast: 0 });
    total += used;
    cumulativeL[week] = total;
    if (over(used, perWeekL)) weeksOver.push(week);
  }
  const firstWeekOverSeason = cumulativeL.findIndex((used) => over(used, perSeasonL));
  return {
    cumulativeL,
    weeksOver,
    firstWeekOverSeason,
    seasonLeftL: perSeasonL === undefined ? undefined : perSeasonL - total,
  };
}
