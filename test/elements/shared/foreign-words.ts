import type { Season } from '../../../src/engine/season/season.ts';
import { type TracedCell, traceCell } from '../../../src/explain/trace/trace-cell.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import type { ShownText } from './shown-text.ts';

const MS_PER_DAY = 86_400_000;

const wordsOf = (text: string): readonly string[] =>
  [...text.matchAll(/\p{L}[\p{L}\p{M}]*/gu)].map(([word]) => word).filter((word) => /[A-Za-z]/.test(word));

/** The words that `Intl` writes for a locale: months, weekdays, times, spelled units and the word in a list. */
export function intlWords(locale: string): readonly string[] {
  const days = Array.from({ length: 366 }, (_, day) => new Date(Date.UTC(2027, 0, 1) + day * MS_PER_DAY));
  const styles: readonly Intl.DateTimeFormatOptions[] = [
    ...(['short', 'long'] as const).flatMap((style) => [
      { day: 'numeric', month: style, year: 'numeric' } as const,
      { month: style, year: 'numeric' } as const,
      { month: style } as const,
      { weekday: style } as const,
    ]),
    { weekday: 'narrow' },
    { dateStyle: 'long', timeStyle: 'short' },
  ];
  const dates = styles.flatMap((style) => {
    const format = new Intl.DateTimeFormat(locale, { timeZone: 'UTC', ...style });
    return days.map((day) => format.format(day));
  });
  const units = ['gallon', 'inch', 'liter', 'millimeter', 'minute', 'hour', 'day'].flatMap((unit) => {
    const format = new Intl.NumberFormat(locale, { style: 'unit', unit, unitDisplay: 'long' });
    return [0, 0.5, 1, 2, 5].map((count) => format.format(count));
  });
  const list = new Intl.ListFormat(locale, { type: 'conjunction' }).format(['1', '2', '3']);
  return [...dates, ...units, list].flatMap(wordsOf);
}

/** Plan with names and notes in Greek letters, so that every word in Latin ones comes from somewhere else. */
export function inGreek(plan: Plan): Plan {
  let count = 0;
  return JSON.parse(JSON.stringify(plan), (key, value) => {
    const isName = ['name', 'notes', 'note', 'place', 'source'].includes(key) && typeof value === 'string';
    return isName ? `Ζώνη ${++count}` : value;
  });
}

/** The words of publications that the trace of a cell cites: every language has them alike. */
export function citedWords(season: Season, cell: TracedCell): readonly string[] {
  const cited = traceCell(season, cell).flatMap(({ source }) =>
    source.map((each) => (typeof each === 'string' ? each : 'cite' in each ? (each.cite ?? '') : '')),
  );
  return cited.flatMap(wordsOf);
}

/** Words with a Latin letter that stand without an accent, each with its place, but for those that are known. */
export function plainWords(texts: readonly ShownText[], known: ReadonlySet<string>): readonly string[] {
  const found = texts.flatMap(({ place, text }) => {
    const words = wordsOf(text).filter((word) => !known.has(word));
    return words.length === 0 ? [] : [`${place}: ${words.join(' ')} in “${text.trim().slice(0, 100)}”`];
  });
  return [...new Set(found)];
}
