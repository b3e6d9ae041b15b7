/** The language of an element: a registered one is used once it is loaded, and all is in the one before until then. */
import { isLanguageMissing, languageFor, loadLanguage, subscribeToLanguages } from '../../language/languages.ts';

export class ElementLanguage {
  readonly #onLocale: (locale: string) => void;
  #wanted: string | undefined;
  #locale: string | undefined;
  #hasWarned = false;
  #unsubscribe: () => void = () => undefined;

  /** `onLocale` is given each locale that is to be shown: one that the language at hand speaks. */
  constructor(onLocale: (locale: string) => void) {
    this.#onLocale = onLocale;
  }

  /** Whether the first language is still on its way. */
  get isPending(): boolean {
    return this.#locale === undefined;
  }

  /** A language that is registered from now on is taken up. */
  connect(): void {
    this.#unsubscribe();
    this.#unsubscribe = subscribeToLanguages(() => {
      if (this.#wanted !== undefined) this.want(this.#wanted);
    });
  }

  disconnect(): void {
    this.#unsubscribe();
  }

  /** Follows the reader's locale. While its language is loading the one before is used. */
  want(locale: string): void {
    this.#wanted = locale;
    if (isLanguageMissing(locale)) void this.#load(locale);
    else this.#show(locale);
  }

  async #load(locale: string): Promise<void> {
    try {
      await loadLanguage(locale);
    } catch (error) {
      this.#warn(locale, error);
      // The language before, if there was one, is better than another.
      if (!this.isPending) return;
    }
    if (locale === this.#wanted) this.#show(locale);
  }

  /** English where the language did not come. */
  #show(locale: string): void {
    const shown = languageFor(locale).locale;
    if (shown === this.#locale) return;
    this.#locale = shown;
    this.#onLocale(shown);
  }

  #warn(locale: string, error: unknown): void {
    if (this.#hasWarned) return;
    this.#hasWarned = true;
    console.warn(`Runnel: the language for "${locale}" could not be loaded.`, error);
  }
}
