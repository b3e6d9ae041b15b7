/** One tab's hand on what a browser keeps of a plan: it knows what it wrote or read last, and overwrites nothing else. */

import type { Fault } from '../plan/reading/fault.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { PutAside } from '../store/keeping.ts';
import type { StorageFault } from './browser-texts.ts';
import { contains, type KeptPlan, type KeptReading, readKept, seenIn, writeKept } from './kept-plan.ts';
import type { KeptStorage } from './kept-storage.ts';
import { newerKept } from './newer-kept.ts';
import { newId } from './storage-shelf.ts';

/** `other`: nothing was written, since another tab has; `replaced`: what lay there before was put aside. */
export type Written = StorageFault | 'other' | 'replaced' | undefined;

/** What a visit finds. */
export interface Begun {
  readonly kept: KeptPlan | undefined;
  /** Why what lay there could not be read; it is put aside. */
  readonly damaged: readonly Fault[] | undefined;
  readonly fault: StorageFault | undefined;
}

export class KeptWriter {
  readonly storage: KeptStorage;
  readonly #base: () => string | undefined;
  readonly #writer = newId();
  /** What lies under the key, as far as this tab knows. */
  #text: string | undefined;
  #known: KeptPlan | undefined;
  #isAnother = true;
  #draft: string | undefined;
  /** Texts are read once: they are looked through at every writing. */
  readonly #headings = new Map<string, { readonly text: string | undefined; readonly heading: PutAside }>();

  constructor(storage: KeptStorage, base: () => string | undefined) {
    this.storage = storage;
    this.#base = base;
  }

  /** From now on this tab shows another plan than the one under the key, which the next writing puts aside. */
  turnAway(): void {
    this.#isAnother = true;
  }

  /** What a visit begins with. A copy that knows more than what lies under the key takes its place. */
  begin(copy?: string): Begun {
    const { text, fault: forbidden } = this.storage.read();
    const main = text === undefined ? undefined : readKept(text);
    const second = copy === undefined ? undefined : readKept(copy);
    const newer = newerKept(main, second);
    const damaged = main?.ok === false ? main.faults : undefined;
    let fault = forbidden ?? (damaged && this.storage.moveAside());
    if (copy !== undefined && newer === 'both') fault ??= this.storage.aside.put(newId(), copy);
    if (copy !== undefined && newer === 'copy') fault ??= this.storage.write(copy);
    const reading = newer === 'copy' ? second : main;
    return { kept: reading?.ok === true ? reading.kept : undefined, damaged, fault };
  }

  /** Takes what was read for what this tab shows; undefined where nothing lies under the key. */
  take(kept: KeptPlan | undefined): void {
    this.#text = this.storage.read().text;
    this.#known = kept;
    this.#isAnother = false;
  }

  /** What another tab has written since; undefined where there is nothing, or it is not of the plan on screen. */
  news(): KeptReading | undefined {
    const { text } = this.storage.read();
    return text === undefined || text === this.#text || this.#isAnother ? undefined : readKept(text);
  }

  /** Whether a kept plan has all that this tab has written. */
  isIn(kept: KeptPlan): boolean {
    return this.#known === undefined || contains(kept, this.#known);
  }

  write(plan: Plan): Written {
    const { text, fault } = this.storage.read();
    if (fault !== undefined) return fault;
    const isOther = text !== undefined && (this.#isAnother || text !== this.#text);
    if (isOther && !this.#isAnother) return 'other';
    const before = isOther ? keptIn(text) : undefined;
    const stuck = isOther ? this.storage.moveAside() : undefined;
    if (stuck !== undefined) return stuck;
    const kept = this.#envelope(plan, before);
    const written = writeKept(kept);
    const refused = this.storage.write(written);
    if (refused !== undefined) return refused;
    this.#text = written;
    this.#known = kept;
    this.#isAnother = false;
    return isOther ? 'replaced' : undefined;
  }

  /** As `write`; what cannot be read is put aside instead of taken for another tab's plan, and `told` why. */
  writePastDamage(plan: Plan, told: (faults: readonly Fault[]) => void): Written {
    const written = this.write(plan);
    const damaged = written === 'other' ? this.news() : undefined;
    if (damaged?.ok !== false) return written;
    told(damaged.faults);
    this.turnAway();
    const again = this.write(plan);
    return again === 'replaced' ? undefined : again;
  }

  /** Keeps a plan aside, in a place that stays this tab's until `leaveDraft`. */
  writeDraft(plan: Plan): StorageFault | undefined {
    this.#draft ??= newId();
    return this.storage.aside.put(this.#draft, writeKept(this.#envelope(plan, undefined)));
  }

  /** What was kept aside stays there, or goes where it is kept elsewhere by now. */
  leaveDraft(isKeptElsewhere: boolean): void {
    if (isKeptElsewhere && this.#draft !== undefined) this.storage.aside.remove(this.#draft);
    this.#draft = undefined;
  }

  /** All that was put aside, without what this tab is keeping there. */
  listAside(): readonly PutAside[] {
    const ids = this.storage.aside.list().filter((id) => id !== this.#draft);
    return ids
      .map((id) => this.#heading(id, this.storage.aside.read(id).text))
      .sort((left, right) => (left.saved ?? '').localeCompare(right.saved ?? ''));
  }

  #heading(id: string, text: string | undefined): PutAside {
    const before = this.#headings.get(id);
    if (before !== undefined && before.text === text) return before.heading;
    const kept = keptIn(text);
    const heading = { id, name: kept?.plan.name, saved: kept?.saved };
    this.#headings.set(id, { text, heading });
    return heading;
  }

  #envelope(plan: Plan, before: KeptPlan | undefined): KeptPlan {
    const base = this.#base();
    const seen = seenIn(this.#known, before);
    return {
      writer: this.#writer,
      revision: Math.max(0, ...Object.values(seen)) + 1,
      seen,
      saved: new Date().toISOString(),
      plan,
      ...(base !== undefined && { base }),
    };
  }
}

export function keptIn(text: string | undefined): KeptPlan | undefined {
  const reading = text === undefined ? undefined : readKept(text);
  return reading?.ok === true ? reading.kept : undefined;
}
