import type { Season } from '../season/season.ts';
import type { SupplyOutlook } from '../supply/season-supply.ts';

/** Whether the parts of a supply last a season; undefined for a part that there is not. */
export interface SupplyHold {
  /** The tank gives all that is drawn. */
  readonly tank: boolean | undefined;
  /** First day of the season on which the tank does not; undefined where it always does, or there is none. */
  readonly tankLastsDays: number | undefined;
  /** No week and no season passes its allowance. */
  readonly allowance: boolean | undefined;
}

/** What rounding may leave, L. */
const ROUNDING_L = 1e-6;

export function suppliesThatHold({ weather }: Season, { tank, allowance }: SupplyOutlook): SupplyHold {
  const empty = tank?.besidesL.findIndex((litres) => litres > ROUNDING_L) ?? -1;
  const isOver = allowance !== undefined && (allowance.weeksOver.length > 0 || allowance.firstWeekOverSeason >= 0);
  return {
    tank: tank && empty < 0,
    tankLastsDays: empty < 0 ? undefined : Math.min(empty, weather.days),
    allowance: allowance && !isOver,
  };
}
