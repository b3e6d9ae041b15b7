import { formatNumber } from './number.ts';
import { withUnit } from './quantity.ts';

/** Minutes of a timer: `45 min`, `7.5 min`; whole from ten on. */
export function formatMinutes(minutes: number, locale: string): string {
  return withUnit(formatMinuteCount(minutes, locale), 'min');
}

/** The same without its unit. */
export function formatMinuteCount(minutes: number, locale: string): string {
  return formatNumber(minutes, locale, Math.abs(minutes) < 9.95 ? 1 : 0);
}
