import { formatNumber } from './number.ts';
import { type Forms, pluralForm } from './plural.ts';
import { withUnit } from './quantity.ts';

/** A number with its word in the form that the language gives it: `1 zone`, `8 zones`. */
export function formatCount(count: number, forms: Forms, locale: string): string {
  return withUnit(formatNumber(count, locale), pluralForm(count, forms, locale));
}
