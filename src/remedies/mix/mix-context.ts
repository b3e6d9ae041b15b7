/** What every kind of remedy is made from: a zone in its plan and in its season. */
import { isoDate } from '../../engine/calendar.ts';
import type { Catalogue } from '../../engine/line/catalogue.ts';
import type { ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import { zoneIn } from '../../plan/edits/find.ts';
import type { Plan, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { type LineInSeason, lineInSeason } from './line-in-season.ts';
import { type OwnMinutes, ownMinutes } from './own-minutes.ts';

export interface MixContext {
  readonly plan: Plan;
  readonly season: Season;
  readonly catalogue: Catalogue;
  readonly zone: PlanZone;
  readonly zoneSeason: ZoneSeason;
  /** Of each planting, in the zone's order. */
  readonly needs: readonly OwnMinutes[];
  /** The plantings with the line that can still be changed; those without one are left out. */
  readonly laid: readonly LaidPlanting[];
}

export interface LaidPlanting extends LineInSeason {
  readonly planting: PlanPlanting;
}

/** `season` is the plan's own, `comparison` the zone's in it. Throws a RangeError where the zone is not in it. */
export function mixContext(
  plan: Plan,
  season: Season,
  zoneId: string,
  catalogue: Catalogue,
  comparison?: ZoneComparison,
): MixContext {
  const zoneSeason = season.zones.find(({ zone }) => zone.id === zoneId);
  if (zoneSeason === undefined) throw new RangeError(`no zone "${zoneId}" in the season`);
  const zone = zoneIn(plan, zoneId);
  const lastDay = isoDate(seasonDays(plan.season).last);
  const laid = zone.plantings.flatMap((planting) => {
    const found = lineInSeason(planting, lastDay);
    return found === undefined ? [] : [{ planting, ...found }];
  });
  return { plan, season, catalogue, zone, zoneSeason, needs: ownMinutes(season, zoneId, comparison), laid };
}
