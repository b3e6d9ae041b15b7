/** Days, weeks and months of a plan in the reader's locale. A plan's days have no time and no zone: they are read in UTC. */
import { type DayNumber, dayNumberOf } from '../../engine/calendar.ts';
import { datesWords } from '../en/dates.ts';
import type { Reader } from '../reader.ts';

const MS_PER_DAY = 86_400_000;
const MS_PER_MINUTE = 60_000;

const STYLES = {
  short: { day: 'numeric', month: 'short' },
  long: { day: 'numeric', month: 'long' },
  full: { day: 'numeric', month: 'long', year: 'numeric' },
  month: { month: 'short' },
  monthOfYear: { month: 'short', year: 'numeric' },
  monthName: { month: 'long' },
  weekday: { weekday: 'long' },
  weekdayShort: { weekday: 'short' },
  weekdayLetter: { weekday: 'narrow' },
  dayOfMonth: { day: 'numeric' },
  weekdayAndDay: { weekday: 'long', day: 'numeric', month: 'long' },
  monthNameOfYear: { month: 'long', year: 'numeric' },
} as const satisfies Record<string, Intl.DateTimeFormatOptions>;

export type DateStyle = keyof typeof STYLES;

const formats = new Map<string, Intl.DateTimeFormat>();

/** `12 July` or `July 12`, as the locale has it. */
export function formatDay(day: DayNumber, locale: string, style: DateStyle = 'long'): string {
  const text = unbroken(dateFormat(locale, style).format(dateOf(day)));
  // Where there is too little room for both, the day goes below its weekday.
  return style === 'weekdayAndDay' ? text.replace('\u00a0', ' ') : text;
}

/** A week's name, by its first day: `week of June 7`. */
export function formatWeekOf(firstDay: DayNumber, { language, locale }: Reader): string {
  return datesWords(language).weekOf(formatDay(firstDay, locale));
}

/** A month by its number, 0 is January: `July`. */
export function formatMonth(month: number, locale: string): string {
  return formatDay(dayNumberOf({ year: 1970, month, dayOfMonth: 1 }), locale, 'monthName');
}

/** A week's days: `5–11 Jul`, `28 Jun – 4 Jul`. */
export function formatWeek(firstDay: DayNumber, locale: string): string {
  return formatDays(firstDay, firstDay + 6, locale);
}

/** From one day to another, both included. */
export function formatDays(first: DayNumber, last: DayNumber, locale: string, style: DateStyle = 'short'): string {
  if (first === last) return formatDay(first, locale, style);
  return unbroken(dateFormat(locale, style).formatRange(dateOf(first), dateOf(last)));
}

const times = new Map<string, Intl.DateTimeFormat>();

/** Minutes after midnight as a time of day: `5:25 AM`, `05:25`. */
export function formatTime(minute: number, locale: string): string {
  let format = times.get(locale);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(locale, { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });
    times.set(locale, format);
  }
  return unbroken(format.format(new Date(minute * MS_PER_MINUTE))).replaceAll('\u202f', '\u00a0');
}

const dateOf = (day: DayNumber): Date => new Date(day * MS_PER_DAY);

/** A date reads as one thing: it is not broken over two lines, and no space stands inside `5–11`, thin or not. */
const unbroken = (text: string): string =>
  text
    .replace(/(\d)\s\u2013\s(\d)/, '$1–$2')
    .replaceAll(/[ \u2009]/g, '\u00a0')
    .replaceAll('–', '–\u2060');

function dateFormat(locale: string, style: DateStyle): Intl.DateTimeFormat {
  const key = `${locale} ${style}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(locale, { ...STYLES[style], timeZone: 'UTC' });
    formats.set(key, format);
  }
  return format;
}
