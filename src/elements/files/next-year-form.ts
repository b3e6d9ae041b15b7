/** Next year’s plan: each planting asked for, what was learned shown, and the file. */
import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { nextYearWords } from '../../language/en/next-year.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { learnedOf, withLearned, type ZoneLearned } from '../../plan/next-year/learned.ts';
import { nextName, nextSeason, nextYear, type PlantingFate } from '../../plan/next-year/next-year.ts';
import { canBeYear, daysRead } from '../../plan/next-year/season-as-year.ts';
import { checkPlan } from '../../plan/reading/check-plan.ts';
import type { Fault } from '../../plan/reading/fault.ts';
import { writePlan } from '../../plan/reading/write-plan.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { RunnelOpenEvent } from '../shared/events/open-event.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { planFileName, savePlan } from '../shared/save-plan.ts';
import { NewPlantings } from './new-plantings.ts';
import { nextYearStyles } from './next-year.styles.ts';

/** What is known of a plan once it is asked for. */
interface Known {
  readonly plan: Plan;
  readonly learned: readonly ZoneLearned[];
  readonly weather: { readonly read: number; readonly days: number };
}

export class NextYearForm {
  readonly #host: LitElement;
  readonly #close: () => void;
  readonly #fates = new Map<string, PlantingFate>();
  readonly #used = new Set<string>();
  #known: Known | undefined;
  #name: string | undefined;
  #firstDay: string | undefined;
  #weeks: number | undefined;
  readonly #added: NewPlantings;
  #keepsWeather = true;
  #faults: readonly Fault[] = [];
  #saved: string | undefined;

  constructor(host: LitElement, close: () => void) {
    this.#host = host;
    this.#close = close;
    this.#added = new NewPlantings(host, () => this.#changed());
    adoptStyles(host.renderRoot, nextYearStyles);
  }

  #changed(): void {
    this.#saved = undefined;
    this.#faults = [];
    this.#host.requestUpdate();
  }

  #of({ plan, season }: ReadyView): Known {
    if (this.#known?.plan !== plan) {
      this.#known = { plan, learned: learnedOf(plan, season), weather: daysRead(plan) };
    }
    return this.#known;
  }

  render(view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const say = nextYearWords(reader.language);
    return html`<section class="next-year">
      ${this.#seasonFields(view)}
      <h4>${say.plantings}</h4>
      <p class="quiet">${say.lines}</p>
      ${this.#plantingsTemplate(view)}
      <h4>${say.add}</h4>
      <p class="quiet">${say.addSays}</p>
      ${this.#added.render(view)}
      <h4>${say.weather}</h4>
      ${this.#weatherTemplate(view)}
      <h4>${say.learned}</h4>
      ${this.#learnedTemplate(view)}
      <div class="actions">
        <button class="main" name="save-next" @click=${() => this.#save(view)}>${say.save}</button>
        ${view.readOnly ? nothing : html`<button name="open-next" @click=${() => this.#saveAndOpen(view)}>${say.saveAndOpen}</button>`}
        <button @click=${this.#close}>${say.close}</button>
      </div>
      <div role="status">${this.#saved === undefined ? nothing : html`<p>${say.saved(isolated(this.#saved))}</p>`}</div>
      <div role="alert">${faultsTemplate('edit', this.#faults, reader)}</div>
    </section>`;
  }

  #seasonFields(view: ReadyView): TemplateResult {
    const say = nextYearWords(readingOf(view).language);
    const { firstDay, weeks } = nextSeason(view.plan.season);
    const input = (set: (value: string) => void) => (event: Event) => {
      set((event.target as HTMLInputElement).value);
      this.#changed();
    };
    return html`<div class="actions">
      <label>${say.name}
        <input .value=${live(this.#name ?? nextName(view.plan))} maxlength="120" @change=${input((name) => {
          this.#name = name;
        })} /></label>
      <label>${say.firstDay}
        <input type="date" .value=${live(this.#firstDay ?? firstDay)} @change=${input((day) => {
          this.#firstDay = day === '' ? undefined : day;
        })} /></label>
      <label>${say.weeks}
        <input type="number" min="1" max="104" .value=${live(String(this.#weeks ?? weeks))} @change=${input((count) => {
          this.#weeks = Number(count);
        })} /></label>
    </div>`;
  }

  #plantingsTemplate(view: ReadyView): TemplateResult {
    return html`<div class="fates">
      ${view.plan.zones.map(
        (zone) => html`<fieldset>
          <legend>${isolated(zone.name)}</legend>
          ${zone.plantings.map((planting) => this.#fateField(planting, zone.id, view))}
        </fieldset>`,
      )}
    </div>`;
  }

  #fateField(
    { id, name }: { readonly id: string; readonly name: string },
    own: string,
    view: ReadyView,
  ): TemplateResult {
    const say = nextYearWords(readingOf(view).language);
    const fate = this.#fates.get(id);
    const chosen = fate?.kind === 'moves' ? `>${fate.toZone}` : (fate?.kind ?? 'stays');
    const choose = (event: Event) => {
      const { value } = event.target as HTMLSelectElement;
      if (value === 'stays') this.#fates.delete(id);
      else this.#fates.set(id, value === 'ends' ? { kind: 'ends' } : { kind: 'moves', toZone: value.slice(1) });
      this.#changed();
    };
    const option = (value: string, words: string) =>
      html`<option value=${value} ?selected=${value === chosen}>${words}</option>`;
    return html`<label>${isolated(name)}
      <select aria-label=${say.fate(isolated(name))} .value=${live(chosen)} @change=${choose}>
        ${option('stays', say.stays)} ${option('ends', say.ends)}
        ${view.plan.zones.filter((zone) => zone.id !== own).map((zone) => option(`>${zone.id}`, say.moves(isolated(zone.name))))}
      </select></label>`;
  }

  #weatherTemplate(view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const say = nextYearWords(reader.language);
    const { read, days } = this.#of(view).weather;
    if (!canBeYear({ read, days })) return html`<p>${say.weatherNotKept(formatFor(reader), read, days)}</p>`;
    const toggle = (event: Event) => {
      this.#keepsWeather = (event.target as HTMLInputElement).checked;
      this.#changed();
    };
    return html`<p>${say.weatherKept(formatFor(reader), read, days)}</p>
      <label class="check"><input type="checkbox" .checked=${live(this.#keepsWeather)} @change=${toggle} />${say.keepWeather}</label>`;
  }

  #learnedTemplate(view: ReadyView): TemplateResult {
    const reader = readingOf(view);
    const say = nextYearWords(reader.language);
    const format = formatFor(reader);
    const { learned } = this.#of(view);
    if (learned.length === 0) return html`<p>${say.noLog}</p>`;
    const toggle = (id: string) => (event: Event) => {
      if ((event.target as HTMLInputElement).checked) this.#used.add(id);
      else this.#used.delete(id);
      this.#changed();
    };
    return html`<p class="quiet">${say.learnedSays}</p>
      <ul class="learned">${learned.map(
        (each) => html`<li><strong>${isolated(each.name)}</strong>
          ${say.learnedOf(format, each.weeks, each.minutesRun, each.minutesComputed)}
          ${
            each.efficiencyThen === undefined
              ? html`<span class="quiet">${say.nothingToUse}</span>`
              : html`<label class="check"><input type="checkbox" .checked=${live(this.#used.has(each.zone))} @change=${toggle(each.zone)} />${say.use(format, each.efficiencyThen, each.efficiencyNow)}</label>`
          }</li>`,
      )}</ul>`;
  }

  /** Undefined where something of it cannot be, which is then said. */
  #plan(view: ReadyView): Plan | undefined {
    const { plan } = view;
    const say = nextYearWords(readingOf(view).language);
    const usual = nextSeason(plan.season);
    const { learned, weather } = this.#of(view);
    const next = nextYear(plan, {
      name: this.#name,
      season: { firstDay: this.#firstDay ?? usual.firstDay, weeks: this.#weeks ?? usual.weeks },
      plantings: this.#fates,
      added: this.#added.plantings(plan.units),
      source: this.#keepsWeather && canBeYear(weather) ? say.source(plan.season.firstDay.slice(0, 4)) : undefined,
    });
    const checked = checkPlan(
      withLearned(
        next,
        learned.filter(({ zone }) => this.#used.has(zone)),
      ),
    );
    this.#faults = checked.ok ? [] : checked.faults;
    this.#host.requestUpdate();
    return checked.ok ? checked.plan : undefined;
  }

  #save(view: ReadyView): void {
    const next = this.#plan(view);
    if (next === undefined) return;
    savePlan(next);
    this.#saved = planFileName(next);
  }

  #saveAndOpen(view: ReadyView): void {
    const next = this.#plan(view);
    if (next === undefined) return;
    savePlan(view.plan);
    savePlan(next);
    const file = new File([writePlan(next)], planFileName(next), { type: 'application/json' });
    this.#host.dispatchEvent(new RunnelOpenEvent(file));
    this.#close();
  }
}
