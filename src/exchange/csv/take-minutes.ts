/** Minutes that a table has of a zone's week, as changes of the plan: set by hand, really run, or closed. */
import { dayNumber } from '../../engine/calendar.ts';
import type { MinutesOrigin, ZoneSeason } from '../../engine/season/season.ts';
import { settableRun } from '../../explain/settable-minutes.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { type RecordsInto, SAME_FIGURE } from './week-records.ts';

/** Minutes of a zone's week as a table has them. */
export interface Figure {
  readonly zone: string;
  /** Of the season, from 0. */
  readonly week: number;
  readonly minutes: number;
  /** What its row says of them, and what the season has now. */
  readonly marked: MinutesOrigin | undefined;
  readonly origin: MinutesOrigin | undefined;
}

interface MinutesFound extends Figure {
  readonly line: number;
  readonly value: string;
  /** Of the zone. */
  readonly name: string;
  /** The week's first. */
  readonly day: string;
}

/**
 * `computed`: the zone's season, where it is known. Minutes to be set become what its timer can be set to, as those do that are typed.
 */
export function takeMinutes(
  { line, value, zone, week, name, day, minutes, marked, origin }: MinutesFound,
  computed: ZoneSeason | undefined,
  into: RecordsInto,
): void {
  const { plan, changes, edits, faults } = into;
  const change = { zone: name, day, to: minutes };
  const from = readWeek(plan.choices?.[zone], plan.season, day)?.minutes;
  const held = origin && HELD[origin];
  if (marked === 'run') {
    changes.push({ ...change, reading: 'minutesRun', from: undefined });
    edits.push({ type: 'set-minutes-run', zone, week: day, minutes });
  } else if (held !== undefined) {
    faults.push({ code: held, line, value, weekStart: dayNumber(day) });
  } else if (marked === 'closed') {
    changes.push({ ...change, reading: 'closed', from: undefined, to: 0 });
    edits.push({ type: 'close-week', zone, week: day, closed: true });
  } else if (from === undefined || Math.abs(from - minutes) >= SAME_FIGURE) {
    const run = computed && settableRun(computed, week, minutes);
    const to = run?.minutes ?? minutes;
    if (to === from) return;
    const timer = computed && run && to !== minutes && { ...run, stepMinutes: computed.zone.timerStepMinutes };
    changes.push({ ...change, reading: 'minutes', from, to, ...(timer && { timer, written: minutes }) });
    edits.push({ type: 'set-minutes', zone, week: day, minutes: to });
  }
}

/** Weeks in which minutes set by hand would change nothing. */
const HELD: Partial<Record<MinutesOrigin, 'week-closed' | 'week-run'>> = { closed: 'week-closed', run: 'week-run' };
