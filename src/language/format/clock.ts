/** `5:30 AM`: an instant, ms since 1970, as clocks of a time zone show it. */
export function formatClock(instant: number, timeZone: string, locale: string): string {
  const key = `${locale} ${timeZone}`;
  let format = formats.get(key);
  if (format === undefined) {
    format = new Intl.DateTimeFormat(locale, { timeStyle: 'short', timeZone });
    formats.set(key, format);
  }
  return format.format(instant);
}

const formats = new Map<string, Intl.DateTimeFormat>();
