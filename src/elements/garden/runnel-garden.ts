import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { dayNumber, type IsoDate, isIsoDate, isoDate, weekdayOf } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { emptyPlan } from '../../plan/empty-plan.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { controls } from '../shared/controls.styles.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { PlanConsumer } from '../shared/plan-consumer.ts';
import type { PlanView } from '../shared/plan-context.ts';
import { todayHere } from '../shared/today-here.ts';
import { tokens } from '../shared/tokens.styles.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { planWords } from '../shared/words/plan-words.ts';
import { climateForm } from './climate-form.ts';
import type { Editing } from './editing.ts';
import { FieldKeeper } from './field-keeper.ts';
import { newZone } from './new-parts.ts';
import { planForm } from './plan-form.ts';
import { gardenStyles } from './runnel-garden.styles.ts';
import { siteForm } from './site-form.ts';
import { supplyForm } from './supply-form.ts';
import { zonePart } from './zone-form.ts';

/** Weeks of a plan to begin with: from spring to autumn. */
const SEASON_WEEKS = 30;

/**
 * @summary Edits the garden itself: place, climate, supply, zones, plantings and lines.
 *
 * Stands inside a `runnel-plan`. Without a plan it offers to start one. What is refused stays in its field with the
 * reason; everything else is kept at once and can be undone.
 *
 * @fires {RunnelEditEvent} runnel-edit - Something was changed.
 * @fires {RunnelHistoryEvent} runnel-history - The last change was undone.
 * @fires {RunnelOpenEvent} runnel-open - A new plan was started.
 * @fires {RunnelSelectEvent} runnel-select - The section that was asked for is in sight: no longer selected.
 */
export class RunnelGarden extends LitElement {
  static override readonly styles = [tokens, controls, gardenStyles];

  /** The day that counts as today, year-month-day; the reader's own unless set. */
  @property() today: IsoDate | undefined;

  /** Ids of the sections, zones and plantings that are unfolded. */
  @state() private opened: ReadonlySet<string> = new Set();

  readonly #plan = new PlanConsumer(this);
  readonly #keeper = new FieldKeeper(this, this.#plan);

  readonly #toggle = (id: string, open: boolean): void => {
    if (open === this.opened.has(id)) return;
    const next = new Set(this.opened);
    if (open) next.add(id);
    else next.delete(id);
    this.opened = next;
  };

  protected override willUpdate(): void {
    const { part } = this.#plan.view.selection;
    if (part !== undefined) this.#toggle(part, true);
  }

  protected override updated(): void {
    const { part, ...others } = this.#plan.view.selection;
    if (part === undefined) return;
    const section = this.renderRoot.querySelector(`#${part}`);
    section?.scrollIntoView({ block: 'start' });
    section?.querySelector<HTMLElement>('select, input')?.focus({ preventScroll: true });
    this.#plan.select(others);
  }

  protected override render(): unknown {
    const { view } = this.#plan;
    if (view.plan === undefined || view.season === undefined) return this.#start(view);
    const { plan, season, locale } = view;
    const editing: Editing = {
      ...{ plan, season, keeper: this.#keeper, reading: { units: plan.units, locale } },
      isOpen: (id) => this.opened.has(id),
      toggle: this.#toggle,
    };
    return html`<h2 part="title">${words.title}</h2>
      ${this.#section('plan', words.plan, () => planForm(plan, this.#keeper))}
      ${this.#section('site', words.site, () => siteForm(plan, this.#keeper))}
      ${this.#section('climate', words.climate, () => climateForm(plan, this.#keeper), plan.site.climate.source)}
      ${this.#section('supply', words.supply, () => supplyForm(plan, this.#keeper))}
      <h3>${words.zones}</h3>
      ${plan.zones.length === 0 ? html`<p class="quiet">${words.noZones}</p>` : nothing}
      ${plan.zones.map((zone, place) => zonePart(zone, place, editing))}
      ${view.readOnly ? nothing : this.#foot(view)}
      ${cautionsTemplate(plan.supply?.tank !== undefined)}`;
  }

  #foot({ canUndo, undoLabel = '' }: PlanView): TemplateResult {
    return html`<div class="actions">
      <button class="add" @click=${this.#addZone}>${words.addZone}</button>
      ${canUndo ? html`<button @click=${() => this.#plan.step('undo')}>${words.of(words.undo, undoLabel)}</button>` : nothing}
    </div>`;
  }

  #section(id: string, title: string, form: () => TemplateResult, says = ''): TemplateResult {
    const toggled = (event: ToggleEvent) => this.#toggle(id, event.newState === 'open');
    return html`<details id=${id} class="section" ?open=${this.opened.has(id)} @toggle=${toggled}>
      <summary>${title} <span class="quiet">${says}</span></summary>
      ${this.opened.has(id) ? html`<div class="part-body">${form()}</div>` : nothing}
    </details>`;
  }

  readonly #addZone = (): void => {
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    const zone = newZone(plan);
    this.#keeper.commit('add-zone', '', { type: 'add-zone', zone });
    this.#toggle(zone.id, true);
  };

  #start({ status }: PlanView): TemplateResult {
    if (status === 'loading') return html`<p class="waiting" role="status">${planWords.loading}</p>`;
    return html`<h2 part="title">${words.title}</h2>
      <p class="waiting">${words.startSays}</p>
      <div class="actions">
        <button @click=${() => this.#begin('us')}>${words.start}: ${words.us}</button>
        <button @click=${() => this.#begin('metric')}>${words.start}: ${words.metric}</button>
      </div>`;
  }

  #begin(units: UnitSystem): void {
    const plan = emptyPlan({ units, firstDay: nextMonday(this.today), weeks: SEASON_WEEKS });
    this.opened = new Set(['site', 'climate']);
    this.dispatchEvent(new RunnelOpenEvent(new Blob([writePlan(plan)], { type: 'application/json' })));
  }
}

/** The Monday that comes next, or today where it is one. */
function nextMonday(today: IsoDate = todayHere()): IsoDate {
  const day = dayNumber(isIsoDate(today) ? today : todayHere());
  return isoDate(day + ((7 - weekdayOf(day)) % 7));
}

export type { RunnelEventMap } from '../shared/events/runnel-events.ts';

declare global {
  interface HTMLElementTagNameMap {
    'runnel-garden': RunnelGarden;
  }
}
