import { expect, it } from 'vitest';
import { dayNumber } from '../../../src/engine/calendar.ts';
import { formatDay, formatDays, formatWeek, formatWeekOf } from '../../../src/language/format/dates.ts';
import { readerFor } from '../../../src/language/reader.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

it.each([
  ['2026-07-05', 'en-GB', '5–11 Jul'],
  ['2026-06-28', 'en-GB', '28 Jun – 4 Jul'],
  ['2026-07-05', 'en', 'Jul 5–11'],
  ['2026-07-05', 'de', '5.–11. Juli'],
])('writes the week of %s in %s as %s', (day, locale, written) => {
  expect(plain(formatWeek(dayNumber(day), locale))).toBe(written);
});

it('writes a day long, short, with its year, and its month', () => {
  const day = dayNumber('2026-07-12');
  expect(plain(formatDay(day, 'en-GB'))).toBe('12 July');
  expect(plain(formatDay(day, 'en-GB', 'short'))).toBe('12 Jul');
  expect(plain(formatDay(day, 'en-GB', 'full'))).toBe('12 July 2026');
  expect(formatDay(day, 'en-GB', 'month')).toBe('Jul');
});

it('reads days in no time zone: the first and the last of a year stay where they are', () => {
  expect(plain(formatDay(dayNumber('2026-01-01'), 'en-GB', 'full'))).toBe('1 January 2026');
  expect(plain(formatDay(dayNumber('2026-12-31'), 'en-GB', 'full'))).toBe('31 December 2026');
});

it('writes one day as a day, not as a range', () => {
  const day = dayNumber('2026-07-12');
  expect(plain(formatDays(day, day, 'en-GB'))).toBe('12 Jul');
});

it('leaves no space at which a line could break', () => {
  expect(formatWeek(dayNumber('2026-06-28'), 'en-GB')).toBe('28\u00a0Jun\u00a0–\u2060\u00a04\u00a0Jul');
});

it('may put a day below its weekday, and breaks nowhere else', () => {
  const title = (locale: string) => formatDay(dayNumber('2027-07-14'), locale, 'weekdayAndDay');
  expect(title('en-US')).toBe('Wednesday, July\u00a014');
  expect(title('de-DE')).toBe('Mittwoch, 14.\u00a0Juli');
});

it('names a week by its first day, as the locale has it', () => {
  const weekOf = (locale: string) => formatWeekOf(dayNumber('2027-06-07'), readerFor(locale, 'us'));
  expect([weekOf('en-US'), weekOf('en-GB')]).toEqual(['week of June\u00a07', 'week of 7\u00a0June']);
  // A locale whose language nobody registered is not mixed with English.
  expect(weekOf('de')).toBe('week of 7\u00a0June');
});
