/** A browser's storage whose end can be reached at will. */
export class FakeStorage implements Storage {
  readonly #texts = new Map<string, string>();
  /** In characters of keys and texts. */
  quota = 5_000_000;
  isForbidden = false;

  get length(): number {
    return this.#texts.size;
  }

  key(index: number): string | null {
    return [...this.#texts.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    return this.#texts.get(key) ?? null;
  }

  setItem(key: string, text: string): void {
    const others = [...this.#texts].filter(([other]) => other !== key).flat();
    const size = [...others, key, text].reduce((sum, each) => sum + each.length, 0);
    if (size > this.quota) throw new DOMException('The quota has been exceeded.', 'QuotaExceededError');
    this.#texts.set(key, text);
  }

  removeItem(key: string): void {
    this.#texts.delete(key);
  }

  clear(): void {
    this.#texts.clear();
  }

  /** As `window.localStorage` is read: it throws where a page may keep nothing. */
  readonly access = (): Storage => {
    if (this.isForbidden) throw new DOMException('Access is denied for this document.', 'SecurityError');
    return this;
  };
}
