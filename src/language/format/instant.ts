/** `16 June 2027 at 10:46`: an instant (ISO 8601) on the reader's own clock, as the locale has it. */
export function formatInstant(instant: string, locale: string): string {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeStyle: 'short' }).format(new Date(instant));
}
