/** Zones that cannot run at once water on weekdays of their own, group by group. */
import { spread } from '../../../plan/spread.ts';
import type { NoticeInPlan, RemedyCandidate, ZoneWateringDays } from '../remedy.ts';
import { allowedWeekdays, ownWeekdays, withDays, zoneOnDays } from '../weekdays.ts';

export function flowTogetherCandidates(of: NoticeInPlan): readonly RemedyCandidate[] {
  const { season, notice } = of;
  const groups = notice.groups ?? [];
  const allowed = allowedWeekdays(of);
  if (groups.length < 2 || groups.length > allowed.length) return [];
  const zones = new Map(season.garden.zones.map((zone) => [zone.id, zone]));
  const wateringDays = groups.flatMap((ids, group) => {
    const own = allowed.filter((_, day) => day % groups.length === group);
    return ids.flatMap((zoneId): readonly ZoneWateringDays[] => {
      const zone = zones.get(zoneId);
      return zone === undefined ? [] : [zoneOnDays(of, zoneId, spread(own, ownWeekdays(of, zone).length))];
    });
  });
  return [withDays(of, 'other-days', wateringDays)];
}
