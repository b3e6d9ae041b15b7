import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { planElementWords } from '../../language/en/plan-element.ts';
import { languageFor } from '../../language/languages.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { fetchPart } from './fetch-part.ts';

/** Whatever knows the reader's locale, as the plan around an element does. */
export interface LocaleSource {
  readonly view: Pick<PlanView, 'locale'>;
}

/** A part of an element's code that is fetched when it is first shown, so that a page does not wait for it. */
export class LatePart<Part> implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #plan: LocaleSource;
  readonly #fetch: () => Promise<Part>;
  #part: Part | undefined;
  #hasFailed = false;
  #fetching: Promise<void> | undefined;

  /** What it says while it is not there is said in the locale of `plan`. */
  constructor(host: ReactiveControllerHost, plan: LocaleSource, fetch: () => Promise<Part>) {
    this.#host = host;
    this.#plan = plan;
    this.#fetch = fetch;
    host.addController(this);
  }

  /** Undefined while it is being fetched, which the first call begins; the host renders again once it is there. */
  get part(): Part | undefined {
    if (this.#part === undefined && !this.#hasFailed) this.#fetching ??= this.#begin();
    return this.#part;
  }

  /** The same, but fetches nothing. */
  get fetched(): Part | undefined {
    return this.#part;
  }

  /** What stands in its place until then. */
  get waiting(): TemplateResult {
    return html`<p class="waiting" role="status">${this.waitingWords}</p>`;
  }

  /** The words of it. */
  get waitingWords(): string {
    const words = planElementWords(languageFor(this.#plan.view.locale));
    return this.#hasFailed ? words.partFailed : words.partLoading;
  }

  /** Waits for what is being fetched; false where there was something to wait for. */
  async isSettled(): Promise<boolean> {
    if (this.#fetching === undefined) return true;
    await this.#fetching;
    return false;
  }

  /** A page that was without a connection tries again when the element is put back. */
  hostConnected(): void {
    this.#hasFailed = false;
  }

  async #begin(): Promise<void> {
    try {
      this.#part = await fetchPart(this.#fetch);
    } finally {
      this.#hasFailed = this.#part === undefined;
      this.#fetching = undefined;
      this.#host.requestUpdate();
    }
  }
}
