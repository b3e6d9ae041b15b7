/** All that writes figures, days and lists, bound to one reader: what a message takes to say its values. */
import type { DayNumber } from '../../engine/calendar.ts';
import type { Names } from '../../engine/names.ts';
import type { Quantity } from '../../engine/units.ts';
import { nameIn } from '../name-in.ts';
import type { Reader } from '../reader.ts';
import { formatCount } from './count.ts';
import { type DateStyle, formatDay, formatDays, formatMonth, formatTime, formatWeek, formatWeekOf } from './dates.ts';
import { formatDistance } from './distance.ts';
import { formatInstant } from './instant.ts';
import { formatEither, formatList } from './list.ts';
import { formatDuration, formatMinuteCount, formatMinutes, formatSpelledMinutes } from './minutes.ts';
import { formatNumber, formatPercent } from './number.ts';
import { type Forms, pluralForm } from './plural.ts';
import {
  formatAmount,
  formatListed,
  formatQuantity,
  formatSpelledQuantity,
  type SpelledQuantity,
  symbolOf,
  unitSymbol,
} from './quantity.ts';
import { formatWeekdays } from './weekdays.ts';

export interface Format {
  readonly reader: Reader;
  /** At most `most` and at least `least` decimals, 0 where left out. */
  number(value: number, most?: number, least?: number): string;
  /** `3 weeks`: the number and its word, which never part. */
  count(count: number, forms: Forms): string;
  /** The word alone. */
  plural(count: number, forms: Forms): string;
  /** A share of 1: `19%`. */
  percent(share: number): string;
  /** An engine value in the plan's unit: `310 gal`. */
  quantity(si: number, quantity: Quantity): string;
  /** The same with as many decimals whatever the value: `0.90 gpm`. */
  listed(si: number, quantity: Quantity): string;
  /** Without its unit. */
  amount(si: number, quantity: Quantity): string;
  /** Its unit alone: `gal`, `sq ft`. */
  unit(quantity: Quantity): string;
  /** `310 gallons`: spelled out, for what is read aloud. */
  spelled(si: number, quantity: SpelledQuantity): string;
  /** Over land: `30 mi`, `48 km`. */
  distance(km: number): string;
  /** What a timer is set to, and is reckoned with: `45 min`. */
  minutes(minutes: number): string;
  /** How long something takes; from two hours on `5 h 4 min`, from a day on `26 h`. */
  duration(minutes: number): string;
  /** Minutes without their unit. */
  minuteCount(minutes: number): string;
  /** The unit alone. */
  readonly minuteUnit: string;
  /** `45 minutes`: spelled out, for what is read aloud. */
  spelledMinutes(minutes: number): string;
  day(day: DayNumber, style?: DateStyle): string;
  /** Minutes after midnight: `5:25 AM`; past midnight the next day's. */
  time(minute: number): string;
  /** Within one week its name tells which day is meant: `Tuesday`. */
  weekday(day: DayNumber): string;
  /** 0 is January. */
  month(month: number): string;
  /** A week by its first day: `week of June 7`, wherever a week has a name. */
  weekOf(firstDay: DayNumber): string;
  /** A week's days: `7–13 Jun`. */
  week(firstDay: DayNumber): string;
  days(first: DayNumber, last: DayNumber, style?: DateStyle): string;
  /** Days of a seven-bit mask, bit 0 = the week's first day. */
  weekdays(weekStart: DayNumber, mask: number): string;
  /** `June 16, 2027 at 10:46 AM`: an instant, ISO 8601, on the reader's own clock. */
  instant(instant: string): string;
  list(items: readonly string[]): string;
  /** What a table of data names by language: `Tomato`. */
  name(names: Names): string;
  /** `sand, loam or clay`. */
  either(items: readonly string[]): string;
}

const formats = new WeakMap<Reader, Format>();

/** The same object for the same reader. */
export function formatFor(reader: Reader): Format {
  let format = formats.get(reader);
  if (format === undefined) {
    format = bound(reader);
    formats.set(reader, format);
  }
  return format;
}

function bound(reader: Reader): Format {
  const { locale } = reader;
  return {
    reader,
    number: (value, most, least) => formatNumber(value, locale, most, least),
    count: (count, forms) => formatCount(count, forms, locale),
    plural: (count, forms) => pluralForm(count, forms, locale),
    percent: (share) => formatPercent(share, locale),
    quantity: (si, quantity) => formatQuantity(si, quantity, reader),
    listed: (si, quantity) => formatListed(si, quantity, reader),
    amount: (si, quantity) => formatAmount(si, quantity, reader),
    unit: (quantity) => unitSymbol(quantity, reader),
    spelled: (si, quantity) => formatSpelledQuantity(si, quantity, reader),
    distance: (km) => formatDistance(km, reader),
    minutes: (minutes) => formatMinutes(minutes, reader),
    duration: (minutes) => formatDuration(minutes, reader),
    minuteCount: (minutes) => formatMinuteCount(minutes, locale),
    minuteUnit: symbolOf('min', reader.language),
    spelledMinutes: (minutes) => formatSpelledMinutes(minutes, locale),
    day: (day, style) => formatDay(day, locale, style),
    time: (minute) => formatTime(minute, locale),
    weekday: (day) => formatDay(day, locale, 'weekday'),
    month: (month) => formatMonth(month, locale),
    weekOf: (firstDay) => formatWeekOf(firstDay, reader),
    week: (firstDay) => formatWeek(firstDay, locale),
    days: (first, last, style) => formatDays(first, last, locale, style),
    weekdays: (weekStart, mask) => formatWeekdays(weekStart, mask, locale),
    instant: (instant) => formatInstant(instant, locale),
    list: (items) => formatList(items, locale),
    name: (names) => nameIn(names, reader.language),
    either: (items) => formatEither(items, locale),
  };
}
