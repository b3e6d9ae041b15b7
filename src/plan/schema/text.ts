/** Words and days of the plan: names, notes, ids, ISO days. Text is data: it is never read as markup or formula. */
import * as v from 'valibot';
import { isIsoDate } from '../../engine/calendar.ts';
import { NAME_PATTERN } from './name-text.ts';

export const NAME_LENGTH = 120;
export const NOTE_LENGTH = 10_000;

/** Years in which a season can lie: no date runs out of the calendar. */
export const FIRST_YEAR = 1900;
export const LAST_YEAR = 2199;

/** Something that can be seen, in one line. */
export const name = v.pipe(v.string(), v.regex(NAME_PATTERN), v.maxLength(NAME_LENGTH));

export const note = v.pipe(v.string(), v.maxLength(NOTE_LENGTH));

/**
 * An id names a zone or planting inside the plan; it is never shown. The two words left out mean something else to
 * every JavaScript object.
 */
export const id = v.pipe(v.string(), v.regex(/^(?!constructor$|prototype$)[a-z0-9][a-z0-9-]{0,63}$/));

/** Name of a time zone in the IANA database: `America/New_York`, `Etc/GMT+5`. Whether there is such a one, only the reader's machine knows. */
export const timeZone = v.pipe(v.string(), v.regex(/^[A-Za-z][A-Za-z0-9_+/-]{1,63}$/));

/** The number of a month, 1 to 12, as the name of a field. */
export const MONTH_PATTERN = /^(?:[1-9]|1[0-2])$/;

export const monthNumber = v.pipe(v.string(), v.regex(MONTH_PATTERN));
/** Hours and minutes of the 24-hour clock: `05:00`. */
export const timeOfDay = v.pipe(
  v.string(),
  v.regex(/^(?:[01]\d|2[0-3]):[0-5]\d$/),
  v.metadata({ format: 'time-of-day' }),
);

/** The pattern keeps the years in bounds. */
export const isoDay = v.pipe(
  v.string(),
  v.regex(/^(?:19|20|21)\d{2}-\d{2}-\d{2}$/),
  v.check(isIsoDate),
  v.metadata({ format: 'date' }),
);
