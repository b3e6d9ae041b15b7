/** A typed figure with the unit that may stand behind it: `45`, `45 min`, `1 h 20`, `1:20`, `150 gal`, `0.4 in`, `3 of 5`. */
import { parseNumber } from './parse-number.ts';

export type AmountUnit = 'minute' | 'gallon' | 'litre' | 'inch' | 'millimetre' | 'day';

export type Amount =
  | { readonly kind: 'empty' }
  /** `unit` is undefined where none was typed. */
  | { readonly kind: 'amount'; readonly value: number; readonly unit: AmountUnit | undefined }
  /** `why` completes “Not entered:”. */
  | { readonly kind: 'unread'; readonly why: string };

const UNIT_WORDS: Readonly<Record<AmountUnit, readonly string[]>> = {
  minute: ['min', 'mins', 'minute', 'minutes', 'm', '′'],
  gallon: ['gal', 'gals', 'gallon', 'gallons'],
  litre: ['l', 'litre', 'litres', 'liter', 'liters'],
  inch: ['in', 'inch', 'inches', '″', '"'],
  millimetre: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  day: ['d', 'day', 'days'],
};

const UNITS = new Map(
  Object.entries(UNIT_WORDS).flatMap(([unit, words]) => words.map((word) => [word, unit as AmountUnit] as const)),
);

const CLOCK = /^(\d{1,3}):([0-5]\d)$/u;
const HOURS = /^([^\p{L}]+?)\s*(?:hours?|hrs?|h)\.?(?:\s*([^\p{L}]+?)\s*(?:minutes?|mins?|m)?\.?)?$/iu;
const DAYS_OF = /^(\S+)\s*(?:of|\/)\s*\d\s*(?:d|days?)?$/iu;
const WITH_UNIT = /^([^\p{L}\u2033\u2032"]+?)\s*([\p{L}\u2033\u2032"]+)\.?$/u;

export function parseAmount(text: string, locale: string): Amount {
  const typed = text.trim();
  if (typed === '') return { kind: 'empty' };
  const clock = CLOCK.exec(typed);
  if (clock) return amount(Number(clock[1]) * 60 + Number(clock[2]), 'minute');
  const hours = HOURS.exec(typed);
  if (hours) return sumOf(hours[1] ?? '', hours[2] ?? '0', locale);
  const days = DAYS_OF.exec(typed);
  if (days) return numberWith(days[1] ?? '', 'day', locale);
  const withUnit = WITH_UNIT.exec(typed);
  if (!withUnit) return numberWith(typed, undefined, locale);
  const unit = UNITS.get((withUnit[2] ?? '').toLowerCase());
  if (unit === undefined) return { kind: 'unread', why: `“${withUnit[2]}” is no unit that is known here` };
  return numberWith(withUnit[1] ?? '', unit, locale);
}

const amount = (value: number, unit: AmountUnit | undefined): Amount => ({ kind: 'amount', value, unit });

function numberWith(text: string, unit: AmountUnit | undefined, locale: string): Amount {
  const number = parseNumber(text, locale);
  return number.kind === 'number' ? amount(number.value, unit) : number;
}

function sumOf(hours: string, minutes: string, locale: string): Amount {
  const whole = parseNumber(hours, locale);
  const rest = parseNumber(minutes, locale);
  if (whole.kind === 'unread') return whole;
  if (rest.kind === 'unread') return rest;
  if (rest.value < 0 || rest.value >= 60) return { kind: 'unread', why: 'Minutes behind hours are from 0 to 59' };
  return amount(whole.value * 60 + rest.value, 'minute');
}
