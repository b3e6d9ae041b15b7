/** What the clocks of a place show, as instants: by the zones of the IANA Time Zone Database that the JavaScript engine brings. */
import type { DayNumber } from '../../engine/calendar.ts';

const MINUTE_MS = 60_000;
const DAY_MS = 1440 * MINUTE_MS;

/** Whether the JavaScript engine knows the time zone. */
export function isTimeZone(timeZone: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone }) !== undefined;
  } catch {
    return false;
  }
}

/** Turns what clocks show into instants, in one time zone. Throws a RangeError for a zone that is not known. */
export class ZonedClock {
  readonly timeZone: string;
  readonly #format: Intl.DateTimeFormat;
  /** By quarter of an hour: clocks are moved at none but a whole one. */
  readonly #offsets = new Map<number, number>();

  constructor(timeZone: string) {
    this.timeZone = timeZone;
    this.#format = new Intl.DateTimeFormat('en-US', {
      timeZone,
      calendar: 'gregory',
      numberingSystem: 'latn',
      hourCycle: 'h23',
      era: 'short',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
  }

  /**
   * Milliseconds since 1970 of a time of a day, minutes after midnight. A time that clocks show twice is the first of the two, and one
   * that they leap over is counted on from before the leap (RFC 5545, 3.3.5).
   */
  instantOf(day: DayNumber, minute: number): number {
    const shown = day * DAY_MS + minute * MINUTE_MS;
    // Clocks are moved at most once in two days.
    const before = this.#offsetAt(shown - DAY_MS);
    const after = this.#offsetAt(shown + DAY_MS);
    const first = shown - before;
    const second = shown - after;
    return this.#offsetAt(first) !== before && this.#offsetAt(second) === after ? second : first;
  }

  /** What clocks show less UTC, ms. */
  #offsetAt(instant: number): number {
    const quarter = Math.floor(instant / (15 * MINUTE_MS));
    let offset = this.#offsets.get(quarter);
    if (offset === undefined) {
      offset = this.#shownAt(quarter * 15 * MINUTE_MS) - quarter * 15 * MINUTE_MS;
      this.#offsets.set(quarter, offset);
    }
    return offset;
  }

  #shownAt(instant: number): number {
    const parts = new Map(this.#format.formatToParts(instant).map(({ type, value }) => [type, value]));
    const number = (type: Intl.DateTimeFormatPartTypes) => Number(parts.get(type));
    const year = parts.get('era') === 'BC' ? 1 - number('year') : number('year');
    const shown = new Date(0);
    shown.setUTCFullYear(year, number('month') - 1, number('day'));
    return shown.setUTCHours(number('hour'), number('minute'), number('second'));
  }
}
