/** Minutes of a week as a zone's timer can be set to them. */
import { countDays } from '../engine/season/days-mask.ts';
import type { ZoneSeason } from '../engine/season/season.ts';
import { weekMask } from '../engine/season/week-masks.ts';
import { timerOf } from '../engine/season/week-timer.ts';
import { cyclesOf } from '../engine/season/zone-sum.ts';
import { zoneOrigin } from '../engine/season/zone-week.ts';

const MINUTES_OF_DAY = 1440;
/** Steps, as far as adding up fractions leaves them whole. */
const STEP_TOLERANCE = 1e-6;

/** What a timer runs in a week. */
export interface SettableRun {
  /** Of the whole week. */
  readonly minutes: number;
  readonly days: number;
  /** Of each day. */
  readonly cycles: number;
}

/**
 * The run nearest to `minutes` of a whole week, 0 to seven days, in equal cycles of whole steps of the timer on each watering day, of two
 * equally near the longer; `minutes` themselves where they are such a run. More than 0 is never nothing: at least the shortest run.
 */
export function settableRun(zone: ZoneSeason, week: number, minutes: number): SettableRun {
  const days = countDays(weekMask(zone.zone, week) || zone.zone.wateringDays);
  const step = zone.zone.timerStepMinutes;
  const wanted = minutes / (days * step);
  const nearest = Math.round(wanted);
  const timer = timerOf(zone, week);
  const cyclesAt = (steps: number) => cyclesOf(timer, steps * step);
  const most = Math.floor(MINUTES_OF_DAY / step + STEP_TOLERANCE);
  const fits = (steps: number) => steps > 0 && steps <= most && steps % cyclesAt(steps) === 0;
  const runOf = (steps: number) => ({ minutes: steps * step * days, days, cycles: cyclesAt(steps) });
  if (minutes === 0 || (Math.abs(wanted - nearest) < STEP_TOLERANCE && fits(nearest))) {
    return { ...runOf(nearest), minutes };
  }
  for (let away = 0; away <= most; away++) {
    const [more, fewer] = [nearest + away, nearest - away];
    const found = (wanted < nearest ? [fewer, more] : [more, fewer]).find(fits);
    if (found !== undefined) return runOf(found);
  }
  return { ...runOf(wanted), minutes };
}

/** What to set where minutes of a week by hand are between what the timer can be set to; undefined where it can. */
export function nearestSettable(zone: ZoneSeason, week: number): SettableRun | undefined {
  const minutes = zone.zone.choices.get(week)?.minutes;
  if (minutes === undefined || zoneOrigin(zone, week) !== 'hand-set') return undefined;
  const run = settableRun(zone, week, minutes);
  return run.minutes === minutes ? undefined : run;
}
