/** The reader's name of what the tables of data name by language. */
import type { Names } from '../engine/names.ts';
import { namesWords } from './en/names.ts';
import type { Language } from './language.ts';

/**
 * As the registered language has it; else what the table has for the language's own tag, for the language alone, or in English; of
 * English, `en-GB` for all but the United States.
 */
export function nameIn(names: Names, reader: Language): string {
  const { locale, isUs } = reader;
  const { language } = new Intl.Locale(locale);
  const isOtherEnglish = language === 'en' && !isUs;
  const own = namesWords(reader)[names.en] ?? names[locale];
  return own ?? (isOtherEnglish ? names['en-GB'] : undefined) ?? names[language] ?? names.en;
}
