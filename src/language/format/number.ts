/** A figure that cannot be told. */
export const NO_FIGURE = '–';

/** By locale, then by kind of format: asked for by every cell that is drawn. */
const formats = new Map<string, Map<number, Intl.NumberFormat>>();

/** A number in the reader's locale with at most `most` and at least `least` decimals; never “-0”, “–” where there is none. */
export function formatNumber(value: number, locale: string, most = 0, least = 0): string {
  if (!Number.isFinite(value)) return NO_FIGURE;
  const format = known(locale, 32 * most + least, () => ({
    maximumFractionDigits: most,
    minimumFractionDigits: least,
  }));
  return format.format(value);
}

/** A number as one would type it: thousands are not parted. */
export function formatPlainNumber(value: number, locale: string, most: number): string {
  return known(locale, PLAIN + most, () => ({ useGrouping: false, maximumFractionDigits: most })).format(value);
}

/** A share of 1 as a whole percentage, its sign where the language has it: `19%`. */
export function formatPercent(share: number, locale: string): string {
  if (!Number.isFinite(share)) return NO_FIGURE;
  return known(locale, PERCENT, () => ({ style: 'percent', maximumFractionDigits: 0 })).format(share);
}

const PLAIN = 10_000;
const PERCENT = 20_000;

function known(locale: string, kind: number, options: () => Intl.NumberFormatOptions): Intl.NumberFormat {
  let ofLocale = formats.get(locale);
  if (ofLocale === undefined) {
    ofLocale = new Map();
    formats.set(locale, ofLocale);
  }
  let format = ofLocale.get(kind);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, { signDisplay: 'negative', ...options() });
    ofLocale.set(kind, format);
  }
  return format;
}

const spelled = new Map<string, Intl.NumberFormat>();

/** `60 gallons`, `1 minute`: `unit` as `Intl` names it, its word in the form that the number asks for, never parted from it. */
export function formatSpelledOut(value: number, unit: string, locale: string, most: number): string {
  if (!Number.isFinite(value)) return NO_FIGURE;
  const key = `${locale} ${unit} ${most}`;
  let format = spelled.get(key);
  if (format === undefined) {
    format = new Intl.NumberFormat(locale, {
      style: 'unit',
      unit,
      unitDisplay: 'long',
      maximumFractionDigits: most,
      signDisplay: 'negative',
    });
    spelled.set(key, format);
  }
  return format.format(value).replaceAll(' ', '\u00a0');
}
