/**
 * Keeps one plan between visits, without a page: begins with what was kept, writes what is changed, and overwrites nothing that
 * this tab has not seen. Whatever would be lost is put aside first.
 */

import { keepingWords } from '../language/en/keeping-words.ts';
import { sameData } from '../plan/same-data.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import { type KeepingChoice, type KeepingNoteKind, NOT_KEPT } from '../store/keeping.ts';
import type { PlanChange } from '../store/plan-store.ts';
import type { PlanView } from '../store/plan-view.ts';
import type { KeeperPage } from './keeper-page.ts';
import { KeepingNotes } from './keeping-notes.ts';
import type { KeptPlan } from './kept-plan.ts';
import { type Begun, keptIn } from './kept-writer.ts';
import { PendingWrite, WRITE_AFTER_MS } from './pending-write.ts';
import { planOfLink } from './plan-of-link.ts';

export class PlanKeeper {
  readonly #page: KeeperPage;
  readonly #notes = new KeepingNotes();
  #keeping = NOT_KEPT;
  /** Why what is kept is left alone; until that is over, changes are put aside. */
  #held: 'two-tabs' | 'link' | undefined;
  readonly #pending = new PendingWrite((plan) => this.#write(plan));
  readonly #unsubscribe: () => void;
  #isOver = false;

  constructor(page: KeeperPage) {
    this.#page = page;
    page.typed?.onFault((fault) => {
      this.#notes.notKept(fault);
      this.#tell();
    });
    this.#unsubscribe = page.store.subscribe((view, change) => {
      if (change !== undefined && change.by !== 'keeper') this.#onChange(view, change);
    });
  }

  /** Begins a visit: with the plan of a link, else with what was kept, else with the page's own. */
  async start(link: Promise<string | undefined>, isTouched = false): Promise<void> {
    const { writer, store } = this.#page;
    if (isTouched) this.#pending.put(store.view.plan, WRITE_AFTER_MS);
    const [copy, linked] = await Promise.all([writer?.storage.restore(), this.#planOf(link)]);
    if (this.#isOver) return;
    // A person who was quicker has another plan on screen by now.
    if (this.#pending.isDone) {
      const begun = store.view.readOnly ? undefined : writer?.begin(copy);
      if (linked === undefined || !this.#openLinked(linked, begun?.kept?.plan)) this.#openBegun(begun);
      else this.#notes.faults(begun, store.view.locale);
    }
    this.#tell();
    this.write();
    await this.#page.typed?.begin();
    if (!this.#isOver) this.#tell();
  }

  stop(): void {
    this.write();
    this.#isOver = true;
    this.#pending.drop();
    this.#unsubscribe();
  }

  /** Opens the plan of a link that was followed within the page. */
  async openLink(link: Promise<string | undefined>): Promise<void> {
    const plan = await this.#planOf(link);
    if (this.#isOver) return;
    this.write();
    if (plan !== undefined) this.#openLinked(plan, this.#page.store.view.plan);
    this.#tell();
  }

  /** Looks at what is kept: another tab may have written. */
  look(): void {
    const { writer, store, typed } = this.#page;
    const news = this.#held === undefined && !store.view.readOnly ? writer?.news() : undefined;
    if (writer !== undefined && news?.ok === true) {
      if (!this.#pending.isDone || typed?.isAny === true || !writer.isIn(news.kept)) this.#hold();
      else this.#take(news.kept, () => this.#notes.say('other-tab', keepingWords.otherTab, 'close'));
    }
    this.#tell();
  }

  /** Writes what is not written yet. */
  write(): void {
    this.#pending.now();
    this.#page.typed?.write();
  }

  /** Does what a person chose in the note of kind `of`, or for the plan put aside under that id. */
  choose(choice: KeepingChoice, of = ''): void {
    const { writer, store, savePlan, saveKept, typed, copyText } = this.#page;
    const { plan } = store.view;
    const acts: Readonly<Record<KeepingChoice, () => unknown>> = {
      'page-plan': () => this.#openOwnInstead(),
      'kept-plan': () => this.#openKeptInstead(),
      'other-tab': () => this.#takeOther(),
      'this-plan': () => this.#keepThis(),
      save: () => plan && savePlan(plan),
      retry: () => this.#retry(),
      close: () => this.#notes.drop(of as KeepingNoteKind),
      'bring-back': () => this.#bringBack(of),
      'save-aside': () => saveKept(writer?.storage.aside.read(of).text),
      'throw-away': () => writer?.storage.aside.remove(of),
      'copy-text': () => copyText(typed?.lost.find(({ id }) => id === of)?.text ?? ''),
      'forget-text': () => typed?.forget(of),
    };
    acts[choice]();
    this.#tell();
  }

  #onChange(view: PlanView, { cause, by }: PlanChange): void {
    const isLoad = cause === 'load';
    if (isLoad) {
      this.write();
      this.#pending.drop();
      this.#leaveHeld();
      this.#notes.drop('returned', 'other-tab', 'replaced');
    }
    if (by === 'page') this.#onOwnPlan();
    else if (isLoad) {
      this.#notes.drop('page-plan', 'bad-link');
      this.#page.writer?.turnAway();
    }
    if (by !== 'page' && !view.readOnly) this.#pending.put(view.plan, isLoad ? 0 : WRITE_AFTER_MS);
  }

  /** The page has opened its own plan. Nothing is kept of it until it is changed. */
  #onOwnPlan(): void {
    const { writer, store } = this.#page;
    const { text, fault } = writer?.storage.read() ?? {};
    if (text === undefined && fault === undefined) writer?.take(undefined);
    else writer?.turnAway();
    if (text !== undefined && !store.view.readOnly) {
      this.#notes.say('page-plan', keepingWords.pageOpened, 'kept-plan', 'close');
    }
    this.#tell();
  }

  #write(plan: Plan): boolean {
    const isSafe = this.#keepOrPutAside(plan);
    this.#tell();
    return isSafe;
  }

  /** True where the plan is kept, or safe aside. */
  #keepOrPutAside(plan: Plan): boolean {
    const { writer, store } = this.#page;
    if (writer === undefined || store.view.readOnly) return true;
    const written =
      this.#held === undefined
        ? writer.writePastDamage(plan, (faults) => this.#notes.damaged(faults, store.view.locale))
        : writer.writeDraft(plan);
    if (written === 'other') return this.#hold();
    if (written === 'full' || written === 'forbidden') {
      this.#notes.notKept(written);
      return false;
    }
    if (written === 'replaced') {
      this.#notes.drop('page-plan');
      this.#notes.say('replaced', keepingWords.replaced, 'close');
    }
    this.#notes.drop('not-kept');
    return true;
  }

  #retry(): void {
    if (this.#page.writer?.storage.read().fault === undefined) this.#notes.drop('not-kept');
    this.write();
  }

  /** Both tabs have changed the plan: this one's goes aside until a person decides. True where it is safe there. */
  #hold(): boolean {
    this.#held = 'two-tabs';
    this.#notes.dropOrigin();
    this.#notes.twoTabs();
    return this.#putThis();
  }

  /** Puts what is on screen where it is safe; true where it is. */
  #putThis(): boolean {
    this.#pending.put(this.#page.store.view.plan, WRITE_AFTER_MS);
    return this.#pending.now();
  }

  #leaveHeld(isKeptElsewhere = false): void {
    if (this.#held === 'link') this.#page.leaveLink();
    this.#held = undefined;
    this.#page.writer?.leaveDraft(isKeptElsewhere);
    this.#notes.drop('two-tabs', 'link');
  }

  #take(kept: KeptPlan, say: () => void): void {
    this.#page.writer?.take(kept);
    this.#page.store.openPlan(kept.plan, 'keeper');
    this.#notes.dropOrigin();
    say();
  }

  #openBegun(begun: Begun | undefined): void {
    const { writer, store, base, hasOwnPlan, openOwnPlan } = this.#page;
    this.#notes.faults(begun, store.view.locale);
    const kept = begun?.kept;
    if (kept !== undefined) {
      this.#take(kept, () => this.#notes.returned(kept, base(), hasOwnPlan(), store.view.locale));
      return;
    }
    if (begun !== undefined && begun.fault === undefined) writer?.take(undefined);
    openOwnPlan();
  }

  async #planOf(link: Promise<string | undefined>): Promise<Plan | undefined> {
    const answer = await planOfLink(link, this.#page.store.view.locale);
    if (typeof answer !== 'string') return answer;
    this.#notes.say('bad-link', keepingWords.badLink(answer), 'close');
    return undefined;
  }

  /** False where it is the same plan as `here`, which is then what goes on. */
  #openLinked(plan: Plan, here: Plan | undefined): boolean {
    const { writer, store, hasOwnPlan, leaveLink } = this.#page;
    if (sameData(plan, here)) {
      leaveLink();
      return false;
    }
    writer?.leaveDraft(false);
    this.#notes.dropOrigin('two-tabs', 'bad-link');
    store.openPlan(plan, 'keeper');
    this.#held = 'link';
    const isKept = writer?.storage.read().text !== undefined;
    const back = isKept ? (['kept-plan'] as const) : hasOwnPlan() ? (['page-plan'] as const) : [];
    this.#notes.link(writer !== undefined && !store.view.readOnly, ...back);
    return true;
  }

  #openOwnInstead(): void {
    const { writer, openOwnPlan } = this.#page;
    this.write();
    if (this.#held === 'two-tabs' || !this.#pending.isDone) return;
    const fault = writer?.storage.moveAside();
    if (fault !== undefined) {
      this.#notes.notKept(fault);
      return;
    }
    if (this.#held === undefined) this.#notes.say('page-plan', keepingWords.pagePlan, 'close');
    this.#notes.drop('returned');
    this.#leaveHeld();
    openOwnPlan();
  }

  #openKeptInstead(): void {
    this.write();
    if (this.#held === 'two-tabs') return;
    this.#leaveHeld();
    this.#notes.drop('page-plan');
    this.#openBegun(this.#page.writer?.begin());
  }

  #takeOther(): void {
    const kept = this.#putThis() ? this.#page.writer?.begin().kept : undefined;
    if (kept === undefined) return;
    this.#leaveHeld();
    this.#take(kept, () => this.#notes.say('other-tab', keepingWords.tookOther, 'close'));
  }

  #keepThis(): void {
    const held = this.#held;
    this.#held = undefined;
    this.#page.writer?.turnAway();
    const isSafe = this.#putThis();
    this.#held = held;
    if (isSafe) this.#leaveHeld(true);
  }

  #bringBack(id: string): void {
    const { writer, store } = this.#page;
    const kept = keptIn(writer?.storage.aside.read(id).text);
    if (writer === undefined || kept === undefined) return;
    if (this.#held === 'two-tabs' ? !this.#putThis() : !this.#pending.now()) return;
    this.#leaveHeld();
    store.openPlan(kept.plan, 'keeper');
    writer.turnAway();
    if (this.#putThis()) writer.storage.aside.remove(id);
    this.#notes.drop('returned', 'page-plan', 'other-tab');
  }

  #tell(): void {
    const { writer, typed, store, told } = this.#page;
    const isKept = writer !== undefined && !store.view.readOnly;
    const keeping = this.#notes.keeping(
      isKept ? { putAside: writer.listAside(), typed: typed?.lost ?? [] } : undefined,
    );
    if (sameData(keeping, this.#keeping)) return;
    this.#keeping = keeping;
    told(keeping);
  }
}
