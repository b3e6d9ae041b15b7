/** What an edit records of the whole garden, in a few words: a week's note, the water meter. */
import { isIsoDate } from '../engine/calendar.ts';
import { toSi } from '../engine/units.ts';
import type { WeatherEdit } from '../plan/edits/edit.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import { weekFirstDay, weekOf } from '../plan/season-weeks.ts';
import { shortText } from '../plan/words/short-text.ts';
import { editsWords } from './en/edits.ts';
import { formatFor } from './format/format.ts';
import type { Reader } from './reader.ts';

type RecordEdit = Extract<WeatherEdit, { type: 'set-week-note' | 'set-meter' }>;

export function describeRecord(plan: Plan, edit: RecordEdit, reader: Reader): string {
  const words = editsWords(reader.language);
  const format = formatFor({ ...reader, units: plan.units });
  if (edit.type === 'set-meter') {
    const litres = edit.reading === undefined ? undefined : toSi(edit.reading, 'volume', plan.units);
    return words.meter(format, shortText(edit.day), litres);
  }
  const { note } = edit;
  const what = note === undefined || note === '' ? words.noteGone : words.note(shortText(note));
  return words.ofWeek(format, firstDayOfWeek(plan, edit.week), what);
}

/** First day of the week that holds a day; what is no day of the season stays as it is. */
export function firstDayOfWeek({ season }: Plan, day: string): string {
  if (!isIsoDate(day)) return shortText(day);
  const week = weekOf(season, day);
  return week >= 0 && week < season.weeks ? weekFirstDay(season, week) : day;
}
