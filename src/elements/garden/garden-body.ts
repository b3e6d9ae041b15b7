import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { dayNumber, type IsoDate, isoDate, mondayFrom } from '../../engine/calendar.ts';
import type { UnitSystem } from '../../engine/units.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated, isolatedText } from '../../language/format/isolated.ts';
import { languageFor } from '../../language/languages.ts';
import { readerFor } from '../../language/reader.ts';
import { emptyPlan } from '../../plan/empty-plan.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import type { AssumedOfPlan, PlanZone } from '../../plan/schema/plan-schema.ts';
import type { PlanView } from '../../store/plan-view.ts';
import { lateNoticeLines } from '../notices/late-notice-lines.ts';
import type { NoticeLines } from '../notices/notice-lines.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsOf, cautionsTemplate } from '../shared/cautions-template.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { LatePart } from '../shared/late-part.ts';
import { markupAround } from '../shared/outside-plan.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { waitingTemplate } from '../shared/plan-state.ts';
import { todayOf } from '../shared/today-here.ts';
import { createZone } from './create-and-copy.ts';
import { type FieldFact, factsText } from './field-facts.ts';
import { refusal } from './fields.ts';
import type { FormContext } from './form-context.ts';
import { FormController } from './form-controller.ts';
import { planForm } from './plan-form.ts';
import { gardenStyles } from './runnel-garden.styles.ts';
import { siteForm } from './site-form.ts';
import { supplyForm } from './supply-form.ts';
import { zoneSummary } from './zone-summary.ts';

type ZonePart = typeof import('./zone-form.ts');

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
  readonly #zones: LatePart<ReturnType<ZonePart['zoneForms']>>;
  readonly #notices: NoticeLines;

  constructor(host: GardenHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, gardenStyles);
    this.#form = new FormController(host, plan);
    this.#zones = new LatePart(host, plan, async () => (await import('./zone-form.ts')).zoneForms());
    this.#notices = lateNoticeLines(host, plan);
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
      notices: this.#notices,
    };
    const { title, sections, assumed: someAssumed, folded } = gardenWords(reader.language);
    const { noZones } = gardenZonesWords(reader.language);
    const { format, form } = context;
    const assumed = (...parts: readonly AssumedOfPlan[]): readonly FieldFact[] =>
      parts.some((part) => plan.assumed?.includes(part)) ? [{ value: someAssumed }] : [];
    const span = { value: folded.season(format, plan.season.weeks, dayNumber(plan.season.firstDay)) };
    const place = form.facts.of(() => siteForm(context));
    const sources = (plan.supply?.sources ?? []).map(({ name }) => ({ value: isolated(name) }));
    return html`<h2 part="title">${title}</h2>
      ${this.#section('plan', sections.plan, () => planForm(context), factsText([...assumed('season'), span], format))}
      ${this.#section('site', sections.site, () => place.drawn, factsText([...assumed('soil'), ...place.told], format))}
      ${this.#section('climate', sections.climate, () => html`<runnel-weather .today=${this.#host.today}></runnel-weather>`, isolatedText(plan.site.climate.source))}
      ${this.#section('supply', sections.supply, () => supplyForm(context), factsText([...assumed('source', 'flow', 'window'), ...sources], format))}
      <h3>${sections.zones} <span class="quiet">${assumed('zones', 'days').map(({ value }) => value)}</span></h3>
      ${plan.zones.length === 0 ? html`<p class="quiet">${noZones}</p>` : nothing}
      ${plan.zones.map((zone, index) => this.#zone(zone, index, context))}
      ${view.readOnly ? nothing : this.#foot(view, context)}
      ${cautionsTemplate(cautionsOf(plan.supply?.tank !== undefined), reader.language)}`;
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

  #section(id: string, title: string, form: () => TemplateResult, says: string): TemplateResult {
    const toggled = (event: ToggleEvent) => this.#host.open(id, event.newState === 'open');
    return html`<details id=${id} class="section" ?open=${this.#host.isOpen(id)} @toggle=${toggled}>
      <summary>${title} <span class="quiet">${says}</span></summary>
      ${this.#host.isOpen(id) ? html`<div class="part-body">${form()}</div>` : nothing}
    </details>`;
  }

  /** The forms of zones come once a garden has one. */
  #zone(zone: PlanZone, index: number, context: FormContext): TemplateResult {
    const id = `zone-${zone.id}`;
    const isOpen = this.#host.isOpen(id);
    const toggled = (event: ToggleEvent) => this.#host.open(id, event.newState === 'open');
    const form = this.#zones.part;
    return html`<details class="part" ?open=${isOpen} @toggle=${toggled}>
      <summary><span class="part-name">${isolated(zone.name)}</span> <span class="quiet">${zoneSummary(zone, context)}</span></summary>
      ${isOpen ? (form ? html`<div class="part-body">${form(zone, index, context)}</div>` : this.#zones.waiting) : nothing}
    </details>`;
  }

  #addZone({ plan, reader, format }: FormContext): void {
    const zone = createZone(plan, gardenZonesWords(reader.language).newZone(format, plan.zones.length));
    this.#form.send('add-zone', '', { type: 'add-zone', zone }, () => this.#host.open(`zone-${zone.id}`, true));
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
    const firstDay = isoDate(mondayFrom(dayNumber(todayOf(this.#host.today))));
    const plan = emptyPlan({ units, name, firstDay, weeks: SEASON_WEEKS });
    this.#host.open('site', true);
    this.#host.open('climate', true);
    this.#host.dispatchEvent(new RunnelOpenEvent(new Blob([writePlan(plan)], { type: 'application/json' })));
  }
}
