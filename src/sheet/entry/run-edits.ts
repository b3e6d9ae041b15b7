/** What a zone runs in a week, as its season has it, as an edit of the log: by day, with the shut-offs that are open. */
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { minutesOnDay, runMask } from '../../engine/season/zone-week.ts';
import type { DayRunEdit, Edit } from '../../plan/edits/edit.ts';
import type { PlanDayRun } from '../../plan/schema/plan-schema.ts';

/** A zone's week that begins on a day. */
export interface RunWeek {
  readonly zone: ZoneSeason;
  readonly week: number;
  readonly firstDay: DayNumber;
}

/** Of a week of which nothing is logged yet; a week without a run is logged as one of no minutes. */
export function weekRunEdit(at: RunWeek): Edit {
  const edits = dayRunEdits(at);
  if (edits.length > 0) return { type: 'together', edits };
  return { type: 'set-minutes-run', zone: at.zone.zone.id, week: isoDate(at.firstDay), minutes: 0 };
}

/** One for each day on which the zone runs. */
export function dayRunEdits(at: RunWeek): readonly DayRunEdit[] {
  const mask = runMask(at.zone, at.week);
  return [0, 1, 2, 3, 4, 5, 6]
    .filter((day) => (mask >> day) & 1)
    .map((day) => ({
      type: 'set-day-run',
      zone: at.zone.zone.id,
      day: isoDate(at.firstDay + day),
      run: dayRunOf(at, day),
    }));
}

/** What the zone runs on a day of the week, 0 = its first. Shut-offs are named where there are any. */
export function dayRunOf({ zone, week }: RunWeek, day: number): PlanDayRun {
  const minutes = minutesOnDay(zone, 7 * week + day);
  const turned = zone.plantings.filter(({ planting }) => planting.hasShutOff);
  if (turned.length === 0) return { minutes };
  const open = turned.filter((each) => (plantingFigure(each, 'openMask', week) >> day) & 1);
  return { minutes, open: open.map(({ planting }) => planting.id) };
}
