import { html, type LitElement, type TemplateResult } from 'lit';
import { dayNumber, type IsoDate, isIsoDate, isoDate } from '../../engine/calendar.ts';
import { type Season, SUPPLY_FIELDS, type ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { adoptStyles } from '../shared/adopt-styles.ts';
import { cautionsTemplate } from '../shared/cautions-template.ts';
import { faultsTemplate } from '../shared/faults-template.ts';
import type { PlanConsumer } from '../shared/plan-consumer.ts';
import { isReady, type ReadyView, readingOf, waitingTemplate } from '../shared/plan-state.ts';
import { todayHere } from '../shared/today-here.ts';
import { weekStyles } from './runnel-week.styles.ts';
import { weekZone } from './week-zone.ts';

/** The element whose content this is. */
export interface WeekHost extends LitElement {
  readonly today: IsoDate | undefined;
}

/** The week that is shown, the steps to others, and what to do in each zone. */
export class WeekBody {
  readonly #host: WeekHost;
  readonly #plan: PlanConsumer;

  constructor(host: WeekHost, plan: PlanConsumer) {
    this.#host = host;
    this.#plan = plan;
    adoptStyles(host.renderRoot, weekStyles);
  }

  render(): unknown {
    const { view } = this.#plan;
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
    return html`<div role="alert">${faultsTemplate('edit', this.#plan.refused, reader)}</div>
      <header>
        <p class="quiet small">${say.heading(format, week + 1, weeks)}</p>
        <h2 part="title">${format.days(start, start + 6, 'long')}</h2>
        <p>${say.total(format, minutes, total)}</p>
        ${this.#steps(view, week)}
      </header>
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

  #zone(view: ReadyView, zone: ZoneSeason, week: number, hasClimate: boolean): TemplateResult {
    const { season, readOnly } = view;
    const firstDay = season.garden.span.firstDay + 7 * week;
    const planned = zoneFigure(zone, 'minutes', week);
    const check = (done: boolean) =>
      this.#plan.edit({
        type: 'set-minutes-run',
        zone: zone.zone.id,
        week: isoDate(firstDay),
        minutes: done ? planned : undefined,
      });
    return weekZone({
      season: zone,
      week,
      firstDay,
      reader: readingOf(view),
      note: zone.zone.choices.get(week)?.note,
      hasClimate,
      check: readOnly ? undefined : check,
    });
  }
}

/** The week of the season that holds today; nothing outside the season. */
function weekOf({ garden }: Season, today: IsoDate = todayHere()): number | undefined {
  if (!isIsoDate(today)) return undefined;
  const week = Math.floor((dayNumber(today) - garden.span.firstDay) / 7);
  return week >= 0 && week < garden.span.weeks ? week : undefined;
}
