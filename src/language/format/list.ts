const formats = new Map<string, Intl.ListFormat>();

/** `Mint, sage and thyme`. */
export function formatList(items: readonly string[], locale: string): string {
  return listFormat(locale, 'conjunction').format(items);
}

/** `mint, sage or thyme`. */
export function formatEither(items: readonly string[], locale: string): string {
  return listFormat(locale, 'disjunction').format(items);
}

function listFormat(locale: string, type: 'conjunction' | 'disjunction'): Intl.ListFormat {
  const key = `${locale} ${type}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.ListFormat(locale, { type });
    formats.set(key, format);
  }
  return format;
}
