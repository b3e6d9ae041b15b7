/** Words and days of the plan: names, notes, ids, ISO days. Text is data: it is never read as markup or formula. */
import * as v from 'valibot';
import { isIsoDate } from '../../engine/calendar.ts';

export const NAME_LENGTH = 120;
export const NOTE_LENGTH = 10_000;

export const name = v.pipe(
  v.string('a name'),
  v.minLength(1, 'a name that is not empty'),
  v.maxLength(NAME_LENGTH, `a name of at most ${NAME_LENGTH} characters`),
);

export const note = v.pipe(v.string('a text'), v.maxLength(NOTE_LENGTH, `a text of at most ${NOTE_LENGTH} characters`));

/**
 * An id names a zone or planting inside the plan; it is never shown. The two words left out mean something else to
 * every JavaScript object.
 */
export const id = v.pipe(
  v.string('an id'),
  v.regex(
    /^(?!constructor$|prototype$)[a-z0-9][a-z0-9-]{0,63}$/,
    'an id of lower-case letters, digits and hyphens, such as raised-beds',
  ),
);

const DAY = 'a day as year-month-day, such as 2027-04-05, in the years 1900 to 2199';

/** The pattern keeps the years in bounds, so that no season runs out of the calendar. */
export const isoDay = v.pipe(
  v.string(DAY),
  v.regex(/^(?:19|20|21)\d{2}-\d{2}-\d{2}$/, DAY),
  v.check(isIsoDate, 'a day that the calendar has'),
  v.metadata({ format: 'date' }),
);
