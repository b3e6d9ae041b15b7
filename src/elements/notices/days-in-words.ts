/** Watering days that an edit gives to zones: `Beds and Pots on Mon and Thu; Hedge on Tue`. */
import { dayNumber } from '../../engine/calendar.ts';
import { formatList } from '../../language/format/list.ts';
import { formatWeekdays } from '../../language/format/weekdays.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { weekdayMask } from '../../plan/to-garden/weekday-masks.ts';
import { noticeRemedyWords as words } from '../shared/words/notice-remedy-words.ts';

const A_MONDAY = dayNumber('2001-01-01');

/** Zones with the same days are named together. */
export function daysInWords(edits: readonly Edit[], zoneName: (id: string) => string, locale: string): string {
  const zones = new Map<string, string[]>();
  for (const edit of edits) {
    if (edit.type !== 'change-zone' || !Array.isArray(edit.change.wateringDays)) continue;
    const days = formatWeekdays(A_MONDAY, weekdayMask(edit.change.wateringDays), locale);
    zones.set(days, [...(zones.get(days) ?? []), zoneName(edit.zone)]);
  }
  return [...zones].map(([days, names]) => words.change.onDays(formatList(names, locale), days)).join('; ');
}
