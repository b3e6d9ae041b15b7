/**
 * A language of readers. English is always there, in two variants: of the United States, and of everybody else.
 * Others are registered (`register-language.ts`).
 */

/** The words of one language, area by area, and how its numbers and dates are written. */
export interface Language {
  /** BCP 47 tag for `Intl`: the reader's own where the language speaks it, else that of the English they get. */
  readonly locale: string;
  /** Whether its English is that of the United States: `gal`, `color`, `June 21`. */
  readonly isUs: boolean;
  /** Every area of a registered language, by its key; absent for English, whose areas come with what shows them. */
  readonly areas?: Readonly<Record<string, unknown>>;
}

export const US_ENGLISH: Language = Object.freeze({ locale: 'en-US', isUs: true });
export const BRITISH_ENGLISH: Language = Object.freeze({ locale: 'en-GB', isUs: false });

/** The English for a reader whose locale no registered language speaks: numbers, dates and plurals are English too. */
export function englishFor(locale: string): Language {
  const { language, region } = new Intl.Locale(locale).maximize();
  const isUs = region === 'US';
  if (language === 'en') return { locale, isUs };
  return isUs ? US_ENGLISH : BRITISH_ENGLISH;
}
