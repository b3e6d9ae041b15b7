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

/** The pattern keeps the years in bounds. */
export const isoDay = v.pipe(
  v.string(),
  v.regex(/^(?:19|20|21)\d{2}-\d{2}-\d{2}$/),
  v.check(isIsoDate),
  v.metadata({ format: 'date' }),
);
