import { describeFault } from '../language/describe-fault.ts';
import { keepingWords } from '../language/en/keeping-words.ts';
import { formatInstant } from '../language/format/instant.ts';
import { readerFor } from '../language/reader.ts';
import type { Fault } from '../plan/reading/fault.ts';
import {
  type Keeping,
  type KeepingChoice,
  type KeepingNote,
  type KeepingNoteKind,
  type KeepingStatus,
  NOT_KEPT,
} from '../store/keeping.ts';
import type { StorageFault } from './browser-texts.ts';
import type { KeptPlan } from './kept-plan.ts';
import type { Begun } from './kept-writer.ts';

/** What there is to say about keeping, each kind once and the newest last, as views get it. */
export class KeepingNotes {
  readonly #notes = new Map<KeepingNoteKind, KeepingNote>();

  say(kind: KeepingNoteKind, text: string, ...choices: readonly KeepingChoice[]): void {
    this.#notes.set(kind, { kind, text, choices });
  }

  drop(...kinds: readonly KeepingNoteKind[]): void {
    for (const kind of kinds) this.#notes.delete(kind);
  }

  /** Another plan is on screen: how the one before came there is of no interest any more. */
  dropOrigin(...others: readonly KeepingNoteKind[]): void {
    this.drop('returned', 'page-plan', 'replaced', 'other-tab', ...others);
  }

  returned({ saved, base }: KeptPlan, ownBase: string | undefined, hasOwnPlan: boolean, locale: string): void {
    const words = base === ownBase ? keepingWords.returned : keepingWords.returnedFromOther;
    this.say('returned', words(formatInstant(saved, locale)), ...(hasOwnPlan ? (['page-plan'] as const) : []), 'close');
  }

  damaged([fault]: readonly Fault[], locale: string): void {
    const text = fault && describeFault(fault, readerFor(locale, 'us'));
    this.say('damaged', keepingWords.damaged(text), 'close');
  }

  notKept(fault: StorageFault): void {
    this.say('not-kept', keepingWords[fault], 'save', 'retry');
  }

  /** What went wrong at the beginning of a visit. */
  faults(begun: Begun | undefined, locale: string): void {
    if (begun?.damaged !== undefined) this.damaged(begun.damaged, locale);
    if (begun?.fault !== undefined) this.notKept(begun.fault);
  }

  twoTabs(): void {
    this.say('two-tabs', keepingWords.twoTabs, 'other-tab', 'this-plan', 'save');
  }

  /** `back`: what can be opened in place of the link's plan. */
  link(canKeep: boolean, ...back: readonly KeepingChoice[]): void {
    if (canKeep) this.say('link', keepingWords.link, 'this-plan', ...back, 'save');
    else this.say('link', keepingWords.linkOnly, 'save', ...back, 'close');
  }

  /** `beside`: what else lies in the browser; left out where nothing is kept there. */
  keeping(beside?: Pick<Keeping, 'putAside' | 'typed'>): Keeping {
    const notes = [...this.#notes.values()];
    return beside === undefined ? { ...NOT_KEPT, notes } : { status: this.#status(), notes, ...beside };
  }

  #status(): KeepingStatus {
    if (this.#notes.has('not-kept')) return 'not-kept';
    return this.#notes.has('two-tabs') || this.#notes.has('link') ? 'asking' : 'kept';
  }
}
