import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { dayNumber, type IsoDate, isIsoDate, isoDate, weekdayOf } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { readerFor } from '../../language/reader.ts';
import { emptyPlan } from '../../plan/empty-plan.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { todayHere } from '../shared/today-here.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { planWords } from '../shared/words/plan-words.ts';
import { climateForm } from './climate-form.ts';
import { createZone } from './create-and-copy.ts';
import type { FormContext } from './form-context.ts';
import { FormController } from './form-controller.ts';
import { planForm } from './plan-form.ts';
import { gardenStyles } from './runnel-garden.styles.ts';
import { siteForm } from './site-form.ts';
import { supplyForm } from './supply-form.ts';
import { zonePart } from './zone-form.ts';

/** Weeks of a plan to begin with: from spring to autumn. */
const SEASON_WEEKS = 30;

/** The element whose content this is: it holds what is unfolded. */
export interface GardenHost extends LitElement {
  readonly today: IsoDate | undefined;
  isOpen(id: string): boolean;
  open(id: string, open: boolean): void;
}

/** What the garden's editor shows: its forms, or how to start where there is no plan. */
export class GardenBody {
  readonly #host: GardenHost;
  readonly #plan: PlanConsumer;
  readonly #form: FormController;

  constructor(host: GardenHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, gardenStyles);
    this.#form = new FormController(host, plan);
  }

  render(): TemplateResult {
    const { view } = this.#plan;
    if (view.plan === undefined || view.season === undefined) return this.#start(view);
    const { plan, season, locale } = view;
    const context: FormContext = {
      ...{ plan, season, form: this.#form, reading: readerFor(locale, plan.units) },
      isOpen: (id) => this.#host.isOpen(id),
      toggle: (id, open) => this.#host.open(id, open),
    };
    return html`<h2 part="title">${words.title}</h2>
      ${this.#section('plan', words.plan, () => planForm(plan, this.#form))}
      ${this.#section('site', words.site, () => siteForm(plan, this.#form))}
      ${this.#section('climate', words.climate, () => climateForm(plan, this.#form), plan.site.climate.source)}
      ${this.#section('supply', words.supply, () => supplyForm(plan, this.#form))}
      <h3>${words.zones}</h3>
      ${plan.zones.length === 0 ? html`<p class="quiet">${words.noZones}</p>` : nothing}
      ${plan.zones.map((zone, index) => zonePart(zone, index, context))}
      ${view.readOnly ? nothing : this.#foot(view)}
      ${cautionsTemplate(plan.supply?.tank !== undefined, context.reading.language)}`;
  }

  #foot({ undoStep, locale, plan }: PlanView): TemplateResult {
    const what = undoStep && describeEdit(undoStep.before, undoStep.edit, readerFor(locale, plan?.units ?? 'us'));
    return html`<div class="actions">
      <button class="add" @click=${this.#addZone}>${words.addZone}</button>
      ${what === undefined ? nothing : html`<button @click=${() => this.#plan.step('undo')}>${words.of(words.undo, what)}</button>`}
    </div>`;
  }

  #section(id: string, title: string, form: () => TemplateResult, says = ''): TemplateResult {
    const toggled = (event: ToggleEvent) => this.#host.open(id, event.newState === 'open');
    return html`<details id=${id} class="section" ?open=${this.#host.isOpen(id)} @toggle=${toggled}>
      <summary>${title} <span class="quiet">${says}</span></summary>
      ${this.#host.isOpen(id) ? html`<div class="part-body">${form()}</div>` : nothing}
    </details>`;
  }

  readonly #addZone = (): void => {
    const { plan } = this.#plan.view;
    if (plan === undefined) return;
    const zone = createZone(plan);
    const { ok } = this.#form.commit('add-zone', '', { type: 'add-zone', zone });
    if (ok) this.#host.open(zone.id, true);
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
    const plan = emptyPlan({ units, firstDay: nextMonday(this.#host.today), weeks: SEASON_WEEKS });
    this.#host.open('site', true);
    this.#host.open('climate', true);
    this.#host.dispatchEvent(new RunnelOpenEvent(new Blob([writePlan(plan)], { type: 'application/json' })));
  }
}

/** The Monday that comes next, or today where it is one. */
function nextMonday(today: IsoDate = todayHere()): IsoDate {
  const day = dayNumber(isIsoDate(today) ? today : todayHere());
  return isoDate(day + ((7 - weekdayOf(day)) % 7));
}
