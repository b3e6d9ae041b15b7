import { formatNumber } from './number.ts';
import { withUnit } from './quantity.ts';

/** A number with the word for one or for several: `1 zone`, `8 zones`. */
export function formatCount(
  count: number,
  words: { readonly one: string; readonly other: string },
  locale: string,
): string {
  return withUnit(formatNumber(count, locale), count === 1 ? words.one : words.other);
}
