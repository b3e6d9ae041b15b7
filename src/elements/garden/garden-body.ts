import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { dayNumber, type IsoDate, isoDate, weekdayOf } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { formatFor } from '../../language/format/format.ts';
import { languageFor } from '../../language/languages.ts';
import { readerFor } from '../../language/reader.ts';
import { emptyPlan } from '../../plan/empty-plan.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { markupAround } from '../shared/outside-plan.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { waitingTemplate } from '../shared/plan-state.ts';
import { todayOf } from '../shared/today-here.ts';
import { climateForm } from './climate-form.ts';
import { createZone } from './create-and-copy.ts';
import { refusal } from './fields.ts';
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

  render(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    if (view.plan === undefined || view.season === undefined) return this.#start(view);
    const { plan, season, locale } = view;
    const reader = readerFor(locale, plan.units);
    const context: FormContext = {
      ...{ plan, season, form: this.#form, reader, format: formatFor(reader) },
      isOpen: (id) => this.#host.isOpen(id),
      toggle: (id, open) => this.#host.open(id, open),
    };
    const { title, sections } = gardenWords(reader.language);
    const { noZones } = gardenZonesWords(reader.language);
    return html`<h2 part="title">${title}</h2>
      ${this.#section('plan', sections.plan, () => planForm(context))}
      ${this.#section('site', sections.site, () => siteForm(context))}
      ${this.#section('climate', sections.climate, () => climateForm(context), plan.site.climate.source)}
      ${this.#section('supply', sections.supply, () => supplyForm(context))}
      <h3>${sections.zones}</h3>
      ${plan.zones.length === 0 ? html`<p class="quiet">${noZones}</p>` : nothing}
      ${plan.zones.map((zone, index) => zonePart(zone, index, context))}
      ${view.readOnly ? nothing : this.#foot(view, context)}
      ${cautionsTemplate(plan.supply?.tank !== undefined, reader.language)}`;
  }

  #foot({ undoStep }: PlanView, context: FormContext): TemplateResult {
    const { reader } = context;
    const { actions, actionOn } = gardenWords(reader.language);
    const { addZone } = gardenZonesWords(reader.language);
    const what = undoStep && describeEdit(undoStep.before, undoStep.edit, reader);
    return html`<div class="actions">
      <button class="add" name="add-zone" @click=${() => this.#addZone(context)}>${addZone}</button>
      ${what === undefined ? nothing : html`<button name="undo" @click=${() => this.#plan.step('undo')}>${actionOn(actions.undo, what)}</button>`}
      ${refusal('add-zone', context)}
    </div>`;
  }

  #section(id: string, title: string, form: () => TemplateResult, says = ''): TemplateResult {
    const toggled = (event: ToggleEvent) => this.#host.open(id, event.newState === 'open');
    return html`<details id=${id} class="section" ?open=${this.#host.isOpen(id)} @toggle=${toggled}>
      <summary>${title} <span class="quiet">${says}</span></summary>
      ${this.#host.isOpen(id) ? html`<div class="part-body">${form()}</div>` : nothing}
    </details>`;
  }

  #addZone({ plan, reader, format }: FormContext): void {
    const zone = createZone(plan, gardenZonesWords(reader.language).newZone(format, plan.zones.length));
    const { ok } = this.#form.send('add-zone', '', { type: 'add-zone', zone });
    if (ok) this.#host.open(`zone-${zone.id}`, true);
  }

  #start(view: PlanView): TemplateResult | typeof nothing {
    const { status, locale } = view;
    const language = languageFor(locale);
    if (status === 'loading' || markupAround(view) !== undefined) return waitingTemplate(view);
    const { title, startSays, start, unitSystems } = gardenWords(language);
    const button = (units: UnitSystem) =>
      html`<button name=${`start-${units}`} @click=${() => this.#begin(units)}>${start(unitSystems[units])}</button>`;
    return html`<h2 part="title">${title}</h2>
      <p class="waiting">${startSays}</p>
      <div class="actions">${button('us')} ${button('metric')}</div>`;
  }

  #begin(units: UnitSystem): void {
    const { newPlan: name } = gardenWords(languageFor(this.#plan.view.locale));
    const plan = emptyPlan({ units, name, firstDay: nextMonday(this.#host.today), weeks: SEASON_WEEKS });
    this.#host.open('site', true);
    this.#host.open('climate', true);
    this.#host.dispatchEvent(new RunnelOpenEvent(new Blob([writePlan(plan)], { type: 'application/json' })));
  }
}

/** The Monday that comes next, or today where it is one. */
function nextMonday(today: IsoDate | undefined): IsoDate {
  const day = dayNumber(todayOf(today));
  return isoDate(day + ((7 - weekdayOf(day)) % 7));
}
