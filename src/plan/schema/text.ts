/** Words and days of the plan: names, notes, ids, ISO days. Text is data: it is never read as markup or formula. */
import * as v from 'valibot';
import { isIsoDate } from '../../engine/calendar.ts';

export const NAME_LENGTH = 120;
const NOTE_LENGTH = 10_000;

export const name = v.pipe(
  v.string('a name'),
  v.minLength(1, 'a name that is not empty'),
  v.maxLength(NAME_LENGTH, `a name of at most ${NAME_LENGTH} characters`),
);

export const note = v.pipe(
  v.string('a text'),
  v.maxLength(NOTE_LENGTH, `a text of at most ${NOTE_LENGTH} characters`),
);

/** An id names a zone or planting inside the plan; it is never shown. */
export const id = v.pipe(
  v.string('an id'),
  v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'an id of lower-case letters, digits and hyphens'),
);

export const isoDay = v.pipe(
  v.string('a day as year-month-day, such as 2027-04-05'),
  v.check(isIsoDate, 'a day of the calendar as year-month-day, such as 2027-04-05'),
  v.metadata({ format: 'date' }),
);
