const formats = new Map<string, Intl.NumberFormat>();

/** An amount of money in the reader's locale: `$14.20`. `currency`: its ISO 4217 code. */
export function formatMoney(amount: number, currency: string, locale: string): string {
  const key = `${locale} ${currency}`;
  const format =
    formats.get(key) ?? new Intl.NumberFormat(locale, { style: 'currency', currency, signDisplay: 'negative' });
  formats.set(key, format);
  return format.format(amount);
}
