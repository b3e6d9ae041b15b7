import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { type IsoDate, isoDate } from '../../engine/calendar.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { weekWords } from '../../language/en/week.ts';
import { weekCloseWords } from '../../language/en/week-close.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { CautionsOnce } from '../shared/cautions-once.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { RunnelWhyEvent } from '../shared/events/why-event.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import { fetchPart } from '../shared/fetch-part.ts';
import { onceAnswered, type PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { closeWeekStyles } from './close-week.styles.ts';
import { closeWeek } from './close-week.ts';
import type { ClosingState } from './closing.ts';
import { rainTubesStyles } from './rain-tubes.styles.ts';
import { depthText, leaveField, onLifted, rainTubes, readRainMm } from './rain-tubes.ts';
import { weekStyles } from './runnel-week.styles.ts';
import { todayRuns } from './today-runs.ts';
import { dayEdit, runAsItStands } from './week-edits.ts';
import { type SendEdit, WeekEntries } from './week-entries.ts';
import { forecastSentence, weekForecast } from './week-forecast.ts';
import { DAYS, dayOf, hasLog, type WeekContext, weekHolding } from './week-model.ts';
import { isToBeClosed, weekState } from './week-state.ts';
import { weekTableStyles } from './week-table.styles.ts';
import { tableKey, weekLitres, weekTable } from './week-table.ts';

const TODAYS_TUBE = '.now>.glass>input';

/** The element whose content this is. */
export interface WeekHost extends LitElement {
  readonly today: IsoDate | undefined;
  readonly answersWhy: boolean;
}

/** This week: what to run today, the rain, the week day by day; and closing it. */
export class WeekBody {
  readonly #host: WeekHost;
  readonly #plan: PlanConsumer;
  readonly #entries: WeekEntries;
  readonly #cautions: CautionsOnce;
  /** Another week than that of today, where one was stepped to. */
  #shown: number | undefined;
  #closing: ClosingState | undefined;
  /** The plan as a week was closed: undo stands beside it. */
  #closedPlan: Plan | undefined;
  #isRainOpen = false;
  #isTotal = false;
  #documentId: number | undefined;

  constructor(host: WeekHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    this.#cautions = new CautionsOnce(host);
    this.#entries = new WeekEntries(plan, () => host.requestUpdate());
    for (const styles of [weekStyles, weekTableStyles, rainTubesStyles, closeWeekStyles])
      adoptStyles(host.renderRoot, styles);
  }

  render(): unknown {
    const { view } = this.#plan;
    this.#entries.follow();
    if (!isReady(view)) return waitingTemplate(view);
    if (view.documentId !== this.#documentId) this.#startOver(view);
    const faults = html`<div role="alert">${faultsTemplate('edit', this.#entries.faults, readingOf(view))}</div>`;
    const closing = this.#closing;
    if (closing !== undefined && !view.readOnly && closing.week < view.season.garden.span.weeks) {
      return html`${faults}${this.#closeScreen(view, closing)}`;
    }
    return html`${faults}${this.#week(this.#context(view, this.#weekShown(view)))}`;
  }

  #startOver({ documentId }: ReadyView): void {
    this.#documentId = documentId;
    this.#shown = undefined;
    this.#closing = undefined;
    this.#closedPlan = undefined;
  }

  #context(view: ReadyView, week: number): WeekContext {
    return { view, week, firstDay: view.season.garden.span.firstDay + 7 * week, today: dayOf(this.#host.today) };
  }

  #weekShown({ season }: ReadyView): number {
    const { firstDay, weeks } = season.garden.span;
    const today = dayOf(this.#host.today);
    const now = weekHolding(season, today) ?? (today < firstDay ? 0 : weeks - 1);
    return Math.min(this.#shown ?? now, weeks - 1);
  }

  readonly #send: SendEdit = (edit, taken) =>
    onceAnswered(this.#plan.edit(edit), ({ ok }) => {
      if (ok) taken?.();
    });

  readonly #update = (): void => this.#host.requestUpdate();
  #closeScreen(view: ReadyView, state: ClosingState): TemplateResult {
    const leave = (): void => {
      this.#closing = undefined;
      this.#update();
      this.#focus('h2');
    };
    return closeWeek({
      context: this.#context(view, state.week),
      state,
      entries: this.#entries,
      send: this.#send,
      change: (change) => {
        this.#closing = { ...state, ...change };
        this.#update();
      },
      back: leave,
      closed: () => {
        this.#closedPlan = this.#plan.view.plan;
        leave();
      },
    });
  }

  #week(context: WeekContext): TemplateResult {
    const { view, week, firstDay, today } = context;
    const { season, plan } = view;
    const { language } = readingOf(view);
    const say = weekWords(language);
    const format = formatFor(readingOf(view));
    const { weeks } = season.garden.span;
    const isNow = weekHolding(season, today) === week;
    const hasClimate = !weeksWithoutClimate(season).includes(week);
    const title = isNow ? format.day(today, 'weekdayAndDay') : format.days(firstDay, firstDay + 6, 'long');
    return html`<header>
        <p class="quiet small">${say.place(format, isolated(plan.name), week + 1, weeks)}</p>
        <h2 part="title" tabindex="-1">${title}</h2>
        ${isNow ? nothing : this.#elsewhere(context)}
      </header>
      ${this.#justClosed(view)}
      <div class="sides">
        <div>
          ${isNow ? todayRuns({ ...context, ask: this.#ask(context.week) }, this.#send) : nothing} ${this.#rain(context)}
        </div>
        <div>
          ${this.#lastWeek(context)}
          <section class="week">
            <div class="head"><h3>${say.table.title}</h3><p class="quiet small">${say.table.sum(format, firstDay, weekLitres(context))}</p></div>
            ${weekState(context)}
            ${weekTable({
              context,
              hasClimate,
              isFull: true,
              canPress: (_, day) => firstDay + day.offset <= today && (day.minutes > 0 || day.isLogged),
              press: view.readOnly
                ? undefined
                : (zone, day) =>
                    this.#send(
                      dayEdit(
                        context,
                        zone,
                        day.offset,
                        day.isLogged ? undefined : runAsItStands(context, zone, day.offset),
                      ),
                    ),
            })}
            ${tableKey(context)}
          </section>
        </div>
        <div class="beside">
          ${this.#actions(context)} ${cautionsTemplate(this.#cautions.of(season.garden.supply.tank !== undefined), language)}
        </div>
      </div>`;
  }

  #elsewhere({ view, today }: WeekContext): TemplateResult {
    const { span } = view.season.garden;
    const say = weekWords(readingOf(view).language);
    const format = formatFor(readingOf(view));
    if (today < span.firstDay) return html`<p>${say.before(format, span.firstDay)}</p>`;
    const last = span.firstDay + 7 * span.weeks - 1;
    if (today > last) return html`<p>${say.after(format, last)}</p>`;
    return html`<p>${say.another} <button class="plain" name="this-week" @click=${() => this.#show(undefined)}>${say.thisWeek}</button></p>`;
  }

  #show(week: number | undefined): void {
    this.#shown = week;
    this.#isRainOpen = false;
    this.#update();
    this.#focus('h2');
  }

  #focus(selector: string): void {
    void this.#host.updateComplete.then(() => this.#host.renderRoot.querySelector<HTMLElement>(selector)?.focus());
  }

  #justClosed(view: ReadyView): TemplateResult | typeof nothing {
    if (this.#closedPlan === undefined || this.#closedPlan !== view.plan) return nothing;
    const say = weekCloseWords(readingOf(view).language);
    return html`<p class="told" role="status">${say.done}
      <button class="plain" name="undo" @click=${() => this.#plan.step('undo')}>${say.undo}</button></p>`;
  }

  /** The week before, while it is not closed: it comes first. */
  #lastWeek({ view, week, today, firstDay }: WeekContext): TemplateResult | typeof nothing {
    const isNow = weekHolding(view.season, today) === week;
    if (view.readOnly || !isNow || week === 0 || !isToBeClosed(this.#context(view, week - 1))) return nothing;
    if (!hasLog(view) && readRainMm(this.#context(view, week - 1)) === undefined) return nothing;
    const reader = readingOf(view);
    const words = weekWords(reader.language).closeLast(formatFor(reader), firstDay - 7);
    return html`<p class="told"><button name="close-last" @click=${() => this.#close(view, week - 1)}>${words}</button></p>`;
  }

  #ask(week: number): ((zone: string) => void) | undefined {
    if (!this.#host.answersWhy) return undefined;
    return (zone) => this.#host.dispatchEvent(new RunnelWhyEvent({ zone, week }));
  }

  #close(view: ReadyView, week: number): void {
    this.#closing = { week, before: view.season, isTotal: this.#isTotal };
    this.#isRainOpen = false;
    this.#update();
    this.#focus('h2');
  }

  #rain(context: WeekContext): TemplateResult | typeof nothing {
    const { view, firstDay, today } = context;
    if (firstDay > today) return view.readOnly ? nothing : this.#forecast(context);
    const say = weekWords(readingOf(view).language).rain;
    const mm = readRainMm(context);
    const last = Math.min(today, firstDay + 6);
    const days = DAYS.map((back) => last - 6 + back).filter((day) => day >= view.season.garden.span.firstDay);
    const toggle = (event: Event): void => {
      leaveField(event);
      this.#isRainOpen = !this.#isRainOpen;
      this.#update();
      if (this.#isRainOpen) this.#focus(TODAYS_TUBE);
    };
    return html`<section class="weather">
      <div class="head one-line">
        <h3>${say.title} <span class="rain">${mm === undefined ? nothing : depthText(mm, view)}</span>
          ${mm === undefined ? html`<span class="quiet small">${say.none}</span>` : nothing}</h3>
        ${
          view.readOnly
            ? nothing
            : html`<button name="enter-rain" aria-expanded=${this.#isRainOpen ? 'true' : 'false'} @touchend=${onLifted(toggle)} @click=${toggle}>${this.#isRainOpen ? say.done : say.enter}</button>`
        }
      </div>
      ${
        this.#isRainOpen && !view.readOnly
          ? rainTubes({
              context,
              days,
              entries: this.#entries,
              isTotal: this.#isTotal,
              setTotal: (isTotal) => {
                this.#isTotal = isTotal;
                this.#update();
                this.#focus(isTotal ? '.total>.entry>input' : TODAYS_TUBE);
              },
            })
          : nothing
      }
      ${this.#forecast(context)}
    </section>`;
  }

  #forecast(context: WeekContext): TemplateResult {
    const { view, firstDay, today } = context;
    const entry = { view, firstDay, today, entries: this.#entries };
    return html`${forecastSentence(entry)} ${view.readOnly ? nothing : weekForecast(entry)}`;
  }

  async #print(view: ReadyView, week: number): Promise<void> {
    const part = await fetchPart(() => import('../shared/paper/paper-dialog.ts'));
    const today = isoDate(dayOf(this.#host.today));
    await part?.openPaper(this.#host.renderRoot as ShadowRoot, view, { kind: 'shed', week, today });
  }

  #actions(context: WeekContext): TemplateResult {
    const { view, week, firstDay, today } = context;
    const say = weekWords(readingOf(view).language);
    const format = formatFor(readingOf(view));
    const { weeks } = view.season.garden.span;
    const canClose = !view.readOnly && isToBeClosed(context);
    return html`<div class="actions">
      ${
        canClose
          ? html`<button class=${today >= firstDay + 6 ? 'wide primary' : 'wide'} name="close-week" @click=${() => this.#close(view, week)}>${say.close}
              <span class="quiet small">${today < firstDay + 6 ? say.closeFrom(format, firstDay + 6) : nothing}</span></button>`
          : nothing
      }
      <button class="wide" name="print" @click=${() => this.#print(view, week)}>${say.print} <span class="quiet small">${say.printSays}</span></button>
      <div class="steps" role="group" aria-label=${say.steps}>
        <button name="previous" ?disabled=${week === 0} @click=${() => this.#show(week - 1)}>${say.previous}</button>
        <button name="next" ?disabled=${week === weeks - 1} @click=${() => this.#show(week + 1)}>${say.next}</button>
      </div>
    </div>`;
  }
}
