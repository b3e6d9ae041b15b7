/**
 * Saves one plan between visits, without a page: runs the table of `transitions.ts`. What happens to the plan, to the storage and to
 * the page becomes an event, and `effects.ts` does what the table asks for.
 */

import { runThrough } from '../engine/run-through.ts';
import type { LinkContent } from '../exchange/link/plan-text-from-link.ts';
import { sameData } from '../plan/same-data.ts';
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { PlanChange } from '../store/plan-store.ts';
import type { AutosavePage } from './autosave-page.ts';
import { Deadline } from './deadline.ts';
import { runEffect } from './effects.ts';
import { hasNote } from './notes.ts';
import { PreparedPlan } from './prepared-plan.ts';
import { type LinkedPlan, readLink } from './read-link.ts';
import {
  AUTOSAVE_OFF,
  type AutosaveChoice,
  type AutosaveNoteCode,
  type AutosaveReport,
  type AutosaveStatus,
} from './report.ts';
import { savedPlanIn } from './saved-plan.ts';
import type { Loaded, SavedPlans } from './saved-plans.ts';
import type { AutosaveEvent, AutosaveState, Effect } from './state.ts';
import { transition } from './transitions.ts';

const NOTHING_LOADED: Loaded = { saved: undefined, damage: undefined, fault: undefined };

export class Autosave {
  readonly #page: AutosavePage;
  readonly #plan: PreparedPlan;
  #state: AutosaveState;
  #report = AUTOSAVE_OFF;
  /** What has happened and is not dealt with yet. */
  readonly #events: AutosaveEvent[] = [];
  #isRunning = false;
  readonly #deadline = new Deadline(() => this.#dispatch({ type: 'save-due' }));
  readonly #unsubscribe: () => void;

  constructor(page: AutosavePage) {
    this.#page = page;
    this.#plan = new PreparedPlan(page.store, page.work ?? ((steps) => Promise.resolve(runThrough(steps))));
    this.#state = { mode: 'starting', canSave: this.#canSave, unsaved: undefined, notes: [] };
    page.drafts?.onFault((fault) => this.#dispatch({ type: 'storage-failed', fault }));
    this.#unsubscribe = page.store.subscribe((view, change) => {
      if (this.#canSave !== this.#state.canSave) this.#dispatch({ type: 'access-changed', canSave: this.#canSave });
      if (view.plan !== undefined && change !== undefined) this.#onChange(view.plan, change);
    });
  }

  /** Begins a visit. `isTouched`: a person has changed or opened a plan already. */
  async start(link: Promise<LinkContent | undefined>, isTouched = false): Promise<void> {
    const { saved, store, drafts } = this.#page;
    const { plan } = store.view;
    if (isTouched && plan !== undefined) this.#dispatch({ type: 'changed', plan });
    const [mirror, linked] = await Promise.all([saved?.storage.restore(), readLink(link)]);
    if (this.#isStopped) return;
    if (linked !== undefined && 'fault' in linked) this.#dispatch({ type: 'link-failed', fault: linked.fault });
    await this.#prepared(linked !== undefined && 'plan' in linked ? linked.plan : this.#saved(mirror));
    if (this.#isStopped) return;
    this.#load(mirror, linked !== undefined && 'plan' in linked ? linked : undefined);
    await drafts?.begin();
    if (!this.#isStopped) this.#tell();
  }

  /** Saves what is not saved yet, and listens to nothing any more. */
  stop(): void {
    this.#page.drafts?.write();
    this.#dispatch({ type: 'stop' });
  }

  /** Opens the plan of a link that was followed within the page. */
  async openLink(link: Promise<LinkContent | undefined>): Promise<void> {
    const linked = await readLink(link);
    const { store, saved, hasOwnPlan } = this.#page;
    if (linked === undefined) return;
    if ('fault' in linked) this.#dispatch({ type: 'link-failed', fault: linked.fault });
    else {
      await this.#prepared(linked.plan);
      const isAny = saved?.isAny;
      const { plan } = store.view;
      const { isChecked, lacksYears } = linked;
      this.#dispatch({
        type: 'link-followed',
        link: linked.plan,
        isChecked,
        lacksYears,
        plan,
        isAny,
        hasOwnPlan: hasOwnPlan(),
      });
    }
  }

  /** Looks at what is saved: another tab may have saved. */
  look(): void {
    const { saved, store, drafts } = this.#page;
    const news = this.#state.mode === 'current' && this.#canSave ? saved?.news() : undefined;
    const waiting = this.#prepared(news?.plan);
    if (waiting !== undefined) {
      void waiting.then(() => this.look());
      return;
    }
    if (saved !== undefined && news !== undefined) {
      const { plan } = store.view;
      const isTyping = drafts?.isAny === true;
      this.#dispatch({ type: 'other-tab-saved', saved: news, plan, isSeen: saved.isIn(news), isTyping });
    } else this.#tell();
  }

  /** Saves what is not saved yet. */
  save(): void {
    this.#deadline.clear();
    this.#dispatch({ type: 'save-due' });
    this.#page.drafts?.write();
  }

  /** Does what a person chose. `of`: the code of the note, or the id of the copy or draft. */
  choose(choice: AutosaveChoice, of = ''): void {
    const { saved, store, savePlanFile, saveCopyFile, drafts, copyText } = this.#page;
    const { plan } = store.view;
    const copy = () => saved?.storage.copies.read(of).text;
    const actions: Readonly<Record<AutosaveChoice, () => unknown>> = {
      'own-plan': () => this.#dispatch({ type: 'own-plan-chosen' }),
      'saved-plan': () => this.#oncePrepared(this.#saved(), () => this.#dispatch({ type: 'saved-plan-chosen' })),
      'other-tab': () => this.#oncePrepared(this.#saved(), () => this.#withPlan('other-tab-chosen')),
      'this-plan': () => this.#withPlan('this-plan-chosen'),
      'save-file': () => plan && savePlanFile(plan),
      retry: () => this.#retry(),
      close: () => this.#dispatch({ type: 'note-closed', code: of as AutosaveNoteCode }),
      'restore-copy': () => this.#restoreCopy(of, savedPlanIn(copy())?.plan),
      'save-copy': () => saveCopyFile(copy()),
      'delete-copy': () => saved?.storage.copies.remove(of),
      'copy-draft': () => copyText(drafts?.left.find(({ id }) => id === of)?.text ?? ''),
      'delete-draft': () => drafts?.delete(of),
    };
    actions[choice]();
    this.#tell();
  }

  /** The plan that lies under the key. */
  #saved(mirror?: string): Plan | undefined {
    const isOpened = this.#state.mode !== 'starting' && mirror !== undefined;
    return this.#canSave && !isOpened ? this.#page.saved?.peek(mirror) : undefined;
  }

  /** A large plan is computed before it is opened, a little at a time. Undefined where there is nothing to wait for. */
  #prepared(plan: Plan | undefined): Promise<unknown> | undefined {
    return plan && this.#plan.prepare(plan);
  }

  #oncePrepared(plan: Plan | undefined, then: () => void): void {
    const waiting = this.#prepared(plan);
    if (waiting === undefined) then();
    else
      void waiting.then(() => {
        then();
        this.#tell();
      });
  }

  get #canSave(): boolean {
    return this.#page.saved !== undefined && !this.#page.store.view.readOnly;
  }

  get #isStopped(): boolean {
    return this.#state.mode === 'stopped';
  }

  #onChange(plan: Plan, { cause, by }: PlanChange): void {
    if (by === 'autosave') return;
    if (cause !== 'load') this.#dispatch({ type: 'changed', plan });
    else {
      const isAny = this.#page.saved?.isAny;
      this.#dispatch({ type: 'opened', plan, by: by === 'page' ? 'page' : 'person', isAny });
    }
  }

  #retry(): void {
    this.#dispatch({ type: 'retry-chosen', canRead: this.#page.saved?.isAny !== undefined });
    this.#page.drafts?.write();
  }

  #restoreCopy(id: string, copy: Plan | undefined): void {
    if (copy === undefined) return;
    this.#oncePrepared(copy, () => {
      const { plan } = this.#page.store.view;
      if (plan !== undefined) this.#dispatch({ type: 'copy-chosen', id, copy, plan });
    });
  }

  /** Of the plan on screen, where there is one. */
  #withPlan(type: 'other-tab-chosen' | 'this-plan-chosen'): void {
    const { plan } = this.#page.store.view;
    if (plan !== undefined) this.#dispatch({ type, plan });
  }

  #load(mirror?: string, link?: LinkedPlan): void {
    const { saved, base, hasOwnPlan } = this.#page;
    const { mode, canSave } = this.#state;
    const isAwaited = mode === 'starting' || mode === 'conflict';
    const loaded = isAwaited && canSave ? saved?.load(mirror) : undefined;
    this.#dispatch({
      type: 'loaded',
      ...(loaded ?? NOTHING_LOADED),
      link: link?.plan,
      isChecked: link?.isChecked ?? true,
      lacksYears: link?.lacksYears ?? false,
      base: base(),
      hasOwnPlan: hasOwnPlan(),
    });
  }

  #dispatch(event: AutosaveEvent): void {
    this.#events.push(event);
    if (this.#isRunning) return;
    this.#isRunning = true;
    let isNews = false;
    try {
      for (let next = this.#events.shift(); next !== undefined; next = this.#events.shift()) {
        const before = this.#state;
        const { state, effects } = transition(before, next);
        this.#state = state;
        for (const effect of effects) this.#run(effect);
        isNews ||= !isPlainChange(before, state, effects);
      }
    } finally {
      this.#isRunning = false;
    }
    if (isNews) this.#tell();
  }

  #run(effect: Effect): void {
    runEffect(effect, {
      page: this.#page,
      dispatch: (event) => this.#dispatch(event),
      schedule: (withinMs) => this.#deadline.within(withinMs),
      load: () => this.#load(),
      open: (plan) => this.#plan.open(plan),
      end: () => {
        this.#deadline.clear();
        this.#unsubscribe();
      },
    });
  }

  #tell(): void {
    const { saved, drafts, onReport } = this.#page;
    const { notes, canSave } = this.#state;
    const report: AutosaveReport =
      saved !== undefined && canSave
        ? {
            status: statusOf(this.#state),
            notes: notesOnPage(notes, saved),
            copies: saved.listCopies(),
            drafts: drafts?.left ?? [],
          }
        : { ...AUTOSAVE_OFF, notes };
    if (sameData(report, this.#report)) return;
    this.#report = report;
    onReport(report);
  }
}

/** Another plan of the same page is no other tab. */
function notesOnPage(notes: AutosaveReport['notes'], saved: SavedPlans): AutosaveReport['notes'] {
  return notes.map((note) =>
    (note.code === 'conflict' || note.code === 'other-tab') && saved.isOfThisPage ? { ...note, isOnPage: true } : note,
  );
}

/** Whether there is no more to it than a plan that will be saved soon, which nobody needs to be told. */
function isPlainChange(before: AutosaveState, after: AutosaveState, effects: readonly Effect[]): boolean {
  const { mode, canSave, notes } = before;
  const isSame = mode === after.mode && canSave === after.canSave && notes === after.notes;
  return isSame && effects.every(({ type }) => type === 'schedule');
}

function statusOf({ mode, notes }: AutosaveState): AutosaveStatus {
  if (hasNote(notes, 'not-saved')) return 'not-saved';
  return mode === 'conflict' || mode === 'link' ? 'asking' : 'saved';
}
