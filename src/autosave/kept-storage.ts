/** Where one plan is kept in this browser: under its key, and beside it what was put aside or not entered yet. */
import { BrowserTexts, type Found, type StorageFault } from './browser-texts.ts';
import type { KeptCopy } from './kept-copy.ts';
import { newId, StorageShelf } from './storage-shelf.ts';

export class KeptStorage {
  /** Plans that would have been overwritten. */
  readonly aside: StorageShelf;
  /** What was typed and is no edit yet. */
  readonly typed: StorageShelf;
  readonly #main: string;
  readonly #texts: BrowserTexts;

  /** `storage` as for `BrowserTexts`. */
  constructor(key: string, storage: () => Storage | null, copy?: KeptCopy) {
    this.#main = `runnel:${key}`;
    this.#texts = new BrowserTexts(storage, copy);
    this.aside = new StorageShelf(this.#texts, 'aside', key);
    this.typed = new StorageShelf(this.#texts, 'typed', key);
  }

  read(): Found {
    return this.#texts.get(this.#main);
  }

  write(text: string): StorageFault | undefined {
    return this.#texts.set(this.#main, text);
  }

  /** Whether a change of a storage may be of this plan; null stands for a change of everything. */
  isMine(key: string | null): boolean {
    return key === null || key === this.#main || this.aside.holds(key);
  }

  /** Moves what lies under the key, and leaves it there where it cannot be moved. */
  moveAside(): StorageFault | undefined {
    const { text, fault } = this.read();
    if (text === undefined) return fault;
    const id = newId();
    let failed = this.aside.put(id, text);
    this.#texts.remove(this.#main);
    // There may be room for it only once.
    if (failed === 'full') failed = this.aside.put(id, text);
    if (failed !== undefined) {
      this.aside.remove(id);
      this.write(text);
    }
    return failed;
  }

  /** Puts back what lay beside the plan and is missing, and gives the copy of what lies under the key. */
  async restore(): Promise<string | undefined> {
    const texts = await this.#texts.copied();
    for (const [key, text] of texts) {
      const isBeside = this.aside.holds(key) || this.typed.holds(key);
      if (isBeside && this.#texts.get(key).text === undefined) this.#texts.set(key, text);
    }
    return texts.get(this.#main);
  }
}
