/** A typed figure with the unit that may stand behind it: `45`, `45 min`, `1 h 20`, `1:20`, `150 gal`, `0.4 in`, `3 of 5`. */
import { entryWords } from '../en/entry.ts';
import type { TypedUnit } from '../en/units.ts';
import type { Language } from '../language.ts';
import { parseNumber, type Unread, unread } from './parse-number.ts';
import { isOfWord, parseUnit } from './parse-unit.ts';

/** Hours are read as minutes. */
export type AmountUnit = Exclude<TypedUnit, 'h'>;

export type Amount =
  | { readonly kind: 'empty' }
  /** `unit` is undefined where none was typed. */
  | { readonly kind: 'amount'; readonly value: number; readonly unit: AmountUnit | undefined }
  | Unread;

const CLOCK = /^(\d{1,3}):([0-5]\d)$/u;
const SLASH = /^(\S+?)\s*\/\s*\d\s*([\p{L}\p{M}]*)$/u;
const WORD = '[\\p{L}\\p{M}\u2033\u2032"]+';
const NUMBER = '[^\\p{L}\u2033\u2032"]+?';
/** A number and a word: `45 min`, `0.4"`. */
const ONE = new RegExp(`^(${NUMBER})\\s*(${WORD})\\.?$`, 'u');
/** A number, a word, a number and perhaps a word: `1 h 20`, `1 h 20 min`, `3 of 5 days`. */
const TWO = new RegExp(`^(${NUMBER})\\s*(${WORD})\\.?\\s*(${NUMBER})\\s*(${WORD})?\\.?$`, 'u');

/** Reads numbers and words of the reader's language, and English words as well. */
export function parseAmount(text: string, language: Language): Amount {
  const typed = text.trim();
  if (typed === '') return { kind: 'empty' };
  const clock = CLOCK.exec(typed);
  if (clock) return amount(Number(clock[1]) * 60 + Number(clock[2]), 'min');
  const one = ONE.exec(typed);
  if (one) return oneAmount(one[1] ?? '', one[2] ?? '', language);
  return twoAmounts(typed, language) ?? share(typed, language) ?? numberWith(typed, undefined, language);
}

function oneAmount(number: string, word: string, language: Language): Amount {
  const unit = parseUnit(word, language);
  if (unit === undefined) return unread('no-unit', entryWords(language).unread['no-unit'](word));
  return unit === 'h' ? sumOf(number, '0', language) : numberWith(number, unit, language);
}

/** `1 h 20`, `3 of 5`; undefined where it is neither. */
function twoAmounts(typed: string, language: Language): Amount | undefined {
  const [, first = '', word = '', second = '', last = ''] = TWO.exec(typed) ?? [];
  const lastUnit = parseUnit(last, language);
  if (parseUnit(word, language) === 'h' && (last === '' || lastUnit === 'min')) return sumOf(first, second, language);
  const isShare = isOfWord(word, language) && /^\d$/.test(second) && (last === '' || lastUnit === 'day');
  return isShare ? numberWith(first, 'day', language) : undefined;
}

/** `3/5`, `3/5 days`. */
function share(typed: string, language: Language): Amount | undefined {
  const [, part, last = ''] = SLASH.exec(typed) ?? [];
  if (part === undefined || (last !== '' && parseUnit(last, language) !== 'day')) return undefined;
  return numberWith(part, 'day', language);
}

const amount = (value: number, unit: AmountUnit | undefined): Amount => ({ kind: 'amount', value, unit });

function numberWith(text: string, unit: AmountUnit | undefined, language: Language): Amount {
  const number = parseNumber(text, language);
  return number.kind === 'number' ? amount(number.value, unit) : number;
}

function sumOf(hours: string, minutes: string, language: Language): Amount {
  const whole = parseNumber(hours, language);
  const rest = parseNumber(minutes, language);
  if (whole.kind === 'unread') return whole;
  if (rest.kind === 'unread') return rest;
  if (rest.value < 0 || rest.value >= 60) {
    return unread('minutes-beyond-59', entryWords(language).unread['minutes-beyond-59']);
  }
  return amount(whole.value * 60 + rest.value, 'min');
}
