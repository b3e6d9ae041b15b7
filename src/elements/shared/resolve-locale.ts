/** The locale of an element's numbers and dates: its own, else the reader's form of the page's language, else that language. */
export function resolveLocale(element: Element, own: string | undefined): string {
  if (own !== undefined && isLocale(own)) return own;
  const marked = element.closest<HTMLElement>('[lang]')?.lang ?? document.documentElement.lang;
  const page = isLocale(marked) ? marked : navigator.language;
  // A page in “en” read in Britain has its days before its months.
  return navigator.languages.find((language) => languageOf(language) === page) ?? page;
}

const languageOf = (locale: string): string => new Intl.Locale(locale).language;

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length > 0;
  } catch {
    return false;
  }
}
