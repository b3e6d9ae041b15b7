/** Where one plan is saved in this browser: under its key, and beside it other copies and what is typed but not entered. */
import type { StorageMirror } from './storage-mirror.ts';
import { type Found, newId, type StorageFault, TextGroup, TextStorage } from './text-storage.ts';

export class PlanStorage {
  /** Plans that would have been overwritten. */
  readonly copies: TextGroup;
  /** What was typed and is no edit yet. */
  readonly drafts: TextGroup;
  readonly #key: string;
  readonly #texts: TextStorage;

  /** `storage` as for `TextStorage`. Keys are named as version 0.1.0 named them: what it saved is found. */
  constructor(key: string, storage: () => Storage | null, mirror?: StorageMirror) {
    this.#key = `runnel:${key}`;
    this.#texts = new TextStorage(storage, mirror);
    this.copies = new TextGroup(this.#texts, 'aside', key);
    this.drafts = new TextGroup(this.#texts, 'typed', key);
  }

  read(): Found {
    return this.#texts.get(this.#key);
  }

  write(text: string): StorageFault | undefined {
    return this.#texts.set(this.#key, text);
  }

  /** Whether a change of a storage may be of this plan; null stands for a change of everything. */
  hasKey(key: string | null): boolean {
    return key === null || key === this.#key || this.copies.hasKey(key);
  }

  /** Makes a copy of what lies under the key; it stays there where it cannot be moved. */
  moveToCopies(): StorageFault | undefined {
    const { text, fault } = this.read();
    if (text === undefined) return fault;
    const id = newId();
    let failed = this.copies.put(id, text);
    this.#texts.remove(this.#key);
    // There may be room for it only once.
    if (failed === 'full') failed = this.copies.put(id, text);
    if (failed !== undefined) {
      this.copies.remove(id);
      this.write(text);
    }
    return failed;
  }

  /** Brings back copies and drafts that are missing, and gives the mirror's text of what lies under the key. */
  async restore(): Promise<string | undefined> {
    const texts = await this.#texts.mirrored();
    for (const [key, text] of texts) {
      const isBeside = this.copies.hasKey(key) || this.drafts.hasKey(key);
      if (isBeside && this.#texts.get(key).text === undefined) this.#texts.set(key, text);
    }
    return texts.get(this.#key);
  }
}
