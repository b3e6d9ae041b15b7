/** Four weeks, the season and one zone as tables. */
import { html, nothing, type TemplateResult } from 'lit';
import { openRunMask, plantingFigure } from '../../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../../engine/season/season.ts';
import { zoneRuns } from '../../../engine/season/zone-runs.ts';
import { runMask, zoneFigure, zoneOrigin, zoneState } from '../../../engine/season/zone-week.ts';
import { weekStarts } from '../../../explain/schedule/week-starts.ts';
import { paperWords } from '../../../language/en/paper.ts';
import { isolated } from '../../../language/format/isolated.ts';
import { wateringDayRange } from '../../../sheet/watering-days.ts';
import { weeklyWeather } from '../../../sheet/week-weather.ts';
import type { PaperBlock, PaperContext, PaperLayout } from './paper-block.ts';
import { printedPoints } from './paper-choice.ts';

const WEEKS = 4;
const EVERY_DAY = 0b111_1111;
/** Points that a season's table gives its names and its weeks. */
const NAME_POINTS = 96;
const WEEK_POINTS = 36;

export function weeksLayout(context: PaperContext): PaperLayout {
  const { view, choice, reader, format } = context;
  const { firstDay, weeks } = view.season.garden.span;
  const say = paperWords(reader.language);
  const first = Math.min(choice.week, Math.max(0, weeks - WEEKS));
  const shown = Array.from({ length: Math.min(WEEKS, weeks) }, (_, at) => first + at);
  const heading = html`<div class="weeks row heads"><span>${say.head.zone}</span>${shown.map((week) => html`<span><b>${format.week(firstDay + 7 * week)}</b></span>`)}</div>`;
  return {
    title: title(context, format.days(firstDay + 7 * first, firstDay + 7 * first + 7 * shown.length - 1, 'long')),
    blocks: view.season.zones.map((zone, index) => ({
      heading,
      content: html`<div class="weeks row"><span>${index + 1} <b>${isolated(zone.zone.name)}</b></span>
        ${shown.map((week) => html`<span>${weekCell(zone, week, context)}</span>`)}</div>`,
    })),
  };
}

function weekCell(zone: ZoneSeason, week: number, { view, reader, format }: PaperContext): TemplateResult {
  const say = paperWords(reader.language);
  const runs = zoneRuns(zone, week);
  const firstDay = view.season.garden.span.firstDay + 7 * week;
  if (runs.length === 0) return html`<small>${idle(zone, week, say)}</small>`;
  const starts = weekStarts(view.season, week).zones.get(zone.zone.id);
  const cycles = Math.max(...runs.map((run) => run.cycles));
  return html`${runs.map((run) => html`<b class=${zoneOrigin(zone, week) === 'hand-set' ? 'by-hand' : ''}>${format.minutes(run.minutes)}</b> ${run.mask === EVERY_DAY ? say.everyDay : format.weekdays(firstDay, run.mask)}<br />`)}
    <small>${starts === undefined ? nothing : format.list(starts.startMinutes.slice(0, cycles).map((minute) => format.time(minute)))}, ${format.quantity(zoneFigure(zone, 'litres', week), 'volume')}</small>
    ${shutOffs(zone, week, firstDay, { reader, format })}`;
}

function shutOffs(
  zone: ZoneSeason,
  week: number,
  firstDay: number,
  { reader, format }: Pick<PaperContext, 'reader' | 'format'>,
): readonly TemplateResult[] {
  const say = paperWords(reader.language);
  return zone.plantings
    .filter((each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', week) > 0)
    .map((each) => {
      const open = openRunMask(zone, each, week);
      const days = open === 0 ? say.shut : `${say.open} ${format.weekdays(firstDay, open)}`;
      return html`<small>${isolated(each.planting.name)} ${days}</small>`;
    });
}

function idle(zone: ZoneSeason, week: number, say: ReturnType<typeof paperWords>): string {
  const state = zoneState(zone, week);
  if (state === 'off') return say.nothingPlanted;
  return state === 'closed' ? say.closed : say.rest;
}

/** As many weeks side by side as the sheet takes, the others below. */
export function seasonLayout(context: PaperContext): PaperLayout {
  const { view, choice, reader, format } = context;
  const { season } = view;
  const { firstDay, weeks } = season.garden.span;
  const say = paperWords(reader.language);
  const across = Math.floor((printedPoints(choice) - NAME_POINTS) / WEEK_POINTS);
  const parts = Math.ceil(weeks / across);
  const each = Math.ceil(weeks / parts);
  const blocks = Array.from({ length: parts }, (_, part) => {
    const shown = Array.from({ length: Math.min(each, weeks - part * each) }, (__, at) => part * each + at);
    const row = (name: unknown, cell: (week: number) => unknown, kind = '') =>
      html`<div class=${`season row ${kind}`}><span>${name}</span>${shown.map((week) => html`<span>${cell(week)}</span>`)}</div>`;
    const heading = row(say.head.week, (week) => html`${format.day(firstDay + 7 * week, 'short')}`, 'heads');
    const weather = (kind: 'eto' | 'rain') => (week: number) =>
      format.amount(weeklyWeather(kind, season.weather).weeks[week]?.mm ?? 0, 'depth');
    const rows: PaperBlock[] = [
      {
        content: row(html`${say.eto} <small>${say.inUnit(format.unit('depth'))}</small>`, weather('eto'), 'small'),
        heading,
      },
      {
        content: row(html`${say.rain} <small>${say.inUnit(format.unit('depth'))}</small>`, weather('rain'), 'small'),
        heading,
      },
      ...season.zones.map((zone, index) => ({
        heading,
        content: row(html`${index + 1} <b>${isolated(zone.zone.name)}</b>`, (week) => seasonCell(zone, week, context)),
      })),
      {
        heading,
        content: row(
          html`<b>${say.garden}</b> <small>${say.inUnit(format.unit('volume'))}</small>`,
          (week) =>
            html`<b>${format.amount(
              season.zones.reduce((sum, zone) => sum + zoneFigure(zone, 'litres', week), 0),
              'volume',
            )}</b>`,
          'sum',
        ),
      },
    ];
    return rows;
  });
  return {
    title: html`${title(context, say.seasonOf(format, firstDay, firstDay + 7 * weeks - 1))}<p class="key">${say.seasonKey(format.unit('volume'))}</p>`,
    blocks: blocks.flat(),
  };
}

function seasonCell(zone: ZoneSeason, week: number, { reader, format }: PaperContext): TemplateResult | typeof nothing {
  const minutes = zoneFigure(zone, 'minutes', week);
  const state = zoneState(zone, week);
  if (state === 'closed') return html`<small>${paperWords(reader.language).closed}</small>`;
  if (minutes === 0) return state === 'off' ? nothing : html`&ndash;`;
  const isByHand = zoneOrigin(zone, week) === 'hand-set';
  return html`<b class=${isByHand ? 'by-hand' : ''}>${format.minuteCount(minutes)}</b><small>${format.amount(zoneFigure(zone, 'litres', week), 'volume')}</small>`;
}

/** Named where they are the same all season. */
function wateringDaysText({ zone }: ZoneSeason, { view, reader, format }: PaperContext): string {
  const say = paperWords(reader.language);
  const { wateringDays, wateringDaysByWeek } = zone;
  return wateringDaysByWeek === undefined
    ? say.wateringDays(format, view.season.garden.span.firstDay, wateringDays)
    : say.wateringDaysVary(format, ...wateringDayRange(zone));
}

export function zoneLayout(context: PaperContext): PaperLayout {
  const { view, choice, reader, format } = context;
  const { season } = view;
  const { firstDay, weeks } = season.garden.span;
  const say = paperWords(reader.language);
  const zone = season.zones.find((each) => each.zone.id === choice.zone) ?? season.zones[0];
  if (zone === undefined) return { title: title(context, ''), blocks: [] };
  const heading = html`<div class="one row heads"><span>${say.head.week}</span><span>${say.head.run}</span><span>${say.head.start}</span><span class="end">${say.head.amount}</span><span class="end">${say.head.rain}</span><span>${say.head.ran}</span></div>`;
  const rows = Array.from({ length: weeks }, (_, week) => week).filter((week) => zoneState(zone, week) !== 'off');
  const starts = (week: number) => weekStarts(season, week).zones.get(zone.zone.id)?.startMinutes ?? [];
  return {
    title: html`${title(context, isolated(zone.zone.name))}<p class="facts">${wateringDaysText(zone, context)}
      ${zone.plantings.map(({ planting }) => html`<br />${say.planting(format, isolated(planting.name), planting.areaM2, planting.hasShutOff ? say.hasShutOff : '')}`)}</p>`,
    blocks: rows.map((week) => ({
      heading,
      content: html`<div class="one row"><span>${format.week(firstDay + 7 * week)}</span>
        <span>${runMask(zone, week) === 0 ? html`<small>${idle(zone, week, say)}</small>` : zoneRuns(zone, week).map((run) => html`<b class=${zoneOrigin(zone, week) === 'hand-set' ? 'by-hand' : ''}>${format.minutes(run.minutes)}</b> ${run.mask === EVERY_DAY ? say.everyDay : format.weekdays(firstDay + 7 * week, run.mask)}<br />`)}
          ${shutOffs(zone, week, firstDay + 7 * week, context)}</span>
        <span>${format.list(starts(week).map((minute) => format.time(minute)))}</span>
        <span class="end">${format.quantity(zoneFigure(zone, 'litres', week), 'volume')}</span>
        <span class="end">${format.quantity(zoneFigure(zone, 'rainCreditMm', week), 'depth')}</span><span><i class="pencil"></i></span></div>`,
    })),
  };
}

/** The garden's name above what the sheet is of. */
export function title({ view }: PaperContext, of: string): TemplateResult {
  return html`<header class="title"><p class="garden">${isolated(view.plan.name)}</p><h1>${of}</h1></header>`;
}
