import { html, LitElement, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { lightRoot } from '../shared/light-root.ts';
import { isInsidePlan } from '../shared/outside-plan.ts';
import { checkToday, daySet } from '../shared/today-here.ts';
import { plannerStyles } from './runnel-planner.styles.ts';

/**
 * @summary The season's grid, chart, notices and the trace of a number, laid out as one tool.
 *
 * Inside a `runnel-plan` it shows that plan. Anywhere else it makes a plan of its own, which `src` or `plan` fills; without
 * either it waits for a file to be opened. It renders in light DOM, as the grid must, and so must everything around it. Words
 * that stand in it, for pages without scripts, go when it starts.
 *
 * @fires {RunnelChangeEvent} runnel-change - From its own plan: another plan stands on the page.
 * @fires {RunnelAutosaveEvent} runnel-autosave - From its own plan: it is saved in another way than before.
 * @fires {RunnelErrorEvent} runnel-error - From its own plan: a plan or an edit was refused.
 *
 * @cssprop [--runnel-planner-grid-height=clamp(14rem, 41vh, 40rem)] - Greatest height of the grid's sheet.
 */
export class RunnelPlanner extends LitElement {
  /** Plan file that the planner's own plan opens. */
  @property() src: string | undefined;

  /** BCP 47 tag for the numbers and dates of the planner's own plan; left out: the page's language. */
  @property() locale: string | undefined;

  /** Whether the planner's own plan can only be looked at. */
  @property({ type: Boolean, attribute: 'read-only' }) readOnly = false;

  /** Name under which this browser saves the planner's own plan between visits; see `runnel-plan`. */
  @property({ attribute: 'storage-key' }) storageKey: string | undefined;

  /** Whether the planner's own plan opens from the page's address, where that carries one. */
  @property({ type: Boolean, attribute: 'from-link' }) fromLink = false;

  /** The grid's licence key; see `runnel-grid`. */
  @property({ attribute: 'license-key' }) licenseKey = '';

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: string | undefined;

  /** A plan for the planner's own `runnel-plan`. */
  @property({ attribute: false }) plan: Plan | undefined;

  @state() private isInsidePlan = false;

  override connectedCallback(): void {
    adoptStyles(this, plannerStyles);
    this.isInsidePlan = isInsidePlan(this);
    super.connectedCallback();
  }

  protected override willUpdate(): void {
    checkToday(this);
  }

  protected override createRenderRoot(): HTMLElement {
    return lightRoot(this);
  }

  protected override render(): TemplateResult {
    const sheet = html`<runnel-planner-sheet .licenseKey=${this.licenseKey} .today=${daySet(this.today)}></runnel-planner-sheet>`;
    if (this.isInsidePlan) return sheet;
    return html`<runnel-plan .src=${this.src} .locale=${this.locale} .readOnly=${this.readOnly} .plan=${this.plan}
      .storageKey=${this.storageKey} .fromLink=${this.fromLink}>${sheet}</runnel-plan>`;
  }
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-planner': RunnelPlanner;
  }
}
