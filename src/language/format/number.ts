/** A figure that cannot be told. */
export const NO_FIGURE = '–';

const formats = new Map<string, Intl.NumberFormat>();

/** A number in the reader's locale with at most `most` and at least `least` decimals; never “-0”, “–” where there is none. */
export function formatNumber(value: number, locale: string, most = 0, least = 0): string {
  if (!Number.isFinite(value)) return NO_FIGURE;
  return numberFormat(locale, most, least).format(value);
}

/** A share of 1 as a whole percentage. */
export function formatPercent(share: number, locale: string): string {
  return `${formatNumber(share * 100, locale)}\u00a0%`;
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
