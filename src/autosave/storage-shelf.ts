import type { BrowserTexts, Found, StorageFault } from './browser-texts.ts';

/** Texts of one kind that lie beside a kept plan in this browser, each under an id of its own. */
export class StorageShelf {
  readonly #texts: BrowserTexts;
  readonly #start: string;
  readonly #end: string;

  /** `kind` tells shelves of one plan apart, `plan` the plans. */
  constructor(texts: BrowserTexts, kind: string, plan: string) {
    this.#texts = texts;
    this.#start = `runnel-${kind}:`;
    this.#end = `:${plan}`;
  }

  put(id: string, text: string): StorageFault | undefined {
    return this.#texts.set(this.#keyOf(id), text);
  }

  read(id: string): Found {
    return this.#texts.get(this.#keyOf(id));
  }

  remove(id: string): void {
    this.#texts.remove(this.#keyOf(id));
  }

  /** Ids of all that lies there. */
  list(): readonly string[] {
    const keys = this.#texts.keys().filter((key) => this.holds(key));
    return keys.map((key) => key.slice(this.#start.length, -this.#end.length));
  }

  /** Whether a key of the storage is of this shelf. */
  holds(key: string): boolean {
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
