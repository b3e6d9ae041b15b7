/** What the one script of a page needs of languages: how a host registers one, and what stands where an element did not come. */
import { page, pageWords } from '../../language/en/page.ts';
import { languageFor } from '../../language/languages.ts';
import { resolveLocale } from './resolve-locale.ts';

export { registerLanguage } from '../../language/register-language.ts';

/** Where an element, or a div that stands for one, has a name that there is not. */
export function noSuchElementText(element: Element, what: string, known: string): string {
  // A language that was made for an earlier version has no word for it.
  const only = pageWords(languageFor(resolveLocale(element, undefined))).only ?? page.only;
  return [`${what}?`, only, known].join(' ');
}

/** In place of an element whose code could not be loaded, in the page's language. */
export function notLoadedText(element: Element): string {
  return pageWords(languageFor(resolveLocale(element, undefined))).notLoaded;
}
