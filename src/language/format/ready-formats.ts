import { formatDays } from './dates.ts';
import { formatNumber } from './number.ts';

/**
 * Makes numbers and dates of a locale ready to be written. A browser reads its tables of all locales at the first of them,
 * which takes longer than a frame and cannot be divided: better before there is a plan to show.
 */
export function readyFormats(locale: string): void {
  formatNumber(0, locale);
  formatDays(0, 1, locale);
}
