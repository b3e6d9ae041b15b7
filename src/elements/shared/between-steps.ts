/** Minutes by hand that a zone's timer cannot be set to, as an older plan, or one with another timer, has them: what to set. */
import type { ZoneSeason } from '../../engine/season/season.ts';
import { nearestSettable } from '../../explain/settable-minutes.ts';
import { weekWords } from '../../language/en/week.ts';
import type { Format } from '../../language/format/format.ts';

/** Undefined where the timer can be set to them. */
export function betweenSteps(zone: ZoneSeason, week: number, format: Format): string | undefined {
  const run = nearestSettable(zone, week);
  if (run === undefined) return undefined;
  const { cycles, between } = weekWords(format.reader.language).today;
  const ofDay = run.minutes / run.days;
  const amount = run.cycles > 1 ? cycles(format, run.cycles, ofDay / run.cycles) : format.minutes(ofDay);
  return between(format, zone.zone.timerStepMinutes, amount);
}
