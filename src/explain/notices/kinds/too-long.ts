import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z } from '../../../engine/season/season.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const RUN = MINUTES_ORIGINS.indexOf('run');
const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');
const DAY_MINUTES = 1440;
/** A run that fills its window but for rounding fits. */
const ROUNDING_MINUTES = 1e-6;

/**
 * Zones that would have to run longer than the hours in which water may run, by themselves and without the pauses between
 * cycles: one notice each. Beyond a whole day it is a danger, for the week cannot be run at all. What was really run did fit.
 */
export function tooLong({ garden, zones }: Season): readonly FoundNotice<'too-long'>[] {
  const windowMinutes = Math.min(DAY_MINUTES, 60 * garden.supply.windowHoursPerDay);
  return zones.flatMap(({ zone, figures, weeks }) => {
    const perDay = (week: number) => figures[Z.minutesPerDay * weeks + week] as number;
    const origin = (week: number) => figures[Z.origin * weeks + week];
    const isTooLong = (week: number) => origin(week) !== RUN && perDay(week) > windowMinutes + ROUNDING_MINUTES;
    return oneRunOf(weeksWhere(weeks, isTooLong)).map((run): FoundNotice<'too-long'> => {
      const minutesPerDay = run.weeks.reduce((most, week) => Math.max(most, perDay(week)), 0);
      return {
        kind: 'too-long',
        severity: minutesPerDay > DAY_MINUTES + ROUNDING_MINUTES ? 'danger' : 'warning',
        ...(run.weeks.every((week) => origin(week) === HAND_SET) ? { remedy: 'use-computed' } : {}),
        zoneId: zone.id,
        ...run,
        figures: { minutesPerDay, windowMinutes },
      };
    });
  });
}
