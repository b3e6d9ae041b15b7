import type { Reader } from '../reader.ts';
import { formatNumber, formatSpelledOut } from './number.ts';
import { symbolOf, withUnit } from './quantity.ts';

const HOUR_MINUTES = 60;
const DAY_MINUTES = 1440;
/** A timer is set in minutes; what takes as long as this is told by a clock. */
const LONG_MINUTES = 120;

/** Minutes of a timer: `45 min`, `7.5 min`; whole from ten on. */
export function formatMinutes(minutes: number, { language, locale }: Reader): string {
  return withUnit(formatMinuteCount(minutes, locale), symbolOf('min', language));
}

/** How long something takes: `45 min`; from two hours on `5 h 4 min`, from a day on whole hours: `26 h`. */
export function formatDuration(minutes: number, reader: Reader): string {
  const whole = Math.round(minutes);
  if (!(whole >= LONG_MINUTES)) return formatMinutes(minutes, reader);
  const rest = whole < DAY_MINUTES ? whole % HOUR_MINUTES : 0;
  const hours = formatNumber(Math.round((whole - rest) / HOUR_MINUTES), reader.locale);
  const inHours = withUnit(hours, symbolOf('h', reader.language));
  return rest === 0 ? inHours : `${inHours}\u00a0${formatMinutes(rest, reader)}`;
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
