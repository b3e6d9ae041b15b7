/** How a table is written: what parts its columns, its decimal mark, the order of its days. Told from the whole of it. */
import { isStretchEnd } from './stretch.ts';

export type Separator = ',' | ';' | '\t' | '|';
export type DecimalMark = '.' | ',';
export type DayOrder = 'year-month-day' | 'day-month-year' | 'month-day-year';

export interface TableForm {
  readonly separator: Separator;
  readonly decimal: DecimalMark;
  /** Undefined for a table without days. */
  readonly days?: DayOrder | undefined;
}

/** What a person has said of a table. */
export type FormChoice = Partial<Pick<TableForm, 'decimal' | 'days'>>;

/** What could be read in two ways: nothing is taken before a person has said which. */
export type FormQuestion = keyof FormChoice;

/** What was told of a table; undefined where two readings are possible. */
export interface Told<Answer> {
  readonly answer: Answer | undefined;
}

const SURE: readonly (readonly [RegExp, DecimalMark])[] = [
  [/^[+-]?\d{1,3}(?:\.\d{3})+,\d+$/, ','],
  [/^[+-]?\d{1,3}(?:,\d{3})+\.\d+$/, '.'],
  [/^[+-]?[1-9]\d{0,2}(?:\.\d{3}){2,}$/, ','],
  [/^[+-]?[1-9]\d{0,2}(?:,\d{3}){2,}$/, '.'],
  [/^[+-]?(?![1-9]\d{0,2},\d{3}$)\d*,\d+$/, ','],
  [/^[+-]?(?![1-9]\d{0,2}\.\d{3}$)\d*\.\d+$/, '.'],
];

/** `1,204`: thousands, or a number with three decimals. */
const EITHER = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * The decimal mark of a table's figures. Where both marks are met, the one that more of them have: the others cannot be read then.
 * Three digits after a point are decimals, as data files have them, unless semicolons part the columns.
 */
export function* decimalSteps(figures: Iterable<string>, separator: Separator): Generator<void, Told<DecimalMark>> {
  const count = { '.': 0, ',': 0 };
  let either = false;
  let seen = 0;
  for (const figure of figures) {
    if (isStretchEnd(seen++)) yield;
    const sure = SURE.find(([pattern]) => pattern.test(figure));
    if (sure !== undefined) count[sure[1]]++;
    else if (EITHER.test(figure)) either ||= figure.includes(',') || separator === ';';
  }
  if (count[','] === 0 && count['.'] === 0) return { answer: either ? undefined : '.' };
  return { answer: count[','] > count['.'] ? ',' : '.' };
}

/** The order of a table's days: where no day is beyond the 12th, day and month could be either. */
export function* dayOrderSteps(days: Iterable<string>): Generator<void, Told<DayOrder>> {
  const count = { 'day-month-year': 0, 'month-day-year': 0, either: 0 };
  let seen = 0;
  for (const day of days) {
    if (isStretchEnd(seen++)) yield;
    const order = orderIn(day);
    if (order !== undefined) count[order]++;
  }
  const { 'day-month-year': dayFirst, 'month-day-year': monthFirst, either } = count;
  if (dayFirst === 0 && monthFirst === 0) return { answer: either > 0 ? undefined : 'year-month-day' };
  if (dayFirst === monthFirst) return { answer: undefined };
  return { answer: dayFirst > monthFirst ? 'day-month-year' : 'month-day-year' };
}

/** What one day shows; undefined where the year stands first, which is never anything else. Points part days that begin with the day. */
function orderIn(day: string): 'day-month-year' | 'month-day-year' | 'either' | undefined {
  const [, first = '', mark, second = ''] = /^(\d{1,2})([-/.])(\d{1,2})\2\d/.exec(day) ?? [];
  if (mark === undefined) return undefined;
  if (Number(first) > 12 || mark === '.') return 'day-month-year';
  return Number(second) > 12 ? 'month-day-year' : 'either';
}
