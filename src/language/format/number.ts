/** A figure that cannot be told. */
export const NO_FIGURE = '–';

const formats = new Map<string, Intl.NumberFormat>();

/** A number in the reader's locale with at most `most` and at least `least` decimals; never “-0”, “–” where there is none. */
export function formatNumber(value: number, locale: string, most = 0, least = 0): string {
  if (!Number.isFinite(value)) return NO_FIGURE;
  return numberFormat(locale, most, least).format(value);
}

/** A share of 1 as a whole percentage, its sign where the language has it: `19%`. */
export function formatPercent(share: number, locale: string): string {
  return Number.isFinite(share) ? percentFormat(locale).format(share) : NO_FIGURE;
}

const percentFormats = new Map<string, Intl.NumberFormat>();

function percentFormat(locale: string): Intl.NumberFormat {
  let format = percentFormats.get(locale);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0, signDisplay: 'negative' });
    percentFormats.set(locale, format);
  }
  return format;
}

function numberFormat(locale: string, most: number, least: number): Intl.NumberFormat {
  const key = `${locale} ${most} ${least}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      maximumFractionDigits: most,
      minimumFractionDigits: least,
      signDisplay: 'negative',
    });
    formats.set(key, format);
  }
  return format;
}
