/** A planting's weeks as they came out in an earlier season, for weeks in which nothing about it has moved. */
import { PLANTING_FIELDS as P, ZONE_FIELDS as Z } from './season.ts';

/** Of the same planting under the same weather and watering days, with the same efficiency. */
export interface EarlierWeeks {
  /** The planting's figures and those of the zone that it stood in. */
  readonly figures: Float64Array;
  readonly zoneFigures: Float64Array;
}

/** What a week is run with. */
export interface WeekStart {
  readonly depletionMm: number;
  readonly minutesPerDay: number;
  /** Days in the ground on which the line is open, bit 0 = the week's first day. */
  readonly openMask: number;
}

/** Whether a week that is run with this was run with the same before, to the last digit: then it comes out the same. */
export function wasRunAlike(before: EarlierWeeks, weeks: number, week: number, start: WeekStart): boolean {
  const at = (field: number) => before.figures[field * weeks + week] as number;
  return (
    at(P.groundDays) > 0 &&
    Object.is(at(P.depletionStartMm), start.depletionMm) &&
    at(P.openMask) === start.openMask &&
    Object.is(before.zoneFigures[Z.minutesPerDay * weeks + week], start.minutesPerDay)
  );
}
