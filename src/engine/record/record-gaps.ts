import type { DayNumber } from '../calendar.ts';
import type { DailyRecord, RecordReading } from './daily-record.ts';

/** Days in a row without a reading. */
export interface RecordGap {
  readonly firstDay: DayNumber;
  readonly days: number;
}

/** Of each reading that a record has: how many days lack it, and where, in order. */
export function recordGaps(record: DailyRecord, reading: RecordReading): readonly RecordGap[] {
  const values = record.columns[reading];
  if (values === undefined) return [];
  const gaps: RecordGap[] = [];
  let first: number | undefined;
  for (let day = 0; day <= record.dayCount; day += 1) {
    const isMissing = day < record.dayCount && Number.isNaN(values[day]);
    if (isMissing) first ??= day;
    else if (first !== undefined) {
      gaps.push({ firstDay: record.firstDay + first, days: day - first });
      first = undefined;
    }
  }
  return gaps;
}

/** The longest gap that a straight line may stand for: our choice, after the 5 days over which FAO-56 p. 61 would average at least. */
export const MOST_BRIDGED_DAYS = 5;

/** Readings that change little from one day to the next; rain does not, and a day without it is never given any. */
const BRIDGED = ['minTemperatureC', 'maxTemperatureC', 'etoMm'] as const satisfies readonly RecordReading[];

/**
 * The record with gaps of up to five days in temperatures and reference ET filled by a straight line between the days before and after.
 * Rain, longer gaps, and gaps at either end stay as they are.
 */
export function bridged(record: DailyRecord): DailyRecord {
  const columns = { ...record.columns };
  for (const reading of BRIDGED) {
    const values = columns[reading]?.slice();
    if (values === undefined) continue;
    for (const gap of recordGaps(record, reading))
      fillGap(values, { ...gap, firstDay: gap.firstDay - record.firstDay });
    columns[reading] = values;
  }
  return { ...record, columns };
}

function fillGap(values: Float64Array, { firstDay, days }: RecordGap): void {
  const [before, after] = [values[firstDay - 1], values[firstDay + days]];
  if (days > MOST_BRIDGED_DAYS || before === undefined || after === undefined) return;
  for (let day = 0; day < days; day += 1) {
    values[firstDay + day] = before + ((after - before) * (day + 1)) / (days + 1);
  }
}
