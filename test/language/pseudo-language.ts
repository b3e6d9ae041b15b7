/**
 * A language made of English for tests: accents on every letter, a third longer, brackets round each message. What a message is given
 * stays as it is, so that a word that does not come from the language shows.
 */
import type { Format } from '../../src/language/format/format.ts';
import { namesInTables } from './names-in-tables.ts';

export const OPEN = '⟦';
export const CLOSE = '⟧';

/** A letter of English without an accent; the pseudo-language has none. */
export const PLAIN_LETTER = /[A-Za-z]/;

/** Private characters round what a message is given. */
const GIVEN = '\uE000';
const GIVEN_END = '\uE001';

type Message = (...values: readonly unknown[]) => unknown;

/** All of a language's words, those of functions too. What is read and not shown stays: a person types as before. */
export function pseudoLanguage<Words extends object>(words: Words): Words {
  const names = Object.fromEntries(namesInTables().map((name) => [name, pseudoText(name)]));
  const said = changed(words, '') as Words;
  return 'names' in words ? { ...said, names } : said;
}

const READ = /^(?:units|fieldUnits)\.typed|^csv\.weather/;

function changed(value: unknown, path: string): unknown {
  if (READ.test(path)) return value;
  if (typeof value === 'string') return pseudoText(value);
  if (typeof value === 'function') return pseudoMessage(value as Message);
  if (Array.isArray(value)) return value.map((each) => changed(each, path));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, each]) => [
    key,
    changed(each, path === '' ? key : `${path}.${key}`),
  ]);
  return Object.fromEntries(entries);
}

/** A message as the pseudo-language has it; empty where it is. */
export function pseudoText(text: string): string {
  if (text === '') return '';
  const letters = [...text].filter((letter) => /\p{L}/u.test(letter)).length;
  return `${OPEN}${accented(text)}${'~'.repeat(Math.ceil(letters / 3))}${CLOSE}`;
}

function pseudoMessage(message: Message): Message {
  const length = message.length;
  const made = (...values: readonly unknown[]): unknown => {
    const all = said(message, values, given);
    // A message that chooses by a code does not know it in brackets.
    const text = /undefined|NaN/.test(all ?? 'undefined') ? said(message, values, (value) => value) : all;
    return text === undefined ? message(...values) : pseudoText(text);
  };
  // What asks for the number of values gets that of English.
  return Object.defineProperty(made, 'length', { value: length });
}

function said(message: Message, values: readonly unknown[], mark: (value: unknown) => unknown): string | undefined {
  try {
    const text = message(...values.map((value) => (isFormat(value) ? markedFormat(value) : mark(value))));
    return typeof text === 'string' ? text : undefined;
  } catch {
    return undefined;
  }
}

/** Marks the texts in a value, however deep they lie. */
function given(value: unknown): unknown {
  if (typeof value === 'string') return value === '' ? '' : `${GIVEN}${value}${GIVEN_END}`;
  if (Array.isArray(value)) return value.map(given);
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, given(each)]));
}

const isFormat = (value: unknown): value is Format =>
  typeof value === 'object' && value !== null && 'reader' in value && 'quantity' in value;

/** Marks what it writes, but for the words that it is given to write: forms of a plural, items of a list. */
function markedFormat(format: Format): Format {
  return new Proxy(format, {
    get(target, key) {
      const own: unknown = Reflect.get(target, key);
      if (typeof own !== 'function' || key === 'list' || key === 'plural' || key === 'count') return own;
      return (...values: readonly unknown[]) => given(Reflect.apply(own, target, values.map(bare)));
    },
  });
}

/** Without marks, however deep they lie. */
function bare(value: unknown): unknown {
  if (typeof value === 'string') return value.replaceAll(GIVEN, '').replaceAll(GIVEN_END, '');
  if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, bare(each)]));
}

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ';
const ACCENTED = 'áƀčďéƒǧȟíǰǩľɱñóṗɋřšťúṽŵẋýžÁƁČĎÉƑǦȞÍĴǨĽṀÑÓṖɊŘŠŤÚṼŴẊÝŽ';
const LETTERS: ReadonlyMap<string, string> = new Map(
  [...PLAIN].map((letter, index) => [letter, [...ACCENTED][index] ?? '']),
);

/** Accents on every letter outside what is marked; the marks themselves go. */
function accented(text: string): string {
  let depth = 0;
  let result = '';
  for (const letter of text) {
    if (letter === GIVEN) depth++;
    else if (letter === GIVEN_END) depth--;
    else result += depth > 0 ? letter : (LETTERS.get(letter) ?? letter);
  }
  return result;
}
