import { html, nothing, svg, type TemplateResult } from 'lit';
import { startWords } from '../../language/en/start.ts';
import { formatFor } from '../../language/format/format.ts';
import { readerFor } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { FormController } from '../garden/form-controller.ts';
import { gardenStyles } from '../garden/runnel-garden.styles.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { RunnelStartDoneEvent } from '../shared/events/start-done-event.ts';
import { LatePart } from '../shared/late-part.ts';
import { markupAround } from '../shared/outside-plan.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { assumedOfStep } from './assumed-items.ts';
import { assumedList } from './assumed-list.ts';
import { DRAWINGS, drawingStyles } from './drawings.data.ts';
import { keptRowFrom } from './kept-row.ts';
import { hasWeather } from './known-weather.ts';
import { laterStepsStyles } from './later-steps.styles.ts';
import { PlantRow, type RowText } from './plant-row.ts';
import { startStyles } from './runnel-start.styles.ts';
import { beginTemplate } from './start-begin.ts';
import type { MakeStep, StartContext, StartHost, StepTemplate } from './start-context.ts';
import { startKnownStyles } from './start-known.styles.ts';
import type { knownTemplate } from './start-known.ts';
import { START_STEPS, type StartStep, type StepOrSeason, stepBeside } from './start-steps.ts';

/** Fetched when one of them is first shown, or the step before it is. */
const further = () => import('./further-steps.ts');

const STEPS: Readonly<Record<StepOrSeason, () => Promise<MakeStep>>> = {
  where: async () => (await import('./step-where.ts')).makeStep,
  water: async () => (await further()).water,
  timer: async () => (await further()).timer,
  plants: async () => (await further()).plants,
  lines: async () => (await further()).lines,
  season: async () => (await further()).season,
};

/** The steps, with the way between them and what is known beside them. */
export class StartBody {
  readonly #host: StartHost;
  readonly #plan: PlanConsumer;
  readonly #form: FormController;
  readonly #steps: Readonly<Record<StepOrSeason, LatePart<StepTemplate>>>;
  readonly #known: LatePart<typeof knownTemplate>;
  readonly #row = new PlantRow();
  readonly #laying = { planting: undefined as string | undefined, line: 0 };
  readonly #opened = new Set<string>();
  /** Told of once, so that nobody is kept there. */
  #toldTown: string | undefined;
  #documentId: number | undefined;

  constructor(host: StartHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    for (const styles of [gardenStyles, drawingStyles, startStyles, laterStepsStyles, startKnownStyles])
      adoptStyles(host.renderRoot, styles);
    this.#form = new FormController(host, plan);
    this.#known = new LatePart(host, plan, async () => (await import('./start-known.ts')).knownTemplate);
    const later = (step: StepOrSeason) => new LatePart(host, plan, async () => (await STEPS[step]())(host, plan));
    this.#steps = {
      ...{ where: later('where'), water: later('water'), timer: later('timer') },
      ...{ plants: later('plants'), lines: later('lines'), season: later('season') },
    };
  }

  get rowText(): RowText | undefined {
    return this.#row.text;
  }

  render(): TemplateResult | typeof nothing {
    const { view } = this.#plan;
    if (markupAround(view) !== undefined || (view.status === 'loading' && view.plan === undefined))
      return waitingTemplate(view);
    this.#forgetOtherPlan(view.documentId);
    const { plan, season, readOnly } = view;
    if (plan !== undefined) this.#takeKeptRow(plan);
    const { step } = this.#host;
    if (plan === undefined || season === undefined || step === 'begin') {
      return html`<div class="begin">${view.status === 'failed' && plan === undefined ? waitingTemplate(view) : nothing}${beginTemplate({ host: this.#host, plan, reader: readingOf(view), readOnly })}</div>`;
    }
    const reader = readerFor(view.locale, plan.units);
    const context: StartContext = {
      ...{ plan, season, form: this.#form, reader, format: formatFor(reader), host: this.#host, consumer: this.#plan },
      ...{ row: this.#row, laying: this.#laying },
      isOpen: (id) => this.#opened.has(id),
      toggle: (id, open) => this.#toggle(id, open),
      draw: (drawing) =>
        html`<svg class="drawing" viewBox="0 0 160 110" aria-hidden="true">${svg`${DRAWINGS[drawing]}`}</svg>`,
      go: (to) => this.#go(to),
    };
    const { part, waiting } = this.#steps[step];
    const content = part?.(context) ?? waiting;
    if (step === 'season') return html`${this.#progress(context, step)}${content}`;
    const next = stepBeside(step, 1);
    if (part !== undefined && next !== undefined) void this.#steps[next].part;
    return html`${this.#progress(context, step)}${this.#withoutWeather(context, step)}
      <div class="columns"><div class="step">${content}</div><div class="beside">${this.#known.part?.(step, context) ?? this.#known.waiting}${assumedList(context)}</div></div>
      ${this.#foot(context, step)}`;
  }

  /** What was begun belongs to the plan for which it was typed. */
  #forgetOtherPlan(documentId: number | undefined): void {
    if (documentId === this.#documentId) return;
    if (this.#documentId !== undefined) {
      this.#row.clear();
      this.#row.zone = undefined;
      this.#laying.planting = undefined;
      this.#laying.line = 0;
      this.#opened.clear();
      this.#host.leftStep = undefined;
    }
    this.#documentId = documentId;
  }

  /** Whoever has begun another row by then goes on with that. */
  #takeKeptRow({ zones }: Plan): void {
    const { keptRow } = this.#host;
    this.#host.keptRow = undefined;
    if (keptRow === undefined || this.#row.text !== undefined || this.#row.editing !== undefined) return;
    const { row, isWhole } = keptRowFrom(keptRow, zones);
    Object.assign(this.#row, row, { isKeptInPart: !isWhole });
  }

  #toggle(id: string, open: boolean): void {
    if (open === this.#opened.has(id)) return;
    if (open) this.#opened.add(id);
    else this.#opened.delete(id);
    this.#host.requestUpdate();
  }

  #go(step: StepOrSeason): void {
    this.#host.step = step;
    void this.#toTop(step);
  }

  /**
   * A row that was typed is added on the way on; where it cannot be taken, it stays in view with the reason. A town that was typed and not
   * picked says so first.
   */
  #goOn(step: StepOrSeason): void {
    const town = this.#host.renderRoot.querySelector<HTMLInputElement>('[name=place]');
    if (town !== null && town.value.trim() !== '' && town.value !== this.#toldTown) {
      this.#toldTown = town.value;
      town.focus();
      return;
    }
    const typing = this.#host.renderRoot.querySelector<HTMLFormElement>('form.typing');
    const isTyped = this.#row.text !== undefined || this.#row.editing !== undefined;
    if (typing !== null && isTyped) {
      typing.requestSubmit();
      if (this.#row.refused !== undefined || this.#form.refused('rows') !== undefined) return;
    }
    this.#go(step);
  }

  async #toTop(step: StepOrSeason): Promise<void> {
    await this.#host.updateComplete;
    await this.#steps[step].isSettled();
    await this.#host.updateComplete;
    this.#host.renderRoot.querySelector<HTMLElement>('#step-title')?.focus({ preventScroll: true });
    this.#host.scrollIntoView({ block: 'start' });
  }

  #progress(context: StartContext, shown: StepOrSeason): TemplateResult {
    const { reader, format } = context;
    const say = startWords(reader.language);
    const done = shown === 'season' ? START_STEPS.length : START_STEPS.indexOf(shown);
    return html`<nav class="progress" aria-label=${say.progress}>
      <ol>${START_STEPS.map(
        (
          step,
          index,
        ) => html`<li class=${index < done ? 'done' : ''}><button aria-current=${step === shown ? 'step' : nothing} @click=${() => this.#go(step)}>
          <span class="dot" aria-hidden="true">${format.number(index + 1)}</span> <span><b>${say.steps[step]}</b>${index < done ? html`<small>${toldOfStep(step, context)}</small>` : nothing}</span></button></li>`,
      )}</ol>
      <button class="plain leave" name="leave" @click=${() => this.#host.dispatchEvent(new RunnelStartDoneEvent('season'))}>${say.leave}</button>
    </nav>`;
  }

  /** Whoever goes on without weather hears of it at the top of the next step. */
  #withoutWeather({ season, reader }: StartContext, step: StartStep): TemplateResult | typeof nothing {
    if (step === 'where' || hasWeather(season)) return nothing;
    const say = startWords(reader.language).season;
    return html`<p class="caution without-weather" role="status">${say.noWeather}
      <button class="plain" name="to-weather" @click=${() => this.#go('where')}>${say.toWeather}</button></p>`;
  }

  #foot(context: StartContext, step: StartStep): TemplateResult {
    const { reader, format } = context;
    const say = startWords(reader.language);
    const before = stepBeside(step, -1);
    const after = stepBeside(step, 1) ?? 'season';
    return html`<footer class="foot">
      <span class="quiet small">${say.stepOf(format, START_STEPS.indexOf(step) + 1, START_STEPS.length)}</span>
      ${before === undefined ? nothing : html`<button name="back" @click=${() => this.#go(before)}>${say.back}</button>`}
      ${after === 'season' ? nothing : html`<button class="main" name="next" @click=${() => this.#goOn(after)}>${say.next}</button>`}
      ${after === 'season' || hasPlantings(context) ? html`<button class=${after === 'season' ? 'main' : ''} name="show-season" @click=${() => this.#goOn('season')}>${say.showSeason}</button>` : nothing}
      ${after === 'season' ? nothing : html`<span class="skip"><button class="plain" name="skip" @click=${() => this.#go(after)}>${say.skip}</button> <span class="quiet small">${skipText(context, step)}</span></span>`}
    </footer>`;
  }
}

/** What a step that is done has told. */
function toldOfStep(step: StartStep, { plan, season, reader, format }: StartContext): string {
  const { told } = startWords(reader.language);
  const plantings = plan.zones.reduce((sum, zone) => sum + zone.plantings.length, 0);
  switch (step) {
    case 'where':
      return plan.site.place ?? '';
    case 'water': {
      const flowLpm = season.garden.supply.sources[0]?.flowLpm;
      return flowLpm === undefined ? '' : told.flow(format, flowLpm);
    }
    case 'timer':
      return told.zones(format, plan.zones.length);
    case 'plants':
      return told.plantings(format, plantings);
    case 'lines':
      return '';
  }
}

const hasPlantings = ({ plan }: StartContext): boolean => plan.zones.some(({ plantings }) => plantings.length > 0);

/** What comes of leaving a step as it is. */
function skipText(context: StartContext, step: StartStep): string {
  const say = startWords(context.reader.language);
  if (step === 'where' && !hasWeather(context.season)) return say.where.skip;
  if (step === 'plants') return hasPlantings(context) ? '' : say.plants.skip;
  const assumed = assumedOfStep(step, context);
  return assumed.length === 0 ? '' : say.staysAssumed(assumed);
}
