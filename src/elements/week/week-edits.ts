/** Edits of what was run in a week: a day of a zone, all that is still open of a day or a week. */
import { type IsoDate, isoDate } from '../../engine/calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { heldMask } from '../../engine/season/week-masks.ts';
import { minutesOnDay } from '../../engine/season/zone-week.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanDayRun, PlanWeekRun } from '../../plan/schema/plan-schema.ts';
import { dayRunOf } from '../../sheet/entry/run-edits.ts';
import { DAYS, isClosed, openZones, runOf, type WeekContext } from './week-model.ts';

type DayRuns = Exclude<PlanWeekRun, number>;

/** A day's run as it stands, or another; without one the day is computed again. The other days stay as they are. */
export function dayEdit(context: WeekContext, zone: ZoneSeason, offset: number, run: PlanDayRun | undefined): Edit {
  const { view, firstDay } = context;
  const record = runOf(view, zone.zone.id, firstDay);
  const before: DayRuns =
    typeof record === 'object' ? record : record === undefined ? { days: {}, rest: 'computed' } : whole(context, zone);
  const { [isoDate(firstDay + offset)]: _gone, ...others } = before.days;
  const days = run === undefined ? others : { ...others, [isoDate(firstDay + offset)]: run };
  const rest = run === undefined ? { rest: 'computed' as const } : before.rest && { rest: before.rest };
  return weekEdit(context, zone, Object.keys(days).length === 0 ? undefined : { days: sorted(days), ...rest });
}

/** As it is planned, for several zones on one day. */
export function asPlannedOn(context: WeekContext, zones: readonly ZoneSeason[], offset: number): Edit {
  return logged(zones.map((zone) => dayEdit(context, zone, offset, runAsItStands(context, zone, offset))));
}

export function runAsItStands({ week, firstDay }: WeekContext, zone: ZoneSeason, offset: number): PlanDayRun {
  return dayRunOf({ zone, week, firstDay }, offset);
}

/** Whatever is not logged yet of the days up to one, as it is planned; nothing where that is all logged. */
export function asPlannedThrough(context: WeekContext, lastOffset: number): Edit | undefined {
  const { view, firstDay, week } = context;
  const edits = openZones(context).flatMap((zone) => {
    if (isClosed(context, zone)) return [];
    const record = runOf(view, zone.zone.id, firstDay);
    const known: DayRuns['days'] = typeof record === 'object' ? record.days : {};
    const missing = DAYS.filter((offset) => offset <= lastOffset && minutesOnDay(zone, 7 * week + offset) > 0)
      .filter((offset) => known[isoDate(firstDay + offset)] === undefined)
      .map((offset) => [isoDate(firstDay + offset), runAsItStands(context, zone, offset)] as const);
    if (missing.length === 0) return [];
    return [weekEdit(context, zone, { days: sorted({ ...known, ...Object.fromEntries(missing) }), rest: 'computed' })];
  });
  return edits.length === 0 ? undefined : logged(edits);
}

/** Writes all zones' weeks into the log as they stand; nothing where that is done. */
export function closingEdit(context: WeekContext): Edit | undefined {
  const edits = openZones(context)
    .filter((zone) => !isClosed(context, zone))
    .map((zone) => weekEdit(context, zone, whole(context, zone)));
  return edits.length === 0 ? undefined : { type: 'together', action: 'log-weeks', edits };
}

/** Every watering day and every other day that ran, with the shut-offs that were open. */
function whole(context: WeekContext, zone: ZoneSeason): DayRuns {
  const { week, firstDay } = context;
  const days = DAYS.filter(
    (offset) => (heldMask(zone.zone, week) >> offset) & 1 || minutesOnDay(zone, 7 * week + offset) > 0,
  );
  return {
    days: Object.fromEntries(
      days.map((offset) => [isoDate(firstDay + offset), runAsItStands(context, zone, offset)] as const),
    ),
  };
}

function weekEdit({ firstDay }: WeekContext, zone: ZoneSeason, run: PlanWeekRun | undefined): Edit {
  return { type: 'set-week-run', zone: zone.zone.id, week: isoDate(firstDay), run };
}

const logged = (edits: readonly Edit[]): Edit => ({ type: 'together', action: 'log-runs', edits });

function sorted(days: Readonly<Record<IsoDate, PlanDayRun>>): DayRuns['days'] {
  return Object.fromEntries(Object.entries(days).sort(([one], [other]) => (one < other ? -1 : 1)));
}
