import { countDays } from '../../../engine/season/days-mask.ts';
import { MINUTES_ORIGINS, type Season, ZONE_FIELDS as Z, type ZoneSeason } from '../../../engine/season/season.ts';
import { heldMask } from '../../../engine/season/week-masks.ts';
import type { FoundNotice } from '../notice.ts';
import { oneRunOf, weeksWhere } from '../runs.ts';
import { shortageWeeks } from '../shortage.ts';
import { computedMinutes } from '../timer-minutes.ts';
import { over } from './over.ts';

const HAND_SET = MINUTES_ORIGINS.indexOf('hand-set');

/**
 * Zones whose minutes were set by hand and differ from the computed ones by a timer step or more: one notice each. Not of weeks in
 * which that leaves a planting short or overwatered, which have a notice of their own.
 */
export function handSet(season: Season): readonly FoundNotice<'hand-set'>[] {
  return season.zones.flatMap((zone) => {
    const { figures, weeks } = zone;
    const at = (field: number, week: number) => figures.at(field, week);
    const told = toldElsewhere(season, zone);
    const differing = weeksWhere(
      weeks,
      (week) =>
        at(Z.origin, week) === HAND_SET &&
        !told.has(week) &&
        Math.abs(at(Z.minutesPerDay, week) - computedMinutes(zone, week)) >= zone.zone.timerStepMinutes,
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
          computedMinutes: sum((week) => computedMinutes(zone, week) * countDays(heldMask(zone.zone, week))),
        },
      };
    });
  });
}

function toldElsewhere(season: Season, zone: ZoneSeason): ReadonlySet<number> {
  const overByHand = over({ zones: [zone] }).filter(({ kind }) => kind === 'over-by-hand');
  return new Set([
    ...zone.plantings.flatMap((own) => shortageWeeks(season, zone, own)['by-hand'] ?? []),
    ...overByHand.flatMap(({ weeks }) => weeks ?? []),
  ]);
}
