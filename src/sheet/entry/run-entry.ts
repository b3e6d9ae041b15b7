/** What really ran in a week, typed over it: each day's share and its shut-offs stay as they are logged, or as they were computed. */
import { isoDate } from '../../engine/calendar.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanDayRun } from '../../plan/schema/plan-schema.ts';
import { dayRunEdits, type RunWeek } from './run-edits.ts';

/** Minutes are logged to the hundredth; the last day takes what rounding leaves. */
const PER_MINUTE = 100;

/** The minutes that bring so many litres through the lines that were open; undefined where what ran brought none. */
export function runMinutesFor(litres: number, { zone, week }: RunWeek): number | undefined {
  const [ran, brought] = [zoneFigure(zone, 'minutes', week), zoneFigure(zone, 'litres', week)];
  return brought > 0 ? Math.round((litres * ran * PER_MINUTE) / brought) / PER_MINUTE : undefined;
}

/** The week's minutes by day; as a total where nothing ran in it, so that no day is known. */
export function runMinutesEdit(minutes: number, at: RunWeek): Edit {
  const where = { zone: at.zone.zone.id, week: isoDate(at.firstDay) };
  const logged = dayRunEdits(at);
  const ran = zoneFigure(at.zone, 'minutes', at.week);
  const last = logged.at(-1);
  if (last === undefined || !(ran > 0)) return { type: 'set-minutes-run', ...where, minutes };
  const days: Record<string, PlanDayRun> = {};
  let left = Math.round(minutes * PER_MINUTE);
  for (const edit of logged) {
    const { run, day } = edit;
    if (run === undefined) continue;
    const share = edit === last ? left : Math.min(left, Math.round((minutes * PER_MINUTE * run.minutes) / ran));
    left -= share;
    days[day] = { ...run, minutes: share / PER_MINUTE };
  }
  return { type: 'set-week-run', ...where, run: { days } };
}
