import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { plannerWords } from '../../language/en/planner.ts';
import { RunnelSelectEvent } from '../shared/events/select-event.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, readingOf } from '../shared/plan-state.ts';
import { type PlannerPart, ShowPartEvent } from './show-part-event.ts';

/**
 * The planner's parts on one sheet, in light DOM since the grid works nowhere else. Without a season only the garden
 * stands there, to be filled in, and what was wrong with a file. Internal to `runnel-planner`.
 */
export class PlannerSheet extends LitElement {
  readonly #plan = new PlanConsumer(this);

  @property({ attribute: false }) licenseKey = '';

  @property({ attribute: false }) today: string | undefined;

  /** What would help a mixed zone is searched for only while somebody looks. */
  @state() private isMixOpen = false;

  constructor() {
    super();
    this.addEventListener(ShowPartEvent.type, ({ part }) => void this.#show(part));
    this.addEventListener(RunnelWhyEvent.type, ({ selection }) => {
      this.dispatchEvent(new RunnelSelectEvent(selection));
      void this.#show('trace');
    });
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  async #show(part: PlannerPart): Promise<void> {
    if (part === 'mix') this.isMixOpen = true;
    await this.updateComplete;
    const element = this.querySelector<HTMLElement>(`:scope runnel-${part}`);
    element?.scrollIntoView({ block: 'start' });
    if (element) focusOnce(element);
  }

  protected override render(): TemplateResult {
    const { view } = this.#plan;
    const isSeason = isReady(view);
    return html`<runnel-planner-bar class="runnel-planner__bar"></runnel-planner-bar>
      ${isSeason ? this.#season() : nothing}
      <div class="runnel-planner__right"><div class="runnel-planner__side">
        ${isSeason ? html`<runnel-trace class="runnel-planner__trace"></runnel-trace>` : nothing}
        ${
          isSeason || view.faults.length > 0
            ? html`<runnel-notices class="runnel-planner__notices"></runnel-notices>`
            : nothing
        }
      </div></div>
      <div class="runnel-planner__below">
        ${isSeason ? this.#below() : nothing}
        <runnel-garden class="runnel-planner__garden" .today=${this.today}></runnel-garden>
        ${isSeason ? html`<runnel-files class="runnel-planner__files"></runnel-files>` : nothing}
      </div>`;
  }

  #below(): TemplateResult {
    const toggled = (event: ToggleEvent) => {
      this.isMixOpen = event.newState === 'open';
    };
    return html`<runnel-week class="runnel-planner__week" .today=${this.today}></runnel-week>
      <details class="runnel-planner__more" ?open=${this.isMixOpen} @toggle=${toggled}>
        <summary>${plannerWords(readingOf(this.#plan.view).language).mix}</summary>
        ${this.isMixOpen ? html`<runnel-mix class="runnel-planner__mix"></runnel-mix>` : nothing}
      </details>`;
  }

  #season(): TemplateResult {
    return html`<runnel-planner-nav class="runnel-planner__nav"></runnel-planner-nav>
      <div class="runnel-planner__season">
        <runnel-grid class="runnel-planner__grid" .licenseKey=${this.licenseKey} .today=${this.today}></runnel-grid>
        <runnel-chart class="runnel-planner__chart"></runnel-chart>
      </div>`;
  }
}

/** Not for longer: a host that Tab passes by takes all that stands in it along. */
function focusOnce(element: HTMLElement): void {
  element.tabIndex = -1;
  element.focus({ preventScroll: true });
  element.addEventListener('blur', () => element.removeAttribute('tabindex'), { once: true });
}
