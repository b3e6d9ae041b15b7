/**
 * What is typed in the fields of one tab before it is an edit, kept so that the next visit can show it: a tab may be killed
 * with half a sentence in a field.
 */
import type { LostText } from '../../store/keeping.ts';
import type { StorageFault } from '../browser-texts.ts';
import { newId, type StorageShelf } from '../storage-shelf.ts';

/** Longest that a text waits before it is kept. */
const WRITE_AFTER_MS = 250;

interface Own {
  readonly id: string;
  readonly of: string;
  readonly text: string;
  isKept: boolean;
}

/** Tabs of this browser that are there, by the names that they give themselves. */
export interface LivingTabs {
  living(): Promise<ReadonlySet<string>>;
}

export class TypedTexts {
  /** This tab's name: ids on the shelf begin with it. */
  readonly tab: string;
  readonly #shelf: StorageShelf;
  readonly #tabs: LivingTabs;
  readonly #own = new Map<object, Own>();
  #lost: readonly LostText[] = [];
  #told: (fault: StorageFault) => void = () => undefined;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(shelf: StorageShelf, tabs: LivingTabs, tab = newId()) {
    this.#shelf = shelf;
    this.#tabs = tabs;
    this.tab = tab;
  }

  /** Calls back where the browser refuses to keep what is typed. */
  onFault(told: (fault: StorageFault) => void): void {
    this.#told = told;
  }

  /** Whether something is typed that is neither entered nor given up. */
  get isAny(): boolean {
    return this.#own.size > 0;
  }

  /** What tabs that are gone have left. */
  get lost(): readonly LostText[] {
    return this.#lost;
  }

  /** Looks for what tabs that are gone have left. */
  async begin(): Promise<void> {
    const ids = this.#shelf.list();
    if (ids.length === 0) return;
    const living = new Set([this.tab, ...(await this.#tabs.living())]);
    this.#lost = ids.filter((id) => !living.has(tabOf(id))).flatMap((id) => this.#read(id));
  }

  /** A field has this text by now; `of` says in words which field it is. An empty text is none. */
  put(field: object, of: string, text: string): void {
    if (text === '') {
      this.drop(field);
      return;
    }
    const id = this.#own.get(field)?.id ?? `${this.tab}-${newId()}`;
    this.#own.set(field, { id, of, text, isKept: false });
    this.#timer ??= setTimeout(() => this.write(), WRITE_AFTER_MS);
  }

  /** A field was entered or given up. */
  drop(field: object): void {
    const own = this.#own.get(field);
    if (own === undefined) return;
    this.#own.delete(field);
    this.#shelf.remove(own.id);
  }

  /** Writes what is not written yet. */
  write(): void {
    clearTimeout(this.#timer);
    this.#timer = undefined;
    let fault: StorageFault | undefined;
    for (const own of this.#own.values()) {
      if (own.isKept) continue;
      const { of, text } = own;
      const refused = this.#shelf.put(own.id, JSON.stringify({ of, text }));
      own.isKept = refused === undefined;
      fault ??= refused;
    }
    if (fault !== undefined) this.#told(fault);
  }

  /** A person has done with one of `lost`. */
  forget(id: string): void {
    this.#shelf.remove(id);
    this.#lost = this.#lost.filter((lost) => lost.id !== id);
  }

  #read(id: string): readonly LostText[] {
    const { of, text } = readTyped(this.#shelf.read(id).text);
    if (text !== '') return [{ id, of, text }];
    this.#shelf.remove(id);
    return [];
  }
}

function tabOf(id: string): string {
  return id.slice(0, id.indexOf('-'));
}

/** Whatever lies there: what is no record of ours is the text itself. */
function readTyped(kept: string | undefined): { readonly of: string; readonly text: string } {
  try {
    const { of, text }: { readonly of?: unknown; readonly text?: unknown } = Object(JSON.parse(kept ?? '{}'));
    return { of: typeof of === 'string' ? of : '', text: typeof text === 'string' ? text : '' };
  } catch {
    return { of: '', text: kept ?? '' };
  }
}
