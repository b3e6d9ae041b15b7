/** Where one plan is kept in this browser: under its key, and beside it what was put aside rather than overwritten. */
import type { KeptCopy } from './kept-copy.ts';

export type StorageFault = 'full' | 'forbidden';

export interface Found {
  readonly text: string | undefined;
  readonly fault?: StorageFault;
}

/** Every access asks for the storage anew: what is forbidden or full now may work in a minute. */
export class KeptStorage {
  readonly #main: string;
  readonly #asideEnd: string;
  readonly #storage: () => Storage | null;
  readonly #copy: KeptCopy | undefined;

  /** `storage` may throw or give null, as a browser's own does where a page may keep nothing. */
  constructor(key: string, storage: () => Storage | null, copy?: KeptCopy) {
    this.#main = `runnel:${key}`;
    this.#asideEnd = `:${key}`;
    this.#storage = storage;
    this.#copy = copy;
  }

  read(): Found {
    return this.#get(this.#main);
  }

  write(text: string): StorageFault | undefined {
    return this.#set(this.#main, text);
  }

  /** Whether a change of a storage may be of this plan; null stands for a change of everything. */
  isMine(key: string | null): boolean {
    return key === null || key === this.#main || this.#isAside(key);
  }

  /** Moves what lies under the key, and leaves it there where it cannot be moved. */
  moveAside(): StorageFault | undefined {
    const { text, fault } = this.read();
    if (text === undefined) return fault;
    const id = newId();
    let failed = this.putAside(id, text);
    this.#remove(this.#main);
    // There may be room for it only once.
    if (failed === 'full') failed = this.putAside(id, text);
    if (failed !== undefined) {
      this.removeAside(id);
      this.#set(this.#main, text);
    }
    return failed;
  }

  putAside(id: string, text: string): StorageFault | undefined {
    return this.#set(this.#asideKey(id), text);
  }

  readAside(id: string): Found {
    return this.#get(this.#asideKey(id));
  }

  removeAside(id: string): void {
    this.#remove(this.#asideKey(id));
  }

  /** Ids of all that was put aside. */
  listAside(): readonly string[] {
    try {
      const storage = this.#storage();
      const keys = Array.from({ length: storage?.length ?? 0 }, (_, place) => storage?.key(place) ?? '');
      return keys.filter((key) => this.#isAside(key)).map((key) => key.slice(ASIDE.length, -this.#asideEnd.length));
    } catch {
      return [];
    }
  }

  /** Puts back what was put aside and is missing, and gives the copy of what lies under the key. */
  async restore(): Promise<string | undefined> {
    const texts = (await this.#copy?.all()) ?? new Map<string, string>();
    for (const [key, text] of texts) {
      if (this.#isAside(key) && this.#get(key).text === undefined) this.#set(key, text);
    }
    return texts.get(this.#main);
  }

  #asideKey(id: string): string {
    return `${ASIDE}${id}${this.#asideEnd}`;
  }

  #isAside(key: string): boolean {
    const end = key.indexOf(':', ASIDE.length);
    return key.startsWith(ASIDE) && end > 0 && key.slice(end) === this.#asideEnd;
  }

  #get(key: string): Found {
    try {
      const storage = this.#storage();
      return storage === null ? FORBIDDEN : { text: storage.getItem(key) ?? undefined };
    } catch {
      return FORBIDDEN;
    }
  }

  #set(key: string, text: string): StorageFault | undefined {
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

  #remove(key: string): void {
    this.#copy?.remove(key);
    try {
      this.#storage()?.removeItem(key);
    } catch {
      // What cannot be removed stays, and is offered again.
    }
  }
}

const ASIDE = 'runnel-aside:';

const FORBIDDEN: Found = { text: undefined, fault: 'forbidden' };

/** Not `crypto.randomUUID`, which pages without https lack. */
export function newId(): string {
  return Math.random().toString(36).slice(2, 10);
}

function isFull(error: unknown): boolean {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED';
}
