import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { KeeperPage } from '../../autosave/keeper-page.ts';
import type { Keeping, KeepingChoice } from '../../store/keeping.ts';
import { NOT_KEPT } from '../../store/keeping.ts';
import { planWords } from '../shared/words/plan-words.ts';
import type { PageKeeping } from './page-keeping.ts';

/** What a page asks for. */
export interface KeepingWish {
  readonly storageKey: string | undefined;
  readonly fromLink: boolean;
  readonly readOnly: boolean;
}

export type KeepingParts = Pick<KeeperPage, 'store' | 'base' | 'hasOwnPlan' | 'openOwnPlan' | 'told'>;

/** Keeps the plan of an element, with code that is fetched only where a page asks for it. */
export class LateKeeping implements ReactiveController {
  keeping: Keeping = NOT_KEPT;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #parts: KeepingParts;
  #storageKey: string | undefined;
  #fromLink = false;
  #page: PageKeeping | undefined;
  #isConnected = false;
  /** Told apart from whoever asked before. */
  #wish = 0;
  #words: string | undefined;

  constructor(host: ReactiveControllerHost & HTMLElement, parts: KeepingParts) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  hostConnected(): void {
    this.#isConnected = true;
    this.#page?.connect();
  }

  hostDisconnected(): void {
    this.#isConnected = false;
    this.#page?.disconnect();
  }

  /** Takes up what the page asks for; true where the first plan is then opened from here. */
  settle({ storageKey, fromLink, readOnly }: KeepingWish): boolean {
    // A plan that is shown read-only for a while goes on being kept afterwards.
    const key = readOnly && storageKey !== this.#storageKey ? undefined : storageKey;
    if (key === this.#storageKey && fromLink === this.#fromLink) return false;
    this.#storageKey = key;
    this.#fromLink = fromLink;
    this.#stop();
    if (key === undefined && !fromLink) return false;
    void this.#start(++this.#wish);
    return true;
  }

  choose(choice: KeepingChoice, of: string | undefined): void {
    this.#page?.keeper.choose(choice, of);
  }

  render(): TemplateResult | typeof nothing {
    if (this.#words !== undefined) return html`<p part="keeping" role="status">${this.#words}</p>`;
    if (this.#page === undefined) return nothing;
    const { locale } = this.#parts.store.view;
    return html`<runnel-plan-keeping part="keeping" .keeping=${this.keeping} .locale=${locale}
      .choose=${(choice: KeepingChoice, of: string) => this.choose(choice, of)}></runnel-plan-keeping>`;
  }

  #stop(): void {
    this.#wish++;
    this.#words = undefined;
    this.#page?.disconnect();
    this.#page?.keeper.stop();
    this.#page = undefined;
    this.#tell(NOT_KEPT);
  }

  async #start(wish: number): Promise<void> {
    let isTouched = false;
    const unsubscribe = this.#parts.store.subscribe((_, change) => {
      isTouched ||= change !== undefined && change.by !== 'page';
    });
    try {
      const { PageKeeping } = await import('./page-keeping.ts');
      if (wish !== this.#wish) return;
      this.#page = new PageKeeping({
        ...this.#parts,
        element: this.#host,
        storageKey: this.#storageKey,
        fromLink: this.#fromLink,
        isTouched,
        told: (keeping) => this.#tell(keeping),
      });
      if (this.#isConnected) this.#page.connect();
    } catch {
      if (wish !== this.#wish) return;
      this.#words = planWords.notKept;
      this.#parts.openOwnPlan();
    } finally {
      unsubscribe();
    }
    this.#host.requestUpdate();
  }

  #tell(keeping: Keeping): void {
    if (keeping === this.keeping) return;
    this.keeping = keeping;
    this.#parts.told(keeping);
    this.#host.requestUpdate();
  }
}
