/**
 * Finds messages of a language that leave out a value which English says. Each message is called with marked values: what English
 * shows of them, the other language has to show too.
 */
import type { Format } from '../../src/language/format/format.ts';
import { US_ENGLISH } from '../../src/language/language.ts';

/** Values to call a message with, where marks will not do: for one that branches on a code or reads a day. */
export type Samples = Readonly<Record<string, readonly (readonly unknown[])[]>>;

export interface DroppedValue {
  /** Where the message stands: `chart.finding.shortFrom`. */
  readonly message: string;
  /** Which value: `2` for the second one, `2.days` for one within it. */
  readonly value: string;
}

/** The messages of a tree of words that are functions, by their path. */
export function functionsIn(words: object, path = ''): readonly (readonly [path: string, message: Message])[] {
  return Object.entries(words).flatMap(([key, value]) => {
    const at = path === '' ? key : `${path}.${key}`;
    if (typeof value === 'function') return [[at, value as Message] as const];
    return typeof value === 'object' && value !== null ? functionsIn(value, at) : [];
  });
}

export type Message = (...values: readonly unknown[]) => unknown;

/** `samples` are by the path of the message, each without its `Format`. */
export function droppedValues(english: object, other: object, samples: Samples = {}): readonly DroppedValue[] {
  const others = new Map(functionsIn(other));
  return functionsIn(english).flatMap(([path, message]) => {
    const theirs = others.get(path);
    if (theirs === undefined) return [];
    const calls = callsOf(message, samples[path]);
    const found = calls.flatMap((values) => droppedMarks(message, theirs, values));
    if (isToldApart(message, calls) && !isToldApart(theirs, calls)) found.push('code');
    return found.map((value) => ({ message: path, value }));
  });
}

/** What a message says of its samples, or of marks: each text. */
export function markedTexts(message: Message, samples: Samples[string] = []): readonly string[] {
  return callsOf(message, samples).map((values) => String(message(...values)));
}

function droppedMarks(english: Message, other: Message, values: readonly unknown[]): string[] {
  const theirs = marksIn(other(...values));
  return [...marksIn(english(...values))].filter((mark) => !theirs.has(mark));
}

/** Whether a message says something else for each of several calls. */
function isToldApart(message: Message, calls: readonly (readonly unknown[])[]): boolean {
  return calls.length > 1 && new Set(calls.map((values) => String(message(...values)))).size === calls.length;
}

/** The messages that say nothing of the marks that they are called with, so that they need samples. */
export function needingSamples(english: object, samples: Samples): readonly string[] {
  return functionsIn(english).flatMap(([path, message]) => (isCalled(message, samples[path]) ? [] : [path]));
}

function isCalled(message: Message, samples: Samples[string] = []): boolean {
  const calls = callsOf(message, samples);
  try {
    const texts = calls.map((values) => String(message(...values)));
    if (message.length === Number(takesFormat(message))) return texts.every((text) => text !== '');
    // A form alone, `Hide these weeks`, shows no value; nor need another language have two of it.
    if (/\bplural\(/.test(message.toString())) return true;
    const isRight = !texts.some((text) => /undefined|NaN|\[object|function/.test(text));
    return isRight && (isToldApart(message, calls) || texts.some((text) => marksIn(text).size > 0));
  } catch {
    return false;
  }
}

/** What to call a message with: its samples, else a mark for each of its values. */
function callsOf(message: Message, samples: Samples[string] = []): readonly (readonly unknown[])[] {
  const format = takesFormat(message) ? [MARKED_FORMAT] : [];
  if (samples.length > 0) return samples.map((values) => [...format, ...values]);
  const count = Math.max(message.length - format.length, 0);
  return [[...format, ...Array.from({ length: count }, (_, index) => mark(String(index + 1)))]];
}

/** Written `({ count }, days) => …`, `(format, days) => …` or `(_, days) => …`. */
const takesFormat = (message: Message): boolean => /^\(?\s*(?:\{|format\b|_format\b|_\s*,)/.test(message.toString());

const MARK = /⟦([\w.-]+)⟧/g;

const marksIn = (text: unknown): ReadonlySet<string> =>
  new Set([...String(text).matchAll(MARK)].map(([, name = '']) => name));

/** A text with `…` for each mark. */
export const withoutMarks = (text: string): string => text.replaceAll(MARK, '…');

/** A text that is found again in what a message says. */
export const marked = (name: string): string => `⟦${name}⟧`;

/** What a mark is where it is compared: above 0, and more than one. */
const SOME_NUMBER = 7919;

/**
 * A value that stands for a number, a text, a list or a record, and is found again in what a message says. Its members are marks
 * too; as a list it has two.
 */
function mark(name: string): unknown {
  const list = (): readonly unknown[] => [mark(`${name}.0`), mark(`${name}.1`)];
  return new Proxy(
    Object.assign(() => marked(name), {}),
    {
      get(_target, key) {
        if (key === Symbol.toPrimitive) return (hint: string) => (hint === 'number' ? SOME_NUMBER : marked(name));
        if (key === 'toString') return () => marked(name);
        if (key === 'length') return 2;
        if (key === Symbol.iterator) return () => list()[Symbol.iterator]();
        if (key === 'map' || key === 'filter' || key === 'join' || key === 'slice' || key === 'flatMap') {
          const items = list();
          return (Reflect.get(items, key) as Message).bind(items);
        }
        return mark(`${name}.${String(key)}`);
      },
    },
  );
}

const joined = (...values: readonly unknown[]): string => values.map(String).join(' ');

/** Shows the values that it is given, and nothing of how a language writes them. */
const MARKED_FORMAT: Format = new Proxy({} as Format, {
  get(_target, key) {
    if (key === 'reader') return { language: US_ENGLISH, units: 'us', locale: 'en-US' };
    if (key === 'list') return (items: readonly unknown[]) => joined(...items);
    if (key === 'plural') return (_count: unknown, forms: { readonly other: string }) => forms.other;
    if (key === 'count') return (count: unknown, forms: { readonly other: string }) => joined(count, forms.other);
    if (key === 'days' || key === 'weekdays') return joined;
    return (value: unknown) => joined(value);
  },
});
