/** Texts in this browser by their keys: in `localStorage`, and in the mirror that outlives a browser that is killed. */
import type { StorageMirror } from './storage-mirror.ts';

export type StorageFault = 'full' | 'forbidden';

export interface Found {
  readonly text: string | undefined;
  readonly fault?: StorageFault;
}

/** Every access asks for the storage anew: what is forbidden or full now may work in a minute. */
export class TextStorage {
  readonly #storage: () => Storage | null;
  readonly #mirror: StorageMirror | undefined;

  /** `storage` may throw or give null, as a browser's own does where a page may store nothing. */
  constructor(storage: () => Storage | null, mirror?: StorageMirror) {
    this.#storage = storage;
    this.#mirror = mirror;
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
    this.#mirror?.set(key, text);
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
    this.#mirror?.remove(key);
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
      return Array.from({ length: storage?.length ?? 0 }, (_, index) => storage?.key(index) ?? '');
    } catch {
      return [];
    }
  }

  /** All texts of the mirror by their keys. */
  async mirrored(): Promise<ReadonlyMap<string, string>> {
    return (await this.#mirror?.all()) ?? new Map<string, string>();
  }
}

/** Texts of one kind that are stored beside a plan, each under an id of its own. */
export class TextGroup {
  readonly #storage: TextStorage;
  readonly #start: string;
  readonly #end: string;

  /** Keys are `runnel-<kind>:<id>:<plan>`; `plan` is the storage key of the plan. */
  constructor(storage: TextStorage, kind: string, plan: string) {
    this.#storage = storage;
    this.#start = `runnel-${kind}:`;
    this.#end = `:${plan}`;
  }

  put(id: string, text: string): StorageFault | undefined {
    return this.#storage.set(this.#keyOf(id), text);
  }

  read(id: string): Found {
    return this.#storage.get(this.#keyOf(id));
  }

  remove(id: string): void {
    this.#storage.remove(this.#keyOf(id));
  }

  ids(): readonly string[] {
    const keys = this.#storage.keys().filter((key) => this.hasKey(key));
    return keys.map((key) => key.slice(this.#start.length, -this.#end.length));
  }

  /** Whether a key of the storage is of this group. */
  hasKey(key: string): boolean {
    const end = key.indexOf(':', this.#start.length);
    return key.startsWith(this.#start) && end > 0 && key.slice(end) === this.#end;
  }

  #keyOf(id: string): string {
    return `${this.#start}${id}${this.#end}`;
  }
}

/** Not `crypto.randomUUID`, which pages without https lack. */
export function newId(): string {
  return Math.random().toString(36).slice(2, 10);
}

const FORBIDDEN: Found = { text: undefined, fault: 'forbidden' };

function isFull(error: unknown): boolean {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return name === 'QuotaExceededError' || name === 'NS_ERROR_DOM_QUOTA_REACHED';
}
