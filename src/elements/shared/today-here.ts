import { dayNumberOf, type IsoDate, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { warnDeveloper } from './warn-developer.ts';

/** Today by the reader's own clock and time zone. */
export function todayHere(): IsoDate {
  const now = new Date();
  return isoDate(dayNumberOf({ year: now.getFullYear(), month: now.getMonth(), dayOfMonth: now.getDate() }));
}

/** The day that a page set as today, where it is one. */
export function daySet(today: string | undefined): IsoDate | undefined {
  return today !== undefined && isIsoDate(today) ? today : undefined;
}

/** The same, else the reader's own. */
export function todayOf(today: string | undefined): IsoDate {
  return daySet(today) ?? todayHere();
}

/** Warns whoever makes the page where its `today` is no day. */
export function checkToday(element: Element & { readonly today?: unknown }): void {
  const { today } = element;
  if (today === undefined || today === null || (typeof today === 'string' && isIsoDate(today))) return;
  warnDeveloper(element, `today="${String(today)}" is not a day. Write year-month-day, like 2027-06-01.`);
}
