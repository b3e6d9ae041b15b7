/** Keeping as a page has it: the browser's storage, what happens to the tab, the address, files. */

import type { KeeperPage } from '../../autosave/keeper-page.ts';
import { openKeptCopy } from '../../autosave/kept-copy.ts';
import { KeptStorage } from '../../autosave/kept-storage.ts';
import { KeptWriter, keptIn } from '../../autosave/kept-writer.ts';
import { PlanKeeper } from '../../autosave/plan-keeper.ts';
import { newId } from '../../autosave/storage-shelf.ts';
import { PageTabs } from '../../autosave/typed/page-tabs.ts';
import { TypedFields } from '../../autosave/typed/typed-fields.ts';
import { TypedTexts } from '../../autosave/typed/typed-texts.ts';
import { planTextFromLink } from '../../exchange/link/plan-text-from-link.ts';
import { keepingWords } from '../../language/en/keeping-words.ts';
import { define } from '../shared/define.ts';
import { saveFile } from '../shared/save-file.ts';
import { savePlan } from '../shared/save-plan.ts';
import { KeepingStrip } from './keeping-strip.ts';

/** What a plan's element gives: its store, its own plan, and an ear for news. */
export interface PageKeepingHost extends Pick<KeeperPage, 'store' | 'base' | 'hasOwnPlan' | 'openOwnPlan' | 'told'> {
  readonly element: HTMLElement;
  readonly storageKey: string | undefined;
  readonly fromLink: boolean;
  /** Whether a person has changed or opened a plan before this came. */
  readonly isTouched: boolean;
}

export class PageKeeping {
  readonly keeper: PlanKeeper;
  readonly #host: PageKeepingHost;
  readonly #storage: KeptStorage | undefined;
  readonly #tabs: PageTabs | undefined;
  readonly #typed: TypedTexts | undefined;
  readonly #fields: TypedFields | undefined;
  /** Ends the listening of the last time that the element stood in a page. */
  #ended = new AbortController();

  constructor(host: PageKeepingHost) {
    define('runnel-plan-keeping', KeepingStrip);
    const { storageKey } = host;
    this.#host = host;
    this.#storage =
      storageKey === undefined ? undefined : new KeptStorage(storageKey, () => localStorage, openKeptCopy());
    const tab = newId();
    this.#tabs = storageKey === undefined ? undefined : new PageTabs(storageKey, tab);
    this.#typed = this.#storage && this.#tabs && new TypedTexts(this.#storage.typed, this.#tabs, tab);
    this.#fields = this.#typed && new TypedFields(host.element, this.#typed);
    this.keeper = new PlanKeeper({
      ...host,
      typed: this.#typed,
      writer: this.#storage && new KeptWriter(this.#storage, host.base),
      savePlan,
      saveKept,
      copyText: (text) => void navigator.clipboard?.writeText(text).catch(() => undefined),
      leaveLink,
    });
    void this.keeper.start(this.#link(), host.isTouched);
  }

  /** The element stands in a page. */
  connect(): void {
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
    this.#tabs?.open();
  }

  disconnect(): void {
    this.keeper.write();
    this.#tabs?.close();
    this.#ended.abort();
  }

  #link(): Promise<string | undefined> {
    return this.#host.fromLink ? planTextFromLink(location.hash) : Promise.resolve(undefined);
  }

  readonly #onStorage = ({ key }: StorageEvent): void => {
    if (this.#storage?.isMine(key) === true) this.keeper.look();
  };

  /** The tab goes: what stands in a field counts as typed, and all is written. */
  readonly #onPagehide = (): void => {
    const field = focusedWithin(this.#host.element);
    if (this.#fields !== undefined) this.#fields.isGoing = true;
    field?.blur();
    this.keeper.write();
    // A page with an open channel may not be kept for the way back.
    this.#tabs?.close();
  };

  /** The tab is hidden, or comes back from where it heard nothing. */
  readonly #onReturn = (): void => {
    if (document.visibilityState === 'visible') {
      // A tab that is closed turns hidden after it has heard that it goes.
      if (this.#fields !== undefined) this.#fields.isGoing = false;
      this.#tabs?.open();
    }
    this.keeper.write();
    this.keeper.look();
  };

  readonly #onHashchange = (): void => {
    if (this.#host.fromLink) void this.keeper.openLink(this.#link());
  };
}

/** The field with the keyboard inside an element, through shadow roots; a field that is left says what was typed in it. */
function focusedWithin(element: HTMLElement): HTMLElement | undefined {
  let focused = document.activeElement;
  if (focused === null || !element.contains(focused)) return undefined;
  while (focused.shadowRoot?.activeElement) focused = focused.shadowRoot.activeElement;
  return focused instanceof HTMLElement ? focused : undefined;
}

function saveKept(text: string | undefined): void {
  const kept = keptIn(text);
  if (kept !== undefined) savePlan(kept.plan);
  else if (text !== undefined) saveFile(keepingWords.damagedFile, text, 'text/plain');
}

function leaveLink(): void {
  // The fragment may be the page's own by now.
  if (location.hash.includes('runnel=')) history.replaceState(history.state, '', location.pathname + location.search);
}
