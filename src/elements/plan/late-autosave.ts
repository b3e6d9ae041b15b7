import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { AutosavePage } from '../../autosave/autosave-page.ts';
import { AUTOSAVE_OFF, type AutosaveChoice, type AutosaveReport } from '../../autosave/report.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { languageFor } from '../../language/languages.ts';
import type { PageAutosave } from './page-autosave.ts';

export interface AutosaveSettings {
  readonly storageKey: string | undefined;
  readonly fromLink: boolean;
  readonly readOnly: boolean;
}

export type AutosaveParts = Pick<AutosavePage, 'store' | 'work' | 'base' | 'hasOwnPlan' | 'openOwnPlan' | 'onReport'>;

/** Saves the plan of an element, with code that is fetched only where a page asks for it. */
export class LateAutosave implements ReactiveController {
  report: AutosaveReport = AUTOSAVE_OFF;

  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #parts: AutosaveParts;
  #storageKey: string | undefined;
  #fromLink = false;
  #page: PageAutosave | undefined;
  #isConnected = false;
  /** Counts the settings, so that what was fetched for others is not used. */
  #turn = 0;
  #hasFailed = false;

  constructor(host: ReactiveControllerHost & HTMLElement, parts: AutosaveParts) {
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

  /** Takes up the settings of the page; true where the first plan is then opened from here. */
  apply({ storageKey, fromLink, readOnly }: AutosaveSettings): boolean {
    // A plan that is shown read-only for a while goes on being saved afterwards.
    const key = readOnly && storageKey !== this.#storageKey ? undefined : storageKey;
    if (key === this.#storageKey && fromLink === this.#fromLink) return false;
    this.#storageKey = key;
    this.#fromLink = fromLink;
    this.#stop();
    if (key === undefined && !fromLink) return false;
    void this.#start(++this.#turn);
    return true;
  }

  choose(choice: AutosaveChoice, of: string | undefined): void {
    this.#page?.autosave.choose(choice, of);
  }

  render(): TemplateResult | typeof nothing {
    const { locale } = this.#parts.store.view;
    if (this.#hasFailed) {
      const words = planElementWords(languageFor(locale));
      return html`<p part="autosave" role="status">${words.autosaveFailed}</p>`;
    }
    if (this.#page === undefined) return nothing;
    return html`<runnel-plan-autosave part="autosave" .report=${this.report} .locale=${locale}
      .choose=${(choice: AutosaveChoice, of: string) => this.choose(choice, of)}></runnel-plan-autosave>`;
  }

  #stop(): void {
    this.#turn++;
    this.#hasFailed = false;
    this.#page?.autosave.stop();
    this.#page?.disconnect();
    this.#page = undefined;
    this.#onReport(AUTOSAVE_OFF);
  }

  async #start(turn: number): Promise<void> {
    let isTouched = false;
    const unsubscribe = this.#parts.store.subscribe((_, change) => {
      isTouched ||= change !== undefined && change.by !== 'page';
    });
    try {
      const { PageAutosave } = await import('./page-autosave.ts');
      if (turn !== this.#turn) return;
      this.#page = new PageAutosave({
        ...this.#parts,
        element: this.#host,
        storageKey: this.#storageKey,
        fromLink: this.#fromLink,
        isTouched,
        onReport: (report) => this.#onReport(report),
      });
      if (this.#isConnected) this.#page.connect();
    } catch {
      if (turn !== this.#turn) return;
      this.#hasFailed = true;
      this.#parts.openOwnPlan();
    } finally {
      unsubscribe();
    }
    this.#host.requestUpdate();
  }

  #onReport(report: AutosaveReport): void {
    if (report === this.report) return;
    this.report = report;
    this.#parts.onReport(report);
    this.#host.requestUpdate();
  }
}
