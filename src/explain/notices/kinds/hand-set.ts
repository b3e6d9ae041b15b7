import { countDays } from '../../../engine/season/days-mask.ts';
import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { nearestRun } from '../../../engine/soil/cycle-and-soak.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');

/** Zones whose minutes were set by hand and differ from the computed ones by a timer step or more: one notice each. */
export function handSet({ zones }: Season): readonly FoundNotice<'hand-set'>[] {
  return zones.flatMap((zone) => {
    const { figures, weeks } = zone;
    const at = (field: number, week: number) => figures[field * weeks + week] as number;
    const differing = weeksWhere(
      weeks,
      (week) =>
        at(Z.origin, week) === HAND_SET &&
        Math.abs(at(Z.minutesPerDay, week) - computedPerDay(zone, week)) >= zone.zone.timerStepMinutes,
    );
    return oneRunOf(differing).map((run): FoundNotice<'hand-set'> => {
      const sum = (minutesOf: (week: number) => number) =>
        run.weeks.reduce((total, week) => total + minutesOf(week), 0);
      return {
        kind: 'hand-set',
        zoneId: zone.zone.id,
        ...run,
        figures: {
          minutes: sum((week) => at(Z.minutes, week)),
          computedMinutes: sum((week) => computedPerDay(zone, week) * countDays(zone.zone.wateringDays)),
        },
      };
    });
  });
}

/** Minutes a watering day that would run if none were set by hand. */
function computedPerDay({ zone, figures, weeks }: ZoneSeason, week: number): number {
  return nearestRun(figures[Z.minutesWanted * weeks + week] as number, zone).minutes;
}
