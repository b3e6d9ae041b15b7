import { html, type LitElement, nothing, type TemplateResult } from 'lit';
import { type DayNumber, dayNumber, type IsoDate, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../engine/season/zone-week.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { weekRunEdit } from '../../sheet/entry/run-edits.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { todayHere } from '../shared/today-here.ts';
import { weekStyles } from './runnel-week.styles.ts';
import { WeekEntries } from './week-entries.ts';
import { weekForecast } from './week-forecast.ts';
import { weekLog } from './week-log.ts';
import { weekRain } from './week-rain.ts';
import { weekZone } from './week-zone.ts';

/** The element whose content this is. */
export interface WeekHost extends LitElement {
  readonly today: IsoDate | undefined;
}

/** The week that is shown, the steps to others, and what to do in each zone. */
export class WeekBody {
  readonly #host: WeekHost;
  readonly #plan: PlanConsumer;
  readonly #entries: WeekEntries;

  constructor(host: WeekHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    this.#entries = new WeekEntries(plan, () => host.requestUpdate());
    adoptStyles(host.renderRoot, weekStyles);
  }

  render(): unknown {
    const { view } = this.#plan;
    this.#entries.follow();
    return isReady(view) ? this.#list(view, this.#weekShown(view)) : waitingTemplate(view);
  }

  #weekShown({ season, selection }: ReadyView): number {
    return selection.week ?? weekOf(season, this.#host.today) ?? 0;
  }

  #list(view: ReadyView, week: number): TemplateResult {
    const { season } = view;
    const reader = readingOf(view);
    const say = weekWords(reader.language);
    const format = formatFor(reader);
    const { firstDay, weeks } = season.garden.span;
    const start = firstDay + 7 * week;
    const total = season.totals.figures[SUPPLY_FIELDS.litres * weeks + week] as number;
    const minutes = season.zones.reduce((sum, zone) => sum + zoneFigure(zone, 'minutes', week), 0);
    const hasClimate = !weeksWithoutClimate(season).includes(week);
    return html`<div role="alert">${faultsTemplate('edit', this.#entries.faults, reader)}</div>
      <header>
        <p class="quiet small">${say.heading(format, week + 1, weeks)}</p>
        <h2 part="title">${format.days(start, start + 6, 'long')}</h2>
        <p>${say.total(format, minutes, total)}</p>
        ${this.#steps(view, week)}
      </header>
      ${this.#weather(view, week)} ${this.#closing(view, week)}
      <div class="zones">${season.zones.map((zone) => this.#zone(view, zone, week, hasClimate))}</div>
      ${cautionsTemplate(season.garden.supply.tank !== undefined, reader.language)}`;
  }

  #steps(view: ReadyView, week: number): TemplateResult {
    const { weeks } = view.season.garden.span;
    const say = weekWords(readingOf(view).language);
    const now = weekOf(view.season, this.#host.today);
    const go = (to: number) => () => this.#plan.select({ ...view.selection, week: to });
    return html`<div class="steps" role="group" aria-label=${say.steps}>
      <button ?disabled=${week === 0} @click=${go(week - 1)}>${say.previous}</button>
      <button ?disabled=${now === undefined || now === week} @click=${go(now ?? week)}>${say.thisWeek}</button>
      <button ?disabled=${week === weeks - 1} @click=${go(week + 1)}>${say.next}</button>
    </div>`;
  }

  /** The gauge, and what is forecast; nothing where the plan can only be looked at. */
  #weather(view: ReadyView, week: number): TemplateResult | typeof nothing {
    if (view.readOnly) return nothing;
    const firstDay = view.season.garden.span.firstDay + 7 * week;
    const today = dayOf(this.#host.today);
    const entries = this.#entries;
    return html`<div class="weather">
      ${weekRain({ view, week, firstDay, today, entries })}
      ${weekForecast({ view, firstDay, today, entries })}
    </div>`;
  }

  /** Logs all zones as they stand; nothing where that is done, or in a week that has not begun. */
  #closing(view: ReadyView, week: number): TemplateResult | typeof nothing {
    const { season, readOnly } = view;
    const firstDay = season.garden.span.firstDay + 7 * week;
    if (readOnly || firstDay > dayOf(this.#host.today) || weeksWithoutClimate(season).includes(week)) return nothing;
    const open = season.zones.filter((zone) => zoneOrigin(zone, week) !== 'run' && isOpen(zone, week));
    if (open.length === 0) return nothing;
    const edit = () => this.#plan.edit(logged(open.map((zone) => weekRunEdit({ zone, week, firstDay }))));
    return html`<p class="closing"><button @click=${edit}>${weekWords(readingOf(view).language).logAll}</button></p>`;
  }

  #zone(view: ReadyView, zone: ZoneSeason, week: number, hasClimate: boolean): TemplateResult {
    const { season, readOnly } = view;
    const firstDay = season.garden.span.firstDay + 7 * week;
    const at = { zone, week, firstDay };
    const check = (done: boolean) =>
      this.#plan.edit(
        done
          ? logged([weekRunEdit(at)])
          : { type: 'set-minutes-run', zone: zone.zone.id, week: isoDate(firstDay), minutes: undefined },
      );
    return weekZone({
      season: zone,
      week,
      firstDay,
      reader: readingOf(view),
      note: zone.zone.choices.get(week)?.note,
      hasClimate,
      check: readOnly ? undefined : check,
      isPast: firstDay + 7 <= dayOf(this.#host.today),
      log: readOnly ? undefined : weekLog({ ...at, view, entries: this.#entries }),
    });
  }
}

/** Something grows, and the week is not closed by hand. */
function isOpen(zone: ZoneSeason, week: number): boolean {
  return zoneState(zone, week) !== 'off' && zoneOrigin(zone, week) !== 'closed';
}

/** What several zones ran, as one step. */
function logged(edits: readonly Edit[]): Edit {
  return { type: 'together', action: 'log-weeks', edits };
}

/** A day that is none is today. */
function dayOf(day: IsoDate = todayHere()): DayNumber {
  return dayNumber(isIsoDate(day) ? day : todayHere());
}

/** The week of the season that holds today; nothing outside the season. */
function weekOf({ garden }: Season, today: IsoDate = todayHere()): number | undefined {
  if (!isIsoDate(today)) return undefined;
  const week = Math.floor((dayNumber(today) - garden.span.firstDay) / 7);
  return week >= 0 && week < garden.span.weeks ? week : undefined;
}
