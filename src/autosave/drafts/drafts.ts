/**
 * What is typed in the fields of one tab before it is an edit, stored so that the next visit can show it: a tab may be killed
 * with half a sentence in a field.
 */
import type { Draft } from '../report.ts';
import { newId, type StorageFault, type TextGroup } from '../text-storage.ts';

/** Longest that a text waits before it is stored. */
const WRITE_AFTER_MS = 250;

interface OwnDraft extends Draft {
  isStored: boolean;
}

/** The tabs of one plan that are open in this browser. */
export interface Tabs {
  /** The ids of the others. */
  open(): Promise<ReadonlySet<string>>;
}

export class Drafts {
  /** This tab's id: ids of its drafts begin with it. */
  readonly tab: string;
  readonly #stored: TextGroup;
  readonly #tabs: Tabs;
  readonly #own = new Map<object, OwnDraft>();
  #left: readonly Draft[] = [];
  #onFault: (fault: StorageFault) => void = () => undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(stored: TextGroup, tabs: Tabs, tab = newId()) {
    this.#stored = stored;
    this.#tabs = tabs;
    this.tab = tab;
  }

  /** Calls back where the browser refuses to store what is typed. */
  onFault(callback: (fault: StorageFault) => void): void {
    this.#onFault = callback;
  }

  /** Whether something is typed that is neither entered nor given up. */
  get isAny(): boolean {
    return this.#own.size > 0;
  }

  /** What tabs that are gone have left. */
  get left(): readonly Draft[] {
    return this.#left;
  }

  /** Looks for what tabs that are gone have left. */
  async begin(): Promise<void> {
    const ids = this.#stored.ids();
    if (ids.length === 0) return;
    const open = new Set([this.tab, ...(await this.#tabs.open())]);
    this.#left = ids.filter((id) => !open.has(tabOf(id))).flatMap((id) => this.#read(id));
  }

  /** An input has this text by now; `field` says in words which one it is. An empty text is none. */
  put(input: object, field: string, text: string): void {
    if (text === '') {
      this.drop(input);
      return;
    }
    const id = this.#own.get(input)?.id ?? `${this.tab}-${newId()}`;
    this.#own.set(input, { id, field, text, isStored: false });
    this.#timer ??= setTimeout(() => this.write(), WRITE_AFTER_MS);
  }

  /** The text of an input was entered or given up. */
  drop(input: object): void {
    const own = this.#own.get(input);
    if (own === undefined) return;
    this.#own.delete(input);
    this.#stored.remove(own.id);
  }

  /** Writes what is not written yet. */
  write(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    let fault: StorageFault | undefined;
    for (const own of this.#own.values()) {
      if (own.isStored) continue;
      const refused = this.#stored.put(own.id, draftText(own));
      own.isStored = refused === undefined;
      fault ??= refused;
    }
    if (fault !== undefined) this.#onFault(fault);
  }

  /** Deletes one of `left`. */
  delete(id: string): void {
    this.#stored.remove(id);
    this.#left = this.#left.filter((draft) => draft.id !== id);
  }

  #read(id: string): readonly Draft[] {
    const { field, text } = readDraft(this.#stored.read(id).text);
    if (text !== '') return [{ id, field, text }];
    this.#stored.remove(id);
    return [];
  }
}

function tabOf(id: string): string {
  return id.slice(0, id.indexOf('-'));
}

/** As version 0.1.0 stored it. */
function draftText({ field, text }: Omit<Draft, 'id'>): string {
  return JSON.stringify({ of: field, text });
}

/** Whatever lies there: what `draftText` did not write is the text itself. */
function readDraft(stored: string | undefined): Omit<Draft, 'id'> {
  try {
    const { of, text }: { readonly of?: unknown; readonly text?: unknown } = Object(JSON.parse(stored ?? '{}'));
    return { field: typeof of === 'string' ? of : '', text: typeof text === 'string' ? text : '' };
  } catch {
    return { field: '', text: stored ?? '' };
  }
}
