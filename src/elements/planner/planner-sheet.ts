import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import { cache } from 'lit/directives/cache.js';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { GridPlaces } from '../grid/runnel-grid.ts';
import { RunnelSelectEvent } from '../shared/events/select-event.ts';
import { RunnelStartDoneEvent } from '../shared/events/start-done-event.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, waitingTemplate } from '../shared/plan-state.ts';
import { ViewElement } from '../shared/view-element.ts';
import type { RunnelStart } from '../start/runnel-start.ts';
import { StartStepEvent } from '../start/start-step-event.ts';
import { type KeptStep, KeptSteps, type StepPlace } from './kept-step.ts';
import { NewPlanEvent } from './new-plan-event.ts';
import { PANEL_TABS, type PlannerPanel } from './planner-panel.ts';
import { PLANNER_VIEWS, type PlannerView, VIEW_OF_PART } from './planner-views.ts';
import { ScrolledViews } from './scrolled-views.ts';
import { type PlannerPart, ShowPartEvent } from './show-part-event.ts';
import { ShowViewEvent } from './show-view-event.ts';

/**
 * The planner's head and its views, in light DOM since the grid works nowhere else. A view that was shown stays as it was left,
 * hidden, while another stands there. Without a plan the steps to one stand there, and what was wrong with a file; they stay until
 * they are done or left. Internal to `runnel-planner`.
 */
export class PlannerSheet extends ViewElement {
  readonly #plan = new PlanConsumer(this);

  @property({ attribute: false }) licenseKey = '';

  @property({ attribute: false }) today: string | undefined;

  /** Address of a plan that the steps offer to look at. */
  @property({ attribute: false }) example: string | undefined;

  @property({ attribute: false }) views: readonly PlannerView[] = PLANNER_VIEWS;

  @property({ attribute: false }) view: PlannerView = 'season';

  @property({ attribute: false }) addressOf: (view: PlannerView) => string | undefined = () => undefined;

  /** Whether it stands on a phone. */
  @property({ attribute: false }) isNarrow = false;

  /** Whether the steps to a plan stand in the place of its views. */
  @state() private isStarting = false;

  /** Whether the strip has its size, so that the sheet beneath it does not move. */
  @state() private isStripLaid = false;

  #laying: Promise<void> | undefined;

  #hadPlan = false;

  readonly #steps = new KeptSteps();

  /** Until the steps are on the page again. */
  #kept: Omit<KeptStep, 'row'> | undefined;

  @query('runnel-start') private readonly start!: RunnelStart | null;

  @query('.runnel-planner__strip') private readonly strip!: ViewElement | null;

  @query('runnel-planner-panel') private readonly panel!: PlannerPanel | null;

  /** The controls of the sheet stand beside the views: a row of their own would cost a zone. */
  readonly #places: GridPlaces = { tools: place('tools'), key: place('key') };

  /** Views that were shown: what was begun in them is kept. */
  readonly #shown = new Set<PlannerView>();

  constructor() {
    super();
    new ScrolledViews(this);
    this.addEventListener(NewPlanEvent.type, () => {
      this.isStarting = true;
      void this.updateComplete.then(() => this.start?.begin());
    });
    this.addEventListener(StartStepEvent.type, ({ step, row }) => {
      const plan = this.#plan.view.plan?.name;
      // A field that goes with the steps tells of it once more.
      if (this.isStarting) this.#steps.keep(step === 'begin' ? undefined : { step, row, plan });
    });
    this.addEventListener(RunnelStartDoneEvent.type, ({ view }) => {
      this.isStarting = false;
      this.#steps.keep(undefined);
      this.dispatchEvent(new ShowViewEvent(view));
    });
    this.addEventListener(ShowPartEvent.type, ({ part }) => void this.#show(part));
    this.addEventListener(RunnelWhyEvent.type, ({ selection }) => {
      this.dispatchEvent(new RunnelSelectEvent(selection));
      void this.#show('trace');
    });
    // The editor of the garden takes the reader to the section; the planner takes them to the editor.
    this.addEventListener(RunnelSelectEvent.type, ({ selection }) => {
      if (selection.part !== undefined) this.dispatchEvent(new ShowViewEvent('garden'));
    });
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#kept = this.#steps.open(this.#stepPlace);
    addEventListener('pagehide', this.#onPageHide);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('pagehide', this.#onPageHide);
    this.#steps.close();
  }

  readonly #onPageHide = (): void => this.start?.tellStep();

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('view')) this.#shown.add(this.view);
    const { plan, status, readOnly } = this.#plan.view;
    if (plan === undefined) this.isStarting = !readOnly && (this.isStarting || status !== 'loading');
    else if (!this.#hadPlan) {
      if (this.#kept?.plan !== plan.name) this.#kept = undefined;
      this.isStarting =
        !readOnly && (isBare(plan) || this.#kept !== undefined || (this.start?.step ?? 'begin') !== 'begin');
    }
    this.#hadPlan = plan !== undefined;
  }

  protected override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    if (!this.isStripLaid && this.strip !== null) this.#laying ??= this.#layStrip(this.strip);
    const { start } = this;
    const kept = this.#kept;
    if (start === null || kept === undefined || !this.#hadPlan) return;
    start.step = kept.step;
    this.#kept = undefined;
    void this.#steps.row().then((row) => start.takeRow(row));
  }

  async #layStrip(strip: ViewElement): Promise<void> {
    try {
      await customElements.whenDefined(strip.localName);
      while (!(await strip.updateComplete));
    } finally {
      this.isStripLaid = true;
      this.#laying = undefined;
    }
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    const isComplete = await super.getUpdateComplete();
    if (this.#laying === undefined) return isComplete;
    await this.#laying;
    return false;
  }

  get #stepPlace(): StepPlace {
    return {
      hasAddress: this.addressOf('season') !== undefined,
      storageKey: this.closest('runnel-plan')?.storageKey,
    };
  }

  get #isKept(): boolean {
    const { hasAddress, storageKey } = this.#stepPlace;
    return hasAddress || storageKey !== undefined;
  }

  async #show(part: PlannerPart): Promise<void> {
    this.dispatchEvent(new ShowViewEvent(VIEW_OF_PART[part]));
    await this.closest('runnel-planner')?.updateComplete;
    while (!(await this.updateComplete));
    const tab = PANEL_TABS.find((each) => each === part);
    if (this.panel !== null && tab !== undefined) {
      this.panel.tab = tab;
      await this.panel.updateComplete;
    }
    const element = this.querySelector<ViewElement>(`runnel-${part}`);
    // A grid that comes later would move what was scrolled to, and the focus; what is empty yet leaves no page to scroll.
    for (const each of [this.querySelector('runnel-grid'), element]) {
      if (each === null) continue;
      await customElements.whenDefined(each.localName);
      while (!(await each.updateComplete));
    }
    element?.scrollIntoView(this.isNarrow || { block: 'nearest' });
    if (element) focusOnce(element);
  }

  protected override render(): TemplateResult {
    const isSeason = isReady(this.#plan.view) && !this.isStarting;
    this.#places.tools.hidden = this.view !== 'season';
    return html`<runnel-planner-bar class="runnel-planner__bar"></runnel-planner-bar>
      ${isSeason ? this.#head() : nothing}
      ${isSeason ? this.views.map((view) => this.#place(view)) : nothing}${cache(isSeason ? nothing : this.#withoutSeason())}`;
  }

  /** The way from view to view, which a narrow screen has at its foot; else beside it what can be done with the view that stands there. */
  #head(): TemplateResult | typeof nothing {
    const hasOthers = this.views.length > 1;
    const nav = html`<runnel-planner-nav class="runnel-planner__nav" .views=${this.views} .view=${this.view}
      .addressOf=${this.addressOf}></runnel-planner-nav>`;
    if (this.isNarrow) return hasOthers ? nav : nothing;
    return html`<div class="runnel-planner__head">${hasOthers ? nav : nothing}${this.#places.tools}</div>`;
  }

  #place(view: PlannerView): TemplateResult | typeof nothing {
    if (!this.#shown.has(view)) return nothing;
    return html`<section class="runnel-planner__view runnel-planner__view-${view}" ?hidden=${view !== this.view}>
      ${this.#contents[view]()}
    </section>`;
  }

  readonly #contents: Readonly<Record<PlannerView, () => TemplateResult>> = {
    season: () => html`<runnel-chart class="runnel-planner__strip" strip .today=${this.today}></runnel-chart>
      <div class="runnel-planner__desk">
        <runnel-grid class="runnel-planner__grid" .licenseKey=${this.licenseKey} .today=${this.today} .isHeld=${!this.isStripLaid}
          .places=${this.isNarrow ? undefined : this.#places}></runnel-grid>
        <runnel-planner-panel class="runnel-planner__panel"></runnel-planner-panel>
      </div>
      ${this.isNarrow ? nothing : this.#places.key}`,
    week: () => html`<runnel-week class="runnel-planner__week" .today=${this.today} answers-why></runnel-week>`,
    mix: () => html`<runnel-mix class="runnel-planner__mix"></runnel-mix>`,
    garden: () => html`<runnel-garden class="runnel-planner__garden" .today=${this.today}></runnel-garden>`,
    files: () => html`<runnel-files class="runnel-planner__files" .today=${this.today}></runnel-files>`,
  };

  #withoutSeason(): TemplateResult {
    return html`<section class="runnel-planner__view">
      ${
        this.#plan.view.faults.length > 0
          ? html`<runnel-planner-panel class="runnel-planner__panel"></runnel-planner-panel>`
          : nothing
      }
      ${this.isStarting ? html`<runnel-start class="runnel-planner__start" .today=${this.today} .example=${this.example} .isKept=${this.#isKept}></runnel-start>` : this.#unfinished()}
    </section>`;
  }

  #unfinished(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    return view.plan === undefined && view.status === 'loading' ? waitingTemplate(view) : this.#contents.garden();
  }
}

/** Begun with the steps, and nothing grows in it yet, or its weather is not known. */
const isBare = ({ assumed, site, zones }: Plan): boolean =>
  assumed !== undefined && (site.climate.source === '' || zones.every(({ plantings }) => plantings.length === 0));

function place(of: 'tools' | 'key'): HTMLElement {
  const made = document.createElement('div');
  made.className = `runnel-planner__${of}`;
  return made;
}

/** Not for longer: a host that Tab passes by takes all that stands in it along. */
function focusOnce(element: HTMLElement): void {
  element.tabIndex = -1;
  element.focus({ preventScroll: true });
  element.addEventListener('blur', () => element.removeAttribute('tabindex'), { once: true });
}
