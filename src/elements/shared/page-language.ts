/** What the one script of a page needs of languages: how a host registers one, and what stands where an element did not come. */
import { pageWords } from '../../language/en/page.ts';
import { languageFor } from '../../language/languages.ts';
import { resolveLocale } from './resolve-locale.ts';

export { registerLanguage } from '../../language/register-language.ts';

/** In place of an element whose code could not be loaded, in the page's language. */
export function notLoadedText(element: Element): string {
  return pageWords(languageFor(resolveLocale(element, undefined))).notLoaded;
}
