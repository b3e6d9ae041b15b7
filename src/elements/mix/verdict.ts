/** How a planting fares in its zone, in one word and the weeks that it rests on. */
import type { PlantingComparison } from '../../engine/mix/compare-zone.ts';

/** `over` and `short` may both be said of one planting. */
export type Verdict = 'over' | 'short' | 'right' | 'none' | 'unplanted';

export interface PlantingVerdict {
  readonly verdicts: readonly Verdict[];
  readonly overWeeks: readonly number[];
  readonly shortWeeks: readonly number[];
}

/** A planting is overwatered from here on: a tenth of what it gets is lost. Less is what any timer's step may cost. */
const LOST_SHARE = 0.1;

/** Depths below this are not seen in any figure. */
const LEAST_MM = 0.05;

/** `inGround`: whether it is in the ground on any day of the season. */
export function plantingVerdict(planting: PlantingComparison, inGround: boolean): PlantingVerdict {
  const { drainedMm, receivedMm, shortDays } = planting;
  const weeks = [...receivedMm.keys()];
  const isOver = (week: number) => {
    const lost = drainedMm[week] as number;
    return lost > LEAST_MM && lost > LOST_SHARE * (receivedMm[week] as number);
  };
  const overWeeks = weeks.filter(isOver);
  const shortWeeks = weeks.filter((week) => (shortDays[week] as number) > 0);
  return { verdicts: verdictsOf(planting, inGround), overWeeks, shortWeeks };
}

function verdictsOf(planting: PlantingComparison, inGround: boolean): readonly Verdict[] {
  const { shortDayCount, drainedLitres, receivedLitres, rateMmPerHour } = planting;
  if (!inGround) return ['unplanted'];
  if (rateMmPerHour === 0 && shortDayCount > 0) return ['none'];
  const verdicts: Verdict[] = [];
  if (shortDayCount > 0) verdicts.push('short');
  if (drainedLitres > LOST_SHARE * receivedLitres) verdicts.push('over');
  return verdicts.length === 0 ? ['right'] : verdicts;
}
