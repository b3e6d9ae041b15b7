/** Zones that cannot run at once water on weekdays of their own, group by group. */
import type { Edit } from '../../../plan/edits/edit.ts';
import { spread } from '../../../plan/spread.ts';
import type { Candidate, Noticed } from '../remedy.ts';
import { allowedWeekdays, weekdaysOfMask } from '../weekdays.ts';

export function flowTogetherCandidates({ season, notice }: Noticed): readonly Candidate[] {
  const groups = notice.groups ?? [];
  const allowed = allowedWeekdays(season);
  if (groups.length < 2 || groups.length > allowed.length) return [];
  const zones = new Map(season.garden.zones.map((zone) => [zone.id, zone]));
  const edits = groups.flatMap((ids, place) => {
    const own = allowed.filter((_, day) => day % groups.length === place);
    return ids.map((id): Edit => {
      const count = weekdaysOfMask(season, zones.get(id)?.wateringDays ?? 0).length;
      return { type: 'change-zone', zone: id, change: { wateringDays: [...spread(own, count)] } };
    });
  });
  return [
    {
      kind: 'other-days',
      figures: { groups: groups.length },
      zoneIds: groups.flat(),
      edit: { type: 'together', action: 'set-watering-days', edits },
    },
  ];
}
