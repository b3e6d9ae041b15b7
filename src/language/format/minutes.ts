import type { Reader } from '../reader.ts';
import { formatNumber, formatSpelledOut } from './number.ts';
import { symbolOf, withUnit } from './quantity.ts';

const DAY_MINUTES = 1440;

/** Minutes of a timer: `45 min`, `7.5 min`; whole from ten on. */
export function formatMinutes(minutes: number, { language, locale }: Reader): string {
  return withUnit(formatMinuteCount(minutes, locale), symbolOf('min', language));
}

/** The same; a whole day and more in hours: `26 hours`. */
export function formatDuration(minutes: number, reader: Reader): string {
  if (!(minutes >= DAY_MINUTES)) return formatMinutes(minutes, reader);
  return formatSpelledOut(Math.round(minutes / 60), 'hour', reader.locale, 0);
}

/** The same without its unit. */
export function formatMinuteCount(minutes: number, locale: string): string {
  return formatNumber(minutes, locale, decimalsOf(minutes));
}

/** `45 minutes`, for what is read aloud. */
export function formatSpelledMinutes(minutes: number, locale: string): string {
  return formatSpelledOut(minutes, 'minute', locale, decimalsOf(minutes));
}

function decimalsOf(minutes: number): number {
  return Math.abs(minutes) < 9.95 ? 1 : 0;
}
