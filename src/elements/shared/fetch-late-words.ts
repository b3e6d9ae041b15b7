import { loadLanguage, wantWords } from '../../language/languages.ts';
import type { LateWordsPart } from '../../language/late-words.ts';

/** Fetches the words of a part, where the locale's language keeps them apart. Where they do not come, what they say is said in English. */
export async function fetchLateWords(part: LateWordsPart, locale: string): Promise<void> {
  wantWords(part);
  await loadLanguage(locale).catch(() => undefined);
}
