import type { Season } from '../../../engine/season/season.ts';
import { seasonSupply, type TankOutlook } from '../../../engine/supply/season-supply.ts';
import type { FoundNotice, NoticeFigures } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

/** Less than this in a week is rounding, L. */
const LEAST_LITRES = 0.05;

/**
 * A tank that does not last: one notice, for the weeks in which it lacks water, with the litres that must come from
 * elsewhere and the size that would last, or what would be missing with any. A note where the mains make it up, else a
 * danger.
 */
export function tankDry(season: Season): readonly FoundNotice<'tank-dry'>[] {
  const { tank, drawL } = seasonSupply(season);
  if (tank === undefined) return [];
  const hasMains = season.garden.supply.sources.length > 0;
  const lacking = (week: number) =>
    tank.besidesL.slice(7 * week, 7 * week + 7).reduce((sum, litres) => sum + litres, 0) > LEAST_LITRES;
  return oneRunOf(weeksWhere(season.garden.span.weeks, lacking)).map(
    (run): FoundNotice<'tank-dry'> => ({
      kind: 'tank-dry',
      ...(hasMains ? { severity: 'note' } : {}),
      ...run,
      figures: { ...litresOf(tank, drawL), firstDryDay: tank.firstDryDay },
    }),
  );
}

function litresOf(
  { besidesL, capacityL, overflowL, sizeThatLasts: size }: TankOutlook,
  drawL: Float64Array,
): Omit<NoticeFigures['tank-dry'], 'firstDryDay'> {
  const sum = (daily: Float64Array) => daily.reduce((total, litres) => total + litres, 0);
  return {
    drawnLitres: sum(drawL),
    mainsLitres: sum(besidesL),
    overflowLitres: sum(overflowL),
    capacityLitres: capacityL,
    ...(size.lasts ? { sizeLitres: size.capacityL } : { missingLitres: size.missingL }),
  };
}
