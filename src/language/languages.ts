/** The languages that a page has: which are registered, which are loaded, and which speaks to a reader. */
import { englishFor, type Language } from './language.ts';

/** Areas of a language by their keys, at once or when they have come. */
type Load = () => Areas | Promise<Areas>;
type Areas = Readonly<Record<string, unknown>>;

/** Loads of a language by its parts: what every page says under `EVERYWHERE`, each late part under its name. */
type Loads = Readonly<Record<string, Load | undefined>>;

const EVERYWHERE = '';

const registered = new Map<string, Loads>();
const loaded = new Map<string, Map<string, Areas>>();
const found = new Map<string, Language>();
const merged = new Map<string, Areas>();
const wanted = new Set<string>([EVERYWHERE]);
const listeners = new Set<() => void>();
let rightToLeft = false;

/** Scripts that are written from right to left (Unicode CLDR, `layout`), as far as a language of today is. */
const RIGHT_TO_LEFT: readonly (string | undefined)[] = ['Arab', 'Hebr', 'Thaa', 'Syrc', 'Nkoo', 'Adlm', 'Rohg'];

/** Whether a language is registered that is written from right to left. */
export function isAnyRightToLeft(): boolean {
  return rightToLeft;
}

/** Makes a language known by its tag. Nothing is loaded until a page asks for it; registered again, the last one counts. */
export function registerAreas(tag: string, load: Load, late: Loads = {}): void {
  const key = canonical(tag);
  rightToLeft ||= RIGHT_TO_LEFT.includes(new Intl.Locale(key).maximize().script);
  registered.set(key, { ...late, [EVERYWHERE]: load });
  loaded.set(key, new Map());
  forget(key);
  for (const listener of [...listeners]) listener();
}

/** Calls back after each registration. Returns the function that ends the subscription. */
export function subscribeToLanguages(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** From now on every language is loaded with this late part of its words. Await `loadLanguage` before they are shown. */
export function wantWords(part: string): void {
  wanted.add(part);
}

/** Loads what a locale needs. Rejects where a registered language does not come; English needs nothing. */
export async function loadLanguage(locale: string): Promise<Language> {
  const key = registeredFor(locale);
  if (key !== undefined) await Promise.all(missingParts(key).map((part) => loadPart(key, part)));
  return languageFor(locale);
}

/** Whether `languageFor` would say another language, or more of it, once `loadLanguage` has done its work. */
export function isLanguageMissing(locale: string): boolean {
  const key = registeredFor(locale);
  return key !== undefined && missingParts(key).length > 0;
}

/** The language that speaks to a reader now: a loaded one for the locale or its language, else English. The same object each time. */
export function languageFor(locale: string): Language {
  const known = found.get(locale);
  if (known !== undefined) return known;
  const key = registeredFor(locale);
  const areas = key === undefined ? undefined : areasOf(key);
  const language = areas === undefined ? englishFor(locale) : { locale, isUs: false, areas };
  found.set(locale, language);
  return language;
}

/** The same object until another part has come; undefined while what every page says is missing. */
function areasOf(key: string): Areas | undefined {
  const parts = loaded.get(key);
  if (!parts?.has(EVERYWHERE)) return undefined;
  const areas = merged.get(key) ?? Object.assign({}, ...parts.values());
  merged.set(key, areas);
  return areas;
}

const missingParts = (key: string): string[] =>
  [...wanted].filter((part) => registered.get(key)?.[part] !== undefined && !loaded.get(key)?.has(part));

async function loadPart(key: string, part: string): Promise<void> {
  const load = registered.get(key)?.[part];
  const areas = await load?.();
  // Another may have been registered in the meantime.
  if (areas === undefined || registered.get(key)?.[part] !== load) return;
  loaded.get(key)?.set(part, areas);
  forget(key);
}

function forget(key: string): void {
  merged.delete(key);
  found.clear();
}

/** For `es-MX` the language registered as `es-MX`, else as `es`. */
function registeredFor(locale: string): string | undefined {
  const { baseName, language, script, region } = new Intl.Locale(locale);
  // A tag with a part that is not there is registered by nobody.
  return [baseName, `${language}-${script}`, `${language}-${region}`, language].find((tag) => registered.has(tag));
}

const canonical = (tag: string): string => new Intl.Locale(tag).baseName;
