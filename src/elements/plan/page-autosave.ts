/** Autosave as a page has it: the browser's storage, what happens to the tab, the address, files. */
import { Autosave } from '../../autosave/autosave.ts';
import type { AutosavePage } from '../../autosave/autosave-page.ts';
import { DraftFields } from '../../autosave/drafts/draft-fields.ts';
import { Drafts } from '../../autosave/drafts/drafts.ts';
import { OpenTabs } from '../../autosave/drafts/open-tabs.ts';
import { PlanStorage } from '../../autosave/plan-storage.ts';
import { savedPlanIn } from '../../autosave/saved-plan.ts';
import { SavedPlans } from '../../autosave/saved-plans.ts';
import { openStorageMirror, type StorageMirror } from '../../autosave/storage-mirror.ts';
import { newId } from '../../autosave/text-storage.ts';
import { type LinkContent, linkContent } from '../../exchange/link/plan-text-from-link.ts';
import { autosaveWords } from '../../language/en/autosave.ts';
import { languageFor } from '../../language/languages.ts';
import { define } from '../shared/define.ts';
import { saveFile } from '../shared/save-file.ts';
import { savePlan } from '../shared/save-plan.ts';
import { warnDeveloper } from '../shared/warn-developer.ts';
import { AutosaveStrip } from './autosave-strip.ts';

/** What a plan's element gives: its store, its own plan, and where reports go. */
export interface PageAutosaveHost
  extends Pick<AutosavePage, 'store' | 'work' | 'base' | 'hasOwnPlan' | 'openOwnPlan' | 'onReport'> {
  readonly element: HTMLElement;
  readonly storageKey: string | undefined;
  readonly fromLink: boolean;
  /** Whether a person has changed or opened a plan before this came. */
  readonly isTouched: boolean;
}

/** Elements that save now, by their key. */
const saving = new Map<string, Set<HTMLElement>>();

export class PageAutosave {
  readonly autosave: Autosave;
  readonly #host: PageAutosaveHost;
  readonly #mirror: StorageMirror | undefined;
  readonly #storage: PlanStorage | undefined;
  readonly #tabs: OpenTabs | undefined;
  readonly #fields: DraftFields | undefined;
  /** Ends the listening of the last time that the element stood in a page. */
  #ended = new AbortController();

  constructor(host: PageAutosaveHost) {
    define('runnel-plan-autosave', AutosaveStrip);
    this.#host = host;
    const { storageKey } = host;
    const tab = newId();
    if (storageKey !== undefined) {
      this.#mirror = openStorageMirror();
      this.#storage = new PlanStorage(storageKey, () => localStorage, this.#mirror);
      this.#tabs = new OpenTabs(storageKey, tab);
    }
    const drafts = this.#storage && this.#tabs && new Drafts(this.#storage.drafts, this.#tabs, tab);
    this.#fields = drafts && new DraftFields(host.element, drafts);
    this.autosave = new Autosave({
      ...host,
      drafts,
      saved: this.#storage && new SavedPlans(this.#storage, host.base),
      savePlanFile: savePlan,
      saveCopyFile: (text) => saveCopyFile(text, host.store.view.locale),
      copyText: (text) => void navigator.clipboard?.writeText(text).catch(() => undefined),
      leaveLink,
    });
    void this.autosave.start(this.#link(), host.isTouched);
  }

  /** The element stands in a page. */
  connect(): void {
    this.#mirror?.open();
    this.#ended = new AbortController();
    const { signal } = this.#ended;
    addEventListener('storage', this.#onStorage, { signal });
    addEventListener('pagehide', this.#onPagehide, { signal });
    addEventListener('pageshow', this.#onReturn, { signal });
    addEventListener('hashchange', this.#onHashchange, { signal });
    document.addEventListener('visibilitychange', this.#onReturn, { signal });
    this.#fields?.listen(signal);
    const unsubscribe = this.#host.store.subscribe((_, change) => {
      if (change?.cause === 'edit') this.#fields?.onEdit();
    });
    signal.addEventListener('abort', unsubscribe);
    this.#tabs?.connect();
    this.#shareKey();
  }

  /** Two plans under one key overwrite each other: whoever makes the page is told. */
  #shareKey(): void {
    const { storageKey, element } = this.#host;
    if (storageKey === undefined) return;
    const all = saving.get(storageKey) ?? new Set();
    saving.set(storageKey, all.add(element));
    this.#ended.signal.addEventListener('abort', () => all.delete(element));
    if (all.size > 1) {
      warnDeveloper(
        element,
        `two plans of this page have the storage-key "${storageKey}"; give each a key of its own.`,
      );
    }
  }

  disconnect(): void {
    this.autosave.save();
    this.#tabs?.disconnect();
    this.#mirror?.close();
    this.#ended.abort();
  }

  #link(): Promise<LinkContent | undefined> {
    return this.#host.fromLink ? linkContent(location.hash) : Promise.resolve(undefined);
  }

  readonly #onStorage = ({ key }: StorageEvent): void => {
    if (this.#storage?.hasKey(key) === true) this.autosave.look();
  };

  /** The tab goes: what stands in a field counts as entered, and all is saved. */
  readonly #onPagehide = (): void => {
    const field = focusedWithin(this.#host.element);
    if (this.#fields !== undefined) this.#fields.isGoing = true;
    field?.blur();
    this.autosave.save();
    // A page with an open channel may not be kept for the way back.
    this.#tabs?.disconnect();
  };

  /** The tab is hidden, or comes back from where it heard nothing. */
  readonly #onReturn = (): void => {
    if (document.visibilityState === 'visible') {
      // A tab that is closed turns hidden after it has heard that it goes.
      if (this.#fields !== undefined) this.#fields.isGoing = false;
      this.#tabs?.connect();
    }
    this.autosave.save();
    this.autosave.look();
  };

  readonly #onHashchange = (): void => {
    if (this.#host.fromLink) void this.autosave.openLink(this.#link());
  };
}

/** The field with the keyboard inside an element, through shadow roots; a field that is left says what was typed in it. */
function focusedWithin(element: HTMLElement): HTMLElement | undefined {
  let focused = document.activeElement;
  if (focused === null || !element.contains(focused)) return undefined;
  while (focused.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  return focused instanceof HTMLElement ? focused : undefined;
}

function saveCopyFile(text: string | undefined, locale: string): void {
  const saved = savedPlanIn(text);
  if (saved !== undefined) savePlan(saved.plan);
  else if (text !== undefined) saveFile(autosaveWords(languageFor(locale)).damagedFile, text, 'text/plain');
}

function leaveLink(): void {
  // The fragment may be the page's own by now.
  if (location.hash.includes('runnel=')) history.replaceState(history.state, '', location.pathname + location.search);
}
