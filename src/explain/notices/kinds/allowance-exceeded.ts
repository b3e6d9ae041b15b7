import type { Season } from '../../../engine/season/season.ts';
import { seasonSupply } from '../../../engine/supply/season-supply.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

/**
 * Water used beyond an allowance: one notice for the weeks that pass a week's, one for the season's, from the week in which
 * it is passed.
 */
export function allowanceExceeded(season: Season): readonly FoundNotice<'allowance-exceeded'>[] {
  return [...ofWeeks(season), ...ofSeason(season)];
}

function ofWeeks(season: Season): readonly FoundNotice<'allowance-exceeded'>[] {
  const { allowance, meteredL } = seasonSupply(season);
  const weekAllowanceLitres = season.garden.supply.allowanceLitresPerWeek;
  if (allowance === undefined || weekAllowanceLitres === undefined) return [];
  return oneRunOf(allowance.weeksOver).map((run): FoundNotice<'allowance-exceeded'> => {
    const used = run.weeks.map((week) => meteredL[week] as number);
    const overLitres = used.reduce((sum, litres) => sum + litres - weekAllowanceLitres, 0);
    return {
      kind: 'allowance-exceeded',
      ...run,
      figures: { usedLitres: Math.max(...used), weekAllowanceLitres, overLitres },
    };
  });
}

function ofSeason(season: Season): readonly FoundNotice<'allowance-exceeded'>[] {
  const { allowance } = seasonSupply(season);
  const seasonAllowanceLitres = season.garden.supply.allowanceLitresPerSeason;
  if (allowance === undefined || seasonAllowanceLitres === undefined || allowance.firstWeekOverSeason < 0) return [];
  const usedLitres = allowance.cumulativeL.at(-1) as number;
  const weeks = weeksWhere(season.garden.span.weeks, (week) => week >= allowance.firstWeekOverSeason);
  return oneRunOf(weeks).map(
    (run): FoundNotice<'allowance-exceeded'> => ({
      kind: 'allowance-exceeded',
      ...run,
      figures: { usedLitres, seasonAllowanceLitres, overLitres: usedLitres - seasonAllowanceLitres },
    }),
  );
}
