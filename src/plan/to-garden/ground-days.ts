/** First and last day of a planting in the ground. */
import { type DayNumber, dayNumber } from '../../engine/calendar.ts';
import { isAnnualCrop } from '../../engine/plants/find-crop.ts';
import type { PlanPlanting } from '../schema/plan-schema.ts';
import { growthDays } from './coefficient.ts';

export interface GroundDays {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

/**
 * As the plan says; where it is silent, an annual crop stands from its planting day to the end of its last stage, everything else
 * through the whole season.
 */
export function groundDays(
  { inGround, need }: PlanPlanting,
  season: { first: DayNumber; last: DayNumber },
): GroundDays {
  const from = inGround?.from === undefined ? undefined : dayNumber(inGround.from);
  const to = inGround?.to === undefined ? undefined : dayNumber(inGround.to);
  if (need.kind !== 'crop' || !isAnnualCrop(need.crop)) return { from: from ?? season.first, to: to ?? season.last };
  const planted = dayNumber(need.plantedOn);
  return { from: from ?? planted, to: to ?? planted + growthDays(need) - 1 };
}
