/** Zones that cannot run at once water on weekdays of their own, group by group. */
import { spread } from '../../../plan/spread.ts';
import type { NoticeInPlan, RemedyCandidate, ZoneWateringDays } from '../remedy.ts';
import { allowedWeekdays, wateringDaysEdit, weekdaysOfMask } from '../weekdays.ts';

export function flowTogetherCandidates({ season, notice }: NoticeInPlan): readonly RemedyCandidate[] {
  const groups = notice.groups ?? [];
  const allowed = allowedWeekdays(season);
  if (groups.length < 2 || groups.length > allowed.length) return [];
  const zones = new Map(season.garden.zones.map((zone) => [zone.id, zone]));
  const wateringDays = groups.flatMap((ids, group) => {
    const own = allowed.filter((_, day) => day % groups.length === group);
    return ids.map((zoneId): ZoneWateringDays => {
      const count = weekdaysOfMask(season, zones.get(zoneId)?.wateringDays ?? 0).length;
      return { zoneId, weekdays: spread(own, count) };
    });
  });
  return [{ kind: 'other-days', wateringDays, edit: wateringDaysEdit(wateringDays) }];
}
