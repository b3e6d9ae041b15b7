import { dayNumberOf, type IsoDate, isoDate } from '../../engine/calendar.ts';

/** Today by the reader's own clock and time zone. */
export function todayHere(): IsoDate {
  const now = new Date();
  return isoDate(dayNumberOf({ year: now.getFullYear(), month: now.getMonth(), dayOfMonth: now.getDate() }));
}
