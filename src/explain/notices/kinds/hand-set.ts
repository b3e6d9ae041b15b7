import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { splitIntoCycles } from '../../../engine/soil/cycle-and-soak.ts';
import type { Notice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';

const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');

/** Zones whose minutes were set by hand and differ from the calculation by a timer step or more: one notice each. */
export function handSet({ zones }: Season): readonly Notice[] {
  return zones.flatMap((zone) => {
    const { figures, weeks } = zone;
    const at = (field: number, week: number) => figures[field * weeks + week] as number;
    const differing = weeksWhere(
      weeks,
      (week) =>
        at(Z.origin, week) === HAND_SET &&
        Math.abs(at(Z.minutesPerDay, week) - calculatedPerDay(zone, week)) >= zone.zone.timerStepMinutes,
    );
    return oneRunOf(differing).map((run): Notice => {
      const sum = (minutesOf: (week: number) => number) =>
        run.weeks.reduce((total, week) => total + minutesOf(week), 0);
      return {
        kind: 'hand-set',
        severity: 'note',
        remedy: 'give-back',
        zoneId: zone.zone.id,
        ...run,
        figures: {
          minutes: sum((week) => at(Z.minutes, week)),
          calculatedMinutes: sum((week) => calculatedPerDay(zone, week) * wateringDays(zone)),
        },
      };
    });
  });
}

/** Minutes a watering day that would run if they were given back. */
function calculatedPerDay({ zone, figures, weeks }: ZoneSeason, week: number): number {
  const { longestCycleMinutes, timerStepMinutes } = zone;
  const minutes = figures[Z.minutesWanted * weeks + week] as number;
  return splitIntoCycles({ minutes, longestCycleMinutes, timerStepMinutes }).minutes;
}

function wateringDays({ zone }: ZoneSeason): number {
  return [0, 1, 2, 3, 4, 5, 6].filter((offset) => (zone.wateringDays >> offset) & 1).length;
}
