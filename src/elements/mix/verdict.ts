/** How a planting fares in its zone, in one word and the weeks that it rests on. */
import type { PlantingComparison } from '../../engine/mix/compare-zone.ts';

/** `over` and `short` may both be said of one planting. `more`: more than it needs, and not so much that it is overwatered. */
export type Verdict = 'over' | 'short' | 'more' | 'right' | 'none' | 'unplanted';

export interface PlantingVerdict {
  readonly verdicts: readonly Verdict[];
  readonly overWeeks: readonly number[];
  readonly shortWeeks: readonly number[];
}

/** A planting is overwatered from here on: it gets half as much again as it needs. */
const OVERWATERED = 1.5;

/** Less over its need is what any timer's step may cost. */
const MORE = 1.1;

/** Depths below this are not seen in any figure. */
const LEAST_MM = 0.05;

/** `inGround`: whether it is in the ground on any day of the season. */
export function plantingVerdict(planting: PlantingComparison, inGround: boolean): PlantingVerdict {
  const { drainedMm, neededMm, receivedMm, shortDays } = planting;
  const weeks = [...receivedMm.keys()];
  const isOver = (week: number) =>
    (drainedMm[week] as number) > LEAST_MM && (receivedMm[week] as number) >= OVERWATERED * (neededMm[week] as number);
  const overWeeks = weeks.filter(isOver);
  const shortWeeks = weeks.filter((week) => (shortDays[week] as number) > 0);
  return { verdicts: verdictsOf(planting, inGround), overWeeks, shortWeeks };
}

function verdictsOf(planting: PlantingComparison, inGround: boolean): readonly Verdict[] {
  const { shortDayCount, neededLitres, receivedLitres, areaM2, rateMmPerHour } = planting;
  if (!inGround) return ['unplanted'];
  if (rateMmPerHour === 0 && shortDayCount > 0) return ['none'];
  const verdicts: Verdict[] = [];
  if (shortDayCount > 0) verdicts.push('short');
  const gets = (times: number) => receivedLitres / areaM2 > LEAST_MM && receivedLitres >= times * neededLitres;
  if (gets(OVERWATERED)) verdicts.push('over');
  if (verdicts.length > 0) return verdicts;
  return [gets(MORE) ? 'more' : 'right'];
}
