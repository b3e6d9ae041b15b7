/** The reader's name of what the tables of data name by language. */
import type { Names } from '../engine/names.ts';
import type { Language } from './language.ts';

/** By the language's own tag, else by the language alone, else English; of English, `en-GB` for all but the United States. */
export function nameIn(names: Names, { locale, isUs }: Language): string {
  const { language } = new Intl.Locale(locale);
  const isOtherEnglish = language === 'en' && !isUs;
  return names[locale] ?? (isOtherEnglish ? names['en-GB'] : undefined) ?? names[language] ?? names.en;
}
