import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { plannerWords } from '../../language/en/planner.ts';
import { formatFor } from '../../language/format/format.ts';
import { NoticesFoundEvent } from '../shared/events/notices-found-event.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, readingOf } from '../shared/plan-state.ts';
import { ViewElement } from '../shared/view-element.ts';

/** What can stand beside the sheet. */
export const PANEL_TABS = ['trace', 'notices', 'chart'] as const;
export type PanelTab = (typeof PANEL_TABS)[number];

/** Where a key leads from one tab, by their number. */
const STEPS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at, last) => (at === last ? 0 : at + 1),
  ArrowLeft: (at, last) => (at === 0 ? last : at - 1),
  Home: () => 0,
  End: (_at, last) => last,
};

let panels = 0;

/**
 * Beside the sheet, one at a time: why the selected figure is so, what needs attention, or the running totals in figures. It turns to another by nobody
 * but the reader. In light DOM, so that the planner finds what stands in it. Internal to `runnel-planner`.
 */
export class PlannerPanel extends ViewElement {
  readonly #plan = new PlanConsumer(this);
  readonly #id = `runnel-panel-${++panels}`;

  @property({ attribute: false }) tab: PanelTab = 'trace';

  /** Tabs that were opened: the chart is drawn for whoever looks at it. */
  readonly #shown = new Set<PanelTab>();

  @state() private urgent = 0;

  constructor() {
    super();
    // Heard while this is drawn: it is for the next drawing.
    this.addEventListener(NoticesFoundEvent.type, ({ urgent }) => {
      queueMicrotask(() => {
        this.urgent = urgent;
      });
    });
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  protected override willUpdate(_changed: PropertyValues): void {
    // Without a season there is nothing to ask why; what was wrong with a file stands among the notices.
    if (!isReady(this.#plan.view)) this.tab = 'notices';
  }

  protected override render(): TemplateResult {
    const reader = readingOf(this.#plan.view);
    const say = plannerWords(reader.language);
    const isSeason = isReady(this.#plan.view);
    const tabs = isSeason ? PANEL_TABS : (['notices'] as const);
    this.#shown.add(this.tab);
    return html`<div class="runnel-planner__tabs" role="tablist" aria-label=${say.panel} @keydown=${this.#onKey}>
        ${tabs.map(
          (tab) => html`<button role="tab" id="${this.#id}-${tab}" aria-controls="${this.#id}-${tab}-panel"
            aria-selected=${tab === this.tab ? 'true' : 'false'} tabindex=${tab === this.tab ? 0 : -1}
            @click=${() => {
              this.tab = tab;
            }}>${say.tab[tab]}${tab === 'notices' && this.urgent > 0 ? html` <small>${say.urgent(formatFor(reader), this.urgent)}</small>` : nothing}</button>`,
        )}
      </div>
      ${isSeason ? this.#pane('trace', html`<runnel-trace class="runnel-planner__trace"></runnel-trace>`) : nothing}
      ${this.#pane('notices', html`<runnel-notices class="runnel-planner__notices"></runnel-notices>`)}
      ${isSeason ? this.#pane('chart', this.#shown.has('chart') ? html`<runnel-chart class="runnel-planner__chart"></runnel-chart>` : html``) : nothing}`;
  }

  #pane(tab: PanelTab, content: TemplateResult): TemplateResult {
    return html`<div class="runnel-planner__pane" role="tabpanel" id="${this.#id}-${tab}-panel"
      aria-labelledby="${this.#id}-${tab}" ?hidden=${tab !== this.tab}>${content}</div>`;
  }

  readonly #onKey = (event: KeyboardEvent): void => {
    const step = STEPS[event.key];
    if (step === undefined || !isReady(this.#plan.view)) return;
    event.preventDefault();
    const last = PANEL_TABS.length - 1;
    this.tab = PANEL_TABS[step(PANEL_TABS.indexOf(this.tab), last)] ?? 'trace';
    void this.updateComplete.then(() => this.querySelector<HTMLElement>('[role=tab][aria-selected=true]')?.focus());
  };
}
