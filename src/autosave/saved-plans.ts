/** What one tab reads and writes of a plan that this browser saves: it knows what it read or wrote last, and overwrites nothing else. */
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { PlanStorage } from './plan-storage.ts';
import type { SavedCopy } from './report.ts';
import {
  contains,
  newerOf,
  readSavedPlan,
  type SavedPlan,
  type SavedPlanDamage,
  type SavedPlanReading,
  savedPlanIn,
  seenIn,
  writeSavedPlan,
} from './saved-plan.ts';
import { newId, type StorageFault } from './text-storage.ts';

/** What a visit finds. */
export interface Loaded {
  readonly saved: SavedPlan | undefined;
  /** Why what lay there could not be read; it is a copy now. */
  readonly damage: SavedPlanDamage | undefined;
  readonly fault: StorageFault | undefined;
}

export type Written =
  | { readonly kind: 'failed'; readonly fault: StorageFault }
  /** Nothing was written: another tab has written meanwhile. */
  | { readonly kind: 'blocked' }
  /** `replaced`: what lay there is a copy now. `damage`: that could not be read. */
  | { readonly kind: 'written'; readonly replaced: boolean; readonly damage?: SavedPlanDamage };

/** All that write on this page. */
const writersHere = new Set<string>();

export class SavedPlans {
  readonly storage: PlanStorage;
  readonly #base: () => string | undefined;
  readonly #writer = newId();
  /** What lies under the key, as far as this tab knows. */
  #text: string | undefined;
  #known: SavedPlan | undefined;
  /** What was read last: under the key, and in the mirror. */
  #read: readonly { readonly text: string; readonly reading: SavedPlanReading }[] = [];
  /** Id of the copy that this tab writes to. */
  #ownCopy: string | undefined;
  /** Texts are read once: the copies are listed after every writing. */
  readonly #headings = new Map<string, { readonly text: string | undefined; readonly copy: SavedCopy }>();

  /** `base`: address of the page's own plan. */
  constructor(storage: PlanStorage, base: () => string | undefined) {
    this.storage = storage;
    this.#base = base;
    writersHere.add(this.#writer);
  }

  /** Whether what lies under the key was written by another plan of this page. */
  get isOfThisPage(): boolean {
    const { writer } = this.#savedIn(this.storage.read().text) ?? {};
    return writer !== undefined && writer !== this.#writer && writersHere.has(writer);
  }

  /** Whether anything lies under the key; undefined where that cannot be known. */
  get isAny(): boolean | undefined {
    const { text, fault } = this.storage.read();
    return fault === undefined ? text !== undefined : undefined;
  }

  /** The plan that `load` finds, the same object as long as the same lies there. */
  peek(mirror?: string): Plan | undefined {
    const { main, second, newer } = this.#readings(mirror);
    const reading = newer === 'mirror' ? second : main;
    return reading?.ok === true ? reading.saved.plan : undefined;
  }

  /** Reads what is saved. A mirror that knows more than what lies under the key takes its place. */
  load(mirror?: string): Loaded {
    const { forbidden, main, second, newer } = this.#readings(mirror);
    const damage = main?.ok === false ? main.damage : undefined;
    let fault = forbidden ?? (damage && this.storage.moveToCopies());
    if (mirror !== undefined && newer === 'both') fault ??= this.storage.copies.put(newId(), mirror);
    if (mirror !== undefined && newer === 'mirror') fault ??= this.storage.write(mirror);
    const reading = newer === 'mirror' ? second : main;
    return { saved: reading?.ok === true ? reading.saved : undefined, damage, fault };
  }

  /** From now on this tab shows what lies under the key: that plan, or none yet. */
  adopt(saved: SavedPlan | undefined): void {
    this.#text = this.storage.read().text;
    this.#known = saved;
  }

  /** What another tab has written since this one read or wrote; undefined where there is nothing that can be read. */
  news(): SavedPlan | undefined {
    const { text } = this.storage.read();
    return text === this.#text ? undefined : this.#savedIn(text);
  }

  #readings(mirror: string | undefined) {
    const { text, fault: forbidden } = this.storage.read();
    const main = this.#readingOf(text);
    const second = this.#readingOf(mirror);
    return { forbidden, main, second, newer: newerOf(main, second) };
  }

  #savedIn(text: string | undefined): SavedPlan | undefined {
    const reading = this.#readingOf(text);
    return reading?.ok === true ? reading.saved : undefined;
  }

  /** The same text is read once. */
  #readingOf(text: string | undefined): SavedPlanReading | undefined {
    if (text === undefined) return undefined;
    const known = this.#read.find((each) => each.text === text);
    if (known !== undefined) return known.reading;
    const reading = readSavedPlan(text);
    this.#read = [...this.#read.slice(-1), { text, reading }];
    return reading;
  }

  /** Whether a saved plan has all that this tab has written. */
  isIn(saved: SavedPlan): boolean {
    return this.#known === undefined || contains(saved, this.#known);
  }

  /**
   * Saves a plan. What lies there and is not what this tab knows becomes a copy first where `replace` says so, and where it cannot be
   * read; else nothing is written.
   */
  write(plan: Plan, replace: boolean): Written {
    const { text, fault } = this.storage.read();
    if (fault !== undefined) return { kind: 'failed', fault };
    const isForeign = text !== undefined && (replace || text !== this.#text);
    const foreign = isForeign ? this.#readingOf(text) : undefined;
    if (foreign?.ok === true && !replace) return { kind: 'blocked' };
    const stuck = isForeign ? this.storage.moveToCopies() : undefined;
    if (stuck !== undefined) return { kind: 'failed', fault: stuck };
    const saved = this.#envelope(plan, foreign?.ok === true ? foreign.saved : undefined);
    const written = writeSavedPlan(saved);
    const refused = this.storage.write(written);
    if (refused !== undefined) return { kind: 'failed', fault: refused };
    this.#text = written;
    this.#known = saved;
    if (foreign?.ok === false && !replace) return { kind: 'written', replaced: false, damage: foreign.damage };
    return { kind: 'written', replaced: isForeign };
  }

  /** Saves a plan as a copy, in a place that stays this tab's until `releaseCopy`. */
  writeCopy(plan: Plan): StorageFault | undefined {
    this.#ownCopy ??= newId();
    return this.storage.copies.put(this.#ownCopy, writeSavedPlan(this.#envelope(plan, undefined)));
  }

  /** This tab's copy stays where it is, for a person to decide about. */
  releaseCopy(): void {
    this.#ownCopy = undefined;
  }

  /** This tab's copy goes: its plan is saved elsewhere. */
  removeOwnCopy(): void {
    if (this.#ownCopy !== undefined) this.storage.copies.remove(this.#ownCopy);
    this.#ownCopy = undefined;
  }

  /** All copies, oldest first, without the one that this tab writes to. */
  listCopies(): readonly SavedCopy[] {
    const ids = this.storage.copies.ids().filter((id) => id !== this.#ownCopy);
    return ids
      .map((id) => this.#heading(id, this.storage.copies.read(id).text))
      .sort((left, right) => (left.saved ?? '').localeCompare(right.saved ?? ''));
  }

  #heading(id: string, text: string | undefined): SavedCopy {
    const before = this.#headings.get(id);
    if (before !== undefined && before.text === text) return before.copy;
    const saved = savedPlanIn(text);
    const copy = { id, name: saved?.plan.name, saved: saved?.saved };
    this.#headings.set(id, { text, copy });
    return copy;
  }

  #envelope(plan: Plan, before: SavedPlan | undefined): SavedPlan {
    const base = this.#base();
    const seen = seenIn(this.#known, before);
    return {
      writer: this.#writer,
      revision: revisionAfter(seen, this.#writer),
      seen,
      saved: new Date().toISOString(),
      plan,
      ...(base !== undefined && { base }),
    };
  }
}

/** Greater than every other, as far as numbers are whole: beyond that, than the writer's own. */
function revisionAfter(seen: Readonly<Record<string, number>>, writer: string): number {
  const next = Math.max(0, ...Object.values(seen)) + 1;
  return Number.isSafeInteger(next) ? next : (seen[writer] ?? 0) + 1;
}
