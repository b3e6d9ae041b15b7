/** Texts in this browser by their keys: in `localStorage`, and in the copy that outlives a killed browser. */
import type { KeptCopy } from './kept-copy.ts';

export type StorageFault = 'full' | 'forbidden';

export interface Found {
  readonly text: string | undefined;
  readonly fault?: StorageFault;
}

/** Every access asks for the storage anew: what is forbidden or full now may work in a minute. */
export class BrowserTexts {
  readonly #storage: () => Storage | null;
  readonly #copy: KeptCopy | undefined;

  /** `storage` may throw or give null, as a browser's own does where a page may keep nothing. */
  constructor(storage: () => Storage | null, copy?: KeptCopy) {
    this.#storage = storage;
    this.#copy = copy;
  }

  get(key: string): Found {
    try {
      const storage = this.#storage();
      return storage === null ? FORBIDDEN : { text: storage.getItem(key) ?? undefined };
    } catch {
      return FORBIDDEN;
    }
  }

  set(key: string, text: string): StorageFault | undefined {
    this.#copy?.set(key, text);
    try {
      const storage = this.#storage();
      if (storage === null) return 'forbidden';
      storage.setItem(key, text);
      return undefined;
    } catch (error) {
      return isFull(error) ? 'full' : 'forbidden';
    }
  }

  remove(key: string): void {
    this.#copy?.remove(key);
    try {
      this.#storage()?.removeItem(key);
    } catch {
      // What cannot be removed stays, and is offered again.
    }
  }

  /** None where the storage is forbidden. */
  keys(): readonly string[] {
    try {
      const storage = this.#storage();
      return Array.from({ length: storage?.length ?? 0 }, (_, place) => storage?.key(place) ?? '');
    } catch {
      return [];
    }
  }

  /** All texts of the copy by their keys. */
  async copied(): Promise<ReadonlyMap<string, string>> {
    return (await this.#copy?.all()) ?? new Map<string, string>();
  }
}

const FORBIDDEN: Found = { text: undefined, fault: 'forbidden' };

function isFull(error: unknown): boolean {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED';
}
