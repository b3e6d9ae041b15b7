import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import type { IsoDate } from '../../engine/calendar.ts';
import { weatherServiceOf } from '../../exchange/weather-service/weather-service.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { planElementWords } from '../../language/en/plan-element.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolatedText } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import type { PlanView } from '../../store/plan-view.ts';
import type { FormContext } from '../garden/form-context.ts';
import { FormController } from '../garden/form-controller.ts';
import { gardenStyles } from '../garden/runnel-garden.styles.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { DropField } from '../shared/drop-field.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { fileButton } from '../shared/file-button.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { SeasonYears } from '../shared/season-years.ts';
import { todayOf } from '../shared/today-here.ts';
import { climateForm } from './climate-form.ts';
import { climatePicture, hasClimate } from './climate-picture.ts';
import type { filePreview } from './file-preview.ts';
import { latePublishedTable, type PublishedTableField } from './late-published-table.ts';
import { PlaceFinder } from './place-finder.ts';
import { placeForm } from './place-form.ts';
import { readWeatherText } from './read-weather-text.ts';
import { readingsSection } from './readings-section.ts';
import { weatherStyles } from './runnel-weather.styles.ts';
import { serviceSection } from './service-section.ts';
import { failureWords, sessionStatus } from './session-words.ts';
import type { UnusualWeeks } from './unusual-weeks.ts';
import { WeatherSession } from './weather-session.ts';
import { yearsSection } from './years-section.ts';

export interface WeatherHost extends LitElement {
  readonly today: IsoDate | undefined;
  readonly isBesidePlace: boolean;
}

const WEATHER_FILES = '.csv,.txt,.dly,.json,text/csv,text/plain,application/json';

/** What the weather's element shows. */
export class WeatherBody {
  readonly #host: WeatherHost;
  readonly #plan: PlanConsumer;
  readonly #form: FormController;
  readonly #finder: PlaceFinder;
  readonly #session: WeatherSession;
  readonly #drop: DropField;
  readonly #years: SeasonYears;
  readonly #table: PublishedTableField;
  #readingsOpen = false;
  /** Comes after the rest. */
  #unusual: UnusualWeeks | undefined;
  #filePreview: typeof filePreview | undefined;

  constructor(host: WeatherHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, gardenStyles);
    adoptStyles(host.renderRoot, weatherStyles);
    this.#form = new FormController(host, plan);
    this.#finder = new PlaceFinder(host);
    this.#session = new WeatherSession(host, plan);
    this.#drop = new DropField(host, (file) => this.#open(file));
    this.#years = new SeasonYears(host, plan);
    this.#table = latePublishedTable(host, plan);
    void this.#fetchRest();
  }

  async #fetchRest(): Promise<void> {
    const part = await fetchPart(() => import('./later-sections.ts'));
    this.#filePreview = part?.filePreview;
    this.#unusual ??= part && new part.UnusualWeeks(this.#host, this.#plan);
    this.#host.requestUpdate();
  }

  render(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    const { plan, season } = view;
    if (plan === undefined || season === undefined) return waitingTemplate(view);
    const reader = readingOf(view);
    const context: FormContext = {
      ...{ plan, season, form: this.#form, reader, format: formatFor(reader) },
      isOpen: () => true,
      toggle: () => {},
    };
    const say = weatherWords(reader.language);
    const today = todayOf(this.#host.today);
    if (this.#host.isBesidePlace) {
      const files = view.readOnly ? nothing : this.#files(view, plan, reader);
      return html`${files}${climateForm(context)}`;
    }
    return html`<h2 part="title">${say.title}</h2>
      ${placeForm(context, this.#finder)}
      ${view.readOnly ? nothing : this.#sources(view, plan, reader)}
      <h3>${say.climate.title}</h3>
      ${climatePicture(context)}
      ${hasClimate(season) ? html`<p class="quiet">${plan.site.climate.source === '' ? say.climate.noSource : say.climate.from(isolatedText(plan.site.climate.source))}</p>` : nothing}
      <details class="more" ?open=${weeksWithoutClimate(season).length > 0}>
        <summary>${say.climate.table}</summary>
        <div class="part-body">${climateForm(context, this.#table)}</div>
      </details>
      ${readingsSection(context, today, {
        isOpen: this.#readingsOpen,
        toggle: (isOpen) => {
          this.#readingsOpen = isOpen;
          this.#host.requestUpdate();
        },
      })}
      ${yearsSection(context, this.#years)}
      ${this.#unusual?.render(context, today, () => this.#undo()) ?? nothing}`;
  }

  #sources(view: PlanView, plan: Plan, reader: Reader): TemplateResult {
    const today = todayOf(this.#host.today);
    const service = weatherServiceOf(view.weatherService, document.baseURI);
    const session = this.#session;
    const asks =
      service === undefined
        ? nothing
        : html`${serviceSection({ service, plan, reader, today, session })}${this.#preview('service', plan, reader)}${this.#progress('service', view, reader)}`;
    return html`${asks}${this.#files(view, plan, reader)}`;
  }

  #preview(origin: 'service' | 'file', plan: Plan, reader: Reader): TemplateResult | typeof nothing {
    const { state, origin: asked } = this.#session;
    if (state.step !== 'file' || asked !== origin) return nothing;
    if (this.#filePreview === undefined) {
      const { partFailed } = planElementWords(reader.language);
      return html`<p class="refused" role="alert">${partFailed}</p>`;
    }
    return this.#filePreview(state, { plan, reader, today: todayOf(this.#host.today) }, this.#session);
  }

  #files(view: PlanView, plan: Plan, reader: Reader): TemplateResult {
    const say = weatherWords(reader.language);
    return html`<h3>${say.file.title}</h3>
      <p class="quiet">${say.file.says}</p>
      ${this.#drop.render(html`
        ${fileButton({ words: say.file.choose, accept: WEATHER_FILES, onFile: (file) => this.#open(file) })}
        <span class="quiet">${say.file.drop}</span>
      `)}
      ${this.#preview('file', plan, reader)}
      ${this.#progress('file', view, reader)}`;
  }

  /** How far what was asked for has come, beside what asked for it. */
  #progress(origin: 'service' | 'file', view: PlanView, reader: Reader): TemplateResult {
    const { state } = this.#session;
    const isHere = this.#session.origin === origin;
    return html`<div role="status" class="status">${isHere ? this.#status(view, reader) : nothing}</div>
      <div role="alert">${
        isHere && state.step === 'failed' ? html`<p class="refused">${failureWords(state.why, reader)}</p>` : nothing
      }</div>`;
  }

  /** What was taken can be taken back where it is said, as long as it is the last change. */
  #status(view: PlanView, reader: Reader): TemplateResult | typeof nothing {
    const { state } = this.#session;
    const says = sessionStatus(state, reader);
    if (says === '') return nothing;
    if (state.step === 'busy') return html`<p>${says} <progress></progress></p>`;
    const isLast = 'after' in state && state.after === view.plan;
    const undo = html`<button class="plain" name="undo" @click=${() => this.#undo()}>${weatherWords(reader.language).undo}</button>`;
    return html`<p>${says} ${isLast ? undo : nothing}</p>`;
  }

  #open(file: File): void {
    if (this.#filePreview === undefined) void this.#fetchRest();
    void this.#session.openFile(file.name, readWeatherText(file));
  }

  #undo(): void {
    this.#plan.step('undo');
    this.#session.close();
  }
}
