import { ContextProvider } from '@lit/context';
import { css, html, type PropertyValues, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { AutosaveChoice, AutosaveReport } from '../../autosave/report.ts';
import type { Season } from '../../engine/season/season.ts';
import { languageFor } from '../../language/languages.ts';
import type { EditResult } from '../../plan/edits/apply-edit.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { PlanStore } from '../../store/plan-store.ts';
import type { Selection } from '../../store/plan-view.ts';
import { ElementLanguage } from '../shared/element-language.ts';
import { RunnelAutosaveEvent } from '../shared/events/autosave-event.ts';
import { RunnelChangeEvent } from '../shared/events/change-event.ts';
import { RunnelErrorEvent } from '../shared/events/error-event.ts';
import { planContext } from '../shared/plan-context.ts';
import { resolveLocale } from '../shared/resolve-locale.ts';
import { ViewElement } from '../shared/view-element.ts';
import { fetchPlanText, filePlanText, warnOfAddress } from './fetch-plan-text.ts';
import { LateAutosave } from './late-autosave.ts';
import { ViewRequests } from './view-requests.ts';
import { WorkProgress } from './work-progress.ts';

/**
 * @summary Holds one plan and its season for every runnel element inside it.
 *
 * Shows nothing itself, except what there is to say about saving: a few words and buttons above all else. A file that cannot
 * be read leaves the plan on screen as it was. Ctrl+Z takes the last change back,
 * Ctrl+Shift+Z or Ctrl+Y makes it again, wherever in the plan the keyboard is except in a text field.
 *
 * @slot - The elements that show and edit the plan, in any order and depth.
 *
 * @fires {RunnelChangeEvent} runnel-change - The plan is another: loaded, edited, undone or redone. Carries `plan`,
 * `season`, `documentId`, `cause` and, for an edit, `edit`.
 * @fires {RunnelAutosaveEvent} runnel-autosave - The plan is saved in another way than before, or there is something to say about it.
 * Carries `autosave`: `status`, `notes` by their codes with values and choices, `copies` of plans that would have been overwritten,
 * and `drafts`, which were typed and not entered.
 * @fires {RunnelErrorEvent} runnel-error - A plan or an edit was refused, and what is on screen stays. Carries `refused` (`plan` or
 * `edit`), `faults` and, for an edit, `edit`. `describeFault` puts a fault in words.
 *
 * @csspart autosave - Messages about saving. A page that has its own hides it, and calls `chooseAutosave`.
 */
export class RunnelPlan extends ViewElement {
  static override readonly styles = css`
    :host {
      display: block;
    }

    :host([hidden]) {
      display: none;
    }

    .pending::slotted(*) {
      visibility: hidden;
    }
  `;

  /** The plan without its element, for code that subscribes. */
  readonly store = new PlanStore();

  readonly #provider = new ContextProvider(this, { context: planContext, initialValue: this.store.view });
  /** Ends the wait for a file when another one is asked for. */
  #reading = new AbortController();
  /** What the page set for its plan: as it was read, or as it came where it was refused. */
  #ownPlan: Plan | undefined;
  #faultsTold: readonly Fault[] = this.store.view.faults;
  readonly #progress = new WorkProgress(this, () => this.plan?.zones.length ?? 0);
  readonly #language = new ElementLanguage((locale) => this.#showLocale(locale));
  readonly #autosave = new LateAutosave(this, {
    store: this.store,
    work: this.#progress.until(),
    base: () => this.src,
    hasOwnPlan: () => this.src !== undefined || this.#ownPlan !== undefined,
    openOwnPlan: () => this.#openOwnPlan(),
    onReport: (report) => this.dispatchEvent(new RunnelAutosaveEvent(report)),
  });

  /** Address of a plan file (`*.runnel.json`). */
  @property() src: string | undefined;

  /** BCP 47 tag of the reader's language, numbers and dates; left out: the page's. A language that is not registered is English. */
  @property() locale: string | undefined;

  /** Whether the plan can only be looked at. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  /**
   * Name under which this browser saves the plan between visits; left out, nothing is saved. What was changed and saved comes before
   * `src`. A read-only plan is neither read from there nor written.
   */
  @property({ attribute: 'storage-key' }) storageKey: string | undefined;

  /** Whether the plan opens from the page's own address, where that carries one behind `#runnel=`. */
  @property({ type: Boolean, attribute: 'from-link' }) fromLink = false;

  /** Addresses in the Open-Meteo layout that end in `/archive` and `/forecast`, or of files of days; asked once a button is pressed. */
  @property({ attribute: 'weather-service' }) weatherService: string | undefined;

  /**
   * The plan on screen. Setting it opens that plan, with its faults listed where it has any; undefined changes nothing. Of a large one
   * the season is computed a little at a time: `runnel-change` tells when it stands there.
   */
  @property({ attribute: false, noAccessor: true })
  get plan(): Plan | undefined {
    return this.store.view.plan;
  }

  set plan(plan: Plan | undefined) {
    if (plan === undefined || plan === this.store.view.plan || this.#isOpening(plan)) return;
    this.#reading.abort();
    this.#openSet(plan);
  }

  constructor() {
    super();
    this.store.subscribe((view, change) => {
      if (!this.#language.isPending) this.#provider.setValue(view);
      this.#tellFaults(view.faults);
      const { plan, season, documentId } = view;
      if (change !== undefined && plan !== undefined && season !== undefined && documentId !== undefined) {
        this.dispatchEvent(new RunnelChangeEvent({ plan, season, documentId, ...change }));
      }
    });
    new ViewRequests(this, this.#progress.later);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#applySettings();
    this.#language.connect();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#language.disconnect();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.size > (changed.has('src') ? 1 : 0)) this.#applySettings();
    const isWaiting = this.#autosave.apply(this);
    if (changed.has('src') && this.src !== undefined) {
      if (isWaiting) this.#beginReading();
      else void this.#openAddress(this.src);
    }
  }

  /** The computed season of the plan on screen. */
  get season(): Season | undefined {
    return this.store.view.season;
  }

  /** Why the last file was refused; empty when it was opened. */
  get faults(): readonly Fault[] {
    return this.store.view.faults;
  }

  /** How the plan is saved between visits. */
  get autosave(): AutosaveReport {
    return this.#autosave.report;
  }

  /** Does what `autosave` offers; `of` is the code of the note, or the id of the copy or the draft. */
  chooseAutosave(choice: AutosaveChoice, of?: string): void {
    this.#autosave.choose(choice, of);
  }

  /**
   * Makes one change, and says whether it was made: `ok`, else `faults` say why not, and everything is as it was. What is no edit at
   * all throws a TypeError.
   */
  edit(edit: Edit): EditResult {
    return this.#told(edit, this.store.edit(edit));
  }

  /**
   * The same without keeping the page waiting: where the season takes long to compute, it is computed a little at a time, and the
   * answer is promised. What is asked for meanwhile is done after it.
   */
  requestEdit(edit: Edit): EditResult | Promise<EditResult> {
    const answer = this.store.requestEdit(edit, this.#progress.later);
    return answer instanceof Promise ? answer.then((result) => this.#told(edit, result)) : this.#told(edit, answer);
  }

  /** Takes the last change back; false where there is none. */
  undo(): boolean {
    return this.store.step('undo');
  }

  /** Makes the change again that was taken back last; false where there is none. */
  redo(): boolean {
    return this.store.step('redo');
  }

  /** Points every view at a zone, a planting, a week. */
  select(selection: Selection): void {
    this.store.select(selection);
  }

  /** Opens a plan from the text of its file; false, with `faults` saying why, where it is refused. */
  openText(text: string): boolean {
    this.#reading.abort();
    return this.store.openText(text);
  }

  /** The same from a file that a person chose. */
  async openFile(file: Blob): Promise<boolean> {
    const { signal } = this.#beginReading();
    const text = await filePlanText(file);
    if (signal.aborted) return false;
    if (typeof text === 'string') return this.store.openTextInSteps(text, this.#progress.until(signal));
    this.store.refuse([text]);
    return false;
  }

  #told(edit: Edit, result: EditResult): EditResult {
    if (!result.ok) this.dispatchEvent(new RunnelErrorEvent({ faults: result.faults, edit }));
    return result;
  }

  /** A plan that was refused is told of once. */
  #tellFaults(faults: readonly Fault[]): void {
    if (faults === this.#faultsTold) return;
    this.#faultsTold = faults;
    if (faults.length > 0) this.dispatchEvent(new RunnelErrorEvent({ faults }));
  }

  #openOwnPlan(): void {
    if (this.src !== undefined) void this.#openAddress(this.src);
    else if (this.#ownPlan !== undefined && this.plan !== this.#ownPlan) this.#openSet(this.#ownPlan);
  }

  /** Whether a plan that was set is being computed, and nothing else was asked for since. */
  #isOpening(plan: Plan): boolean {
    return plan === this.#ownPlan && this.store.view.status === 'loading' && !this.#reading.signal.aborted;
  }

  #openSet(plan: Plan): void {
    this.#ownPlan = plan;
    this.#reading = new AbortController();
    const isOpen = this.store.openPlanInSteps(plan, this.#progress.until(this.#reading.signal), 'page');
    const keep = (isTaken: boolean) => {
      if (isTaken) this.#ownPlan = this.plan;
    };
    if (isOpen instanceof Promise) {
      this.store.beginReading();
      void isOpen.then(keep);
    } else keep(isOpen);
  }

  async #openAddress(address: string): Promise<void> {
    const { signal } = this.#beginReading();
    const answer = await fetchPlanText(address, signal).catch(() => undefined);
    if (signal.aborted || answer === undefined) return;
    if (typeof answer === 'string') await this.store.openTextInSteps(answer, this.#progress.until(signal), 'page');
    else {
      this.store.refuse([answer]);
      warnOfAddress(this, address, answer);
    }
  }

  /** Only the file asked for last is opened. */
  #beginReading(): AbortController {
    this.#reading.abort();
    this.#reading = new AbortController();
    this.store.beginReading();
    return this.#reading;
  }

  #applySettings(): void {
    this.store.show({ readOnly: this.readOnly, fromLink: this.fromLink, weatherService: this.weatherService });
    this.#language.want(resolveLocale(this, this.locale));
  }

  #showLocale(locale: string): void {
    this.store.show({ locale });
    this.#provider.setValue(this.store.view);
    this.requestUpdate();
  }

  /** What is inside goes on. */
  protected override failure(words: string): TemplateResult {
    return html`${super.failure(words)}<slot></slot>`;
  }

  protected override render(): TemplateResult {
    // What is inside says nothing before the first language has come.
    if (this.#language.isPending) return html`<slot class="pending"></slot>`;
    return html`${this.#progress.render(languageFor(this.store.view.locale))}${this.#autosave.render()}<slot></slot>`;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-plan': RunnelPlan;
  }
}
