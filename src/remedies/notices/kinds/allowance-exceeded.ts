/** An allowance that is passed: less water in the weeks concerned. */
import type { Season } from '../../../engine/season/season.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import { fewerMinutes } from '../fewer-minutes.ts';
import type { NoticeInPlan, RemedyCandidates } from '../remedy.ts';

export function allowanceExceededCandidates({
  plan,
  season,
  notice,
}: NoticeInPlan<'allowance-exceeded'>): RemedyCandidates {
  const isOfWeek = notice.figures.weekAllowanceLitres !== undefined;
  return fewerMinutes(plan, season, isOfWeek ? sharesOfWeeks : sharesOfSeason);
}

/** What a tank gives is not metered: what is too much is taken from all that is drawn. */
function sharesOfWeeks(season: Season): ReadonlyMap<number, number> {
  const { allowance, meteredL } = seasonSupply(season);
  const allowedL = season.garden.supply.allowanceLitresPerWeek ?? 0;
  const weeks = allowance?.weeksOver ?? [];
  return new Map(weeks.map((week) => [week, 1 - ((meteredL[week] as number) - allowedL) / drawnL(season, week)]));
}

/** Every week gives the same share. */
function sharesOfSeason(season: Season): ReadonlyMap<number, number> {
  const { allowance, drawL } = seasonSupply(season);
  const overL = -(allowance?.seasonLeftL ?? 0);
  if (!(overL > 0)) return new Map();
  const share = 1 - overL / drawL.reduce((sum, litres) => sum + litres, 0);
  return new Map(Array.from({ length: season.garden.span.weeks }, (_, week) => [week, share]));
}

function drawnL(season: Season, week: number): number {
  return seasonSupply(season)
    .drawL.slice(7 * week, 7 * week + 7)
    .reduce((sum, litres) => sum + litres, 0);
}
