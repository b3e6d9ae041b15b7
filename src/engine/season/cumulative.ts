/** Running totals of supply and demand over the weeks, for the chart and its table. Litres. */
import { type SeasonTotals, SUPPLY_FIELDS, type ZoneSeason } from './season.ts';

export interface Cumulative {
  readonly weeks: number;
  /** Effective rain that stayed in the root zone. */
  readonly rain: Float64Array;
  /** Irrigation that stayed in the root zone. */
  readonly irrigation: Float64Array;
  /** Irrigation as the meter would show it, with what was lost on the way and what drained. */
  readonly irrigationGross: Float64Array;
  /** Water taken out of the soil's own store since the season began; 0 where the store has grown. */
  readonly fromSoil: Float64Array;
  /** What the plants would use if never short. */
  readonly demand: Float64Array;
  /** Demand that was not met: demand less what the plants used. Never falls. */
  readonly unmet: Float64Array;
  /** First week in which demand went unmet, -1 where it never did. */
  readonly firstShortWeek: number;
}

/** Less than this is rounding, not a shortfall. */
const LEAST_SHORT_LITRES = 0.5;

/** Running totals of one zone, or of the whole garden. */
export function cumulative({ weeks, figures }: ZoneSeason | SeasonTotals): Cumulative {
  const running = (index: number, sign = 1) => {
    const sums = new Float64Array(weeks);
    let sum = 0;
    for (let week = 0; week < weeks; week++) {
      sum += sign * figures.at(index, week);
      sums[week] = sum;
    }
    return sums;
  };
  const demand = running(SUPPLY_FIELDS.demandLitres);
  const used = running(SUPPLY_FIELDS.usedLitres);
  const unmet = demand.map((litres, week) => Math.max(0, litres - (used[week] as number)));
  return {
    weeks,
    rain: running(SUPPLY_FIELDS.rainStayedLitres),
    irrigation: running(SUPPLY_FIELDS.irrigationStayedLitres),
    irrigationGross: running(SUPPLY_FIELDS.litres),
    fromSoil: running(SUPPLY_FIELDS.storageLitres, -1).map((litres) => Math.max(0, litres)),
    demand,
    unmet,
    firstShortWeek: unmet.findIndex((litres) => litres > LEAST_SHORT_LITRES),
  };
}
