import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { minutesOnDay } from '../../../engine/season/zone-week.ts';
import { windowHoursOn } from '../../../engine/supply/window-hours.ts';
import type { FoundNotice, NoticeFigures } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const RUN = MINUTES_ORIGINS.indexOf('run');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const DAY_MINUTES = 1440;
const OFFSETS = [0, 1, 2, 3, 4, 5, 6] as const;
/** A run that fills its window but for rounding fits. */
const ROUNDING_MINUTES = 1e-6;

/**
 * Zones that would have to run longer than the hours in which water may run, by themselves and without the pauses between
 * cycles: one notice each. Beyond a whole day it is a danger, for the week cannot be run at all. What was really run did fit.
 */
export function tooLong({ garden, zones }: Season): readonly FoundNotice<'too-long'>[] {
  return zones.flatMap((zone) => {
    const { figures, weeks } = zone;
    const origin = (week: number) => figures.at(Z.origin, week);
    const isTooLong = (week: number) => origin(week) !== RUN && longDays(garden, zone, week).length > 0;
    return oneRunOf(weeksWhere(weeks, isTooLong)).map((run): FoundNotice<'too-long'> => {
      const days = run.weeks.flatMap((week) => longDays(garden, zone, week));
      const worst = days.reduce((most, day) => (shareThatFits(day) < shareThatFits(most) ? day : most));
      const isBeyondDay = days.some(({ minutesPerDay }) => minutesPerDay > DAY_MINUTES + ROUNDING_MINUTES);
      return {
        kind: 'too-long',
        severity: isBeyondDay ? 'danger' : 'warning',
        ...(run.weeks.every((week) => origin(week) === HAND_SET) ? { remedy: 'use-computed' } : {}),
        zoneId: zone.zone.id,
        ...run,
        figures: worst,
      };
    });
  });
}

type LongDay = NoticeFigures['too-long'];

const shareThatFits = ({ minutesPerDay, windowMinutes }: LongDay) => windowMinutes / minutesPerDay;

/** Days of a week that run longer than the hours in which water may run; not those on which none may run at all, which are told by themselves. */
function longDays(garden: Season['garden'], zone: ZoneSeason, week: number): readonly LongDay[] {
  return OFFSETS.map((offset) => 7 * week + offset)
    .map((day) => ({
      minutesPerDay: minutesOnDay(zone, day),
      windowMinutes: Math.min(DAY_MINUTES, 60 * windowHoursOn(garden, day)),
    }))
    .filter(
      ({ minutesPerDay, windowMinutes }) => windowMinutes > 0 && minutesPerDay > windowMinutes + ROUNDING_MINUTES,
    );
}
