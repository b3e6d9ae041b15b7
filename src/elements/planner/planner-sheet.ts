import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import { RunnelSelectEvent } from '../shared/events/select-event.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady } from '../shared/plan-state.ts';
import { type PlannerPart, ShowPartEvent } from './show-part-event.ts';

/**
 * The planner's parts on one sheet, in light DOM since the grid works nowhere else. Without a season only the notices
 * stand there: they say what is missing. Internal to `runnel-planner`.
 */
export class PlannerSheet extends LitElement {
  readonly #plan = new PlanConsumer(this);

  @property({ attribute: false }) licenseKey = '';

  constructor() {
    super();
    this.addEventListener(ShowPartEvent.type, ({ part }) => this.#show(part));
    this.addEventListener(RunnelWhyEvent.type, ({ selection }) => {
      this.dispatchEvent(new RunnelSelectEvent(selection));
      this.#show('trace');
    });
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  #show(part: PlannerPart): void {
    const element = this.querySelector<HTMLElement>(`:scope runnel-${part}`);
    element?.scrollIntoView({ block: 'start' });
    element?.focus({ preventScroll: true });
  }

  protected override render(): TemplateResult {
    const isSeason = isReady(this.#plan.view);
    return html`<runnel-planner-bar class="runnel-planner__bar"></runnel-planner-bar>
      ${isSeason ? this.#season() : nothing}
      <div class="runnel-planner__side">
        ${isSeason ? html`<runnel-trace class="runnel-planner__trace" tabindex="-1"></runnel-trace>` : nothing}
        <runnel-notices class="runnel-planner__notices" tabindex="-1"></runnel-notices>
      </div>`;
  }

  #season(): TemplateResult {
    return html`<runnel-planner-nav class="runnel-planner__nav"></runnel-planner-nav>
      <div class="runnel-planner__season">
        <runnel-grid class="runnel-planner__grid" .licenseKey=${this.licenseKey}></runnel-grid>
        <runnel-chart class="runnel-planner__chart"></runnel-chart>
      </div>`;
  }
}
