/** The languages that a page has: which are registered, which are loaded, and which speaks to a reader. */
import { englishFor, type Language } from './language.ts';

/** All areas of a language by their keys, at once or when it has come. */
type Load = () => Areas | Promise<Areas>;
type Areas = Readonly<Record<string, unknown>>;

const loads = new Map<string, Load>();
const loaded = new Map<string, Areas>();
const found = new Map<string, Language>();
const listeners = new Set<() => void>();

/** Makes a language known by its tag. Nothing is loaded until a page asks for it; registered again, the last one counts. */
export function registerAreas(tag: string, load: Load): void {
  const key = canonical(tag);
  loads.set(key, load);
  loaded.delete(key);
  found.clear();
  for (const listener of [...listeners]) listener();
}

/** Calls back after each registration. Returns the function that ends the subscription. */
export function subscribeToLanguages(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Loads what a locale needs. Rejects where a registered language does not come; English needs nothing. */
export async function loadLanguage(locale: string): Promise<Language> {
  const key = registeredFor(locale);
  const load = key === undefined ? undefined : loads.get(key);
  if (key !== undefined && load !== undefined && !loaded.has(key)) {
    loaded.set(key, await load());
    found.clear();
  }
  return languageFor(locale);
}

/** Whether `languageFor` would say another language once `loadLanguage` has done its work. */
export function isLanguageMissing(locale: string): boolean {
  const key = registeredFor(locale);
  return key !== undefined && !loaded.has(key);
}

/** The language that speaks to a reader now: a loaded one for the locale or its language, else English. The same object each time. */
export function languageFor(locale: string): Language {
  const known = found.get(locale);
  if (known !== undefined) return known;
  const key = registeredFor(locale);
  const areas = key === undefined ? undefined : loaded.get(key);
  const language = areas === undefined ? englishFor(locale) : { locale, isUs: false, areas };
  found.set(locale, language);
  return language;
}

/** For `es-MX` the language registered as `es-MX`, else as `es`. */
function registeredFor(locale: string): string | undefined {
  const { baseName, language, script, region } = new Intl.Locale(locale);
  // A tag with a part that is not there is registered by nobody.
  return [baseName, `${language}-${script}`, `${language}-${region}`, language].find((tag) => loads.has(tag));
}

const canonical = (tag: string): string => new Intl.Locale(tag).baseName;
