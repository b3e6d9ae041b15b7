/** All that records have of a season: the days that have passed, and a forecast of those to come. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { DailyRecord } from '../../engine/record/daily-record.ts';
import { applyEdit } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { type ReadingsChoice, type ReadingsTaken, takeForecast, takeReadings } from './take-readings.ts';

export interface SeasonTaken extends ReadingsTaken {
  readonly hasForecast: boolean;
}

/** One step of history for all of them, each on what those before it left; `missing` is what none of them has. */
export function takeSeason(
  records: readonly DailyRecord[],
  plan: Plan,
  today: DayNumber,
  choice: ReadingsChoice,
): SeasonTaken {
  const counts = { filled: 0, refreshed: 0, kept: 0, estimated: 0, missing: 0 };
  const edits: Edit[] = [];
  let hasForecast = false;
  let next = plan;
  for (const record of records) {
    const { edit: readings, missing, ...more } = takeReadings(record, next, today, choice);
    for (const [name, count] of Object.entries(more)) counts[name as keyof typeof more] += count;
    counts.missing = missing;
    const forecast = takeForecast(record, next, today, choice);
    hasForecast ||= forecast !== undefined;
    for (const edit of [readings, forecast]) {
      if (edit === undefined) continue;
      edits.push(edit);
      next = applyEdit(next, edit);
    }
  }
  const edit: Edit | undefined = edits.length === 0 ? undefined : { type: 'together', action: 'take-readings', edits };
  return { edit, hasForecast, ...counts };
}
