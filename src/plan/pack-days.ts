/** Days in a row as one text, in few letters: the reverse of `compact-days.ts`. */
import { COMPACT_MARK, FIRST_SIGN, LAST_BEFORE_BACKSLASH, LONG, MISSING, ZEROS } from './compact-days.ts';
import { FIGURES_IN_A_UNIT } from './packed-days.ts';

const MOST_ZEROS = 64;

/** The text of days in a row, mm each, NaN where a day is missing. At least one. */
export function packedDays(mm: Iterable<number>): string {
  let text = COMPACT_MARK;
  let zeros = 0;
  const put = (...digits: readonly number[]) => {
    for (const digit of digits) {
      const code = FIRST_SIGN + digit;
      text += String.fromCharCode(code > LAST_BEFORE_BACKSLASH ? code + 1 : code);
    }
  };
  const putZeros = () => {
    for (; zeros > 0; zeros -= Math.min(zeros, MOST_ZEROS)) put(ZEROS, Math.min(zeros, MOST_ZEROS) - 1);
  };
  for (const depth of mm) {
    const figure = Math.round(depth * FIGURES_IN_A_UNIT.metric);
    if (figure === 0) {
      zeros += 1;
      continue;
    }
    putZeros();
    put(...(Number.isNaN(figure) ? [MISSING] : digitsOf(figure)));
  }
  putZeros();
  return text;
}

/** Of a whole number from 1 to 262,143. */
function digitsOf(figure: number): readonly number[] {
  const last = figure % 64;
  const before = Math.floor(figure / 64);
  return before < LONG ? [before, last] : [LONG, Math.floor(before / 64), before % 64, last];
}
