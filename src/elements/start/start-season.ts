/** After the last step: the season in three sentences, what needs attention most, and the first week's run times. */
import { html, nothing, type TemplateResult } from 'lit';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { minutesOnDay, runMask, zoneFigure } from '../../engine/season/zone-week.ts';
import { startWords } from '../../language/en/start.ts';
import { lateNoticeLines } from '../notices/late-notice-lines.ts';
import type { NoticeLines } from '../notices/notice-lines.ts';
import { RunnelStartDoneEvent } from '../shared/events/start-done-event.ts';
import { assumedList } from './assumed-list.ts';
import { hasWeather, sumOf, weatherByWeek } from './known-weather.ts';
import type { MakeStep, StartContext } from './start-context.ts';
import { stepHead } from './start-parts.ts';

const MOST_NOTICES = 3;

export const makeStep: MakeStep = (host, plan) => {
  const notices = lateNoticeLines(host, plan);
  return (context) => seasonTemplate(context, notices);
};

function seasonTemplate(context: StartContext, notices: NoticeLines): TemplateResult {
  const { reader, host, season } = context;
  const say = startWords(reader.language).season;
  const isKnown = hasWeather(season);
  const done = (view: 'season' | 'week') => () => host.dispatchEvent(new RunnelStartDoneEvent(view));
  return html`<div class="told-season">${stepHead(say.title, isKnown ? '' : say.noWeather)}
    ${
      isKnown
        ? html`${sentences(context)}
          <h3>${say.attention}</h3>${attention(context, notices)}
          <h3>${say.firstWeek}</h3>${firstWeek(context)}`
        : nothing
    }
    <div class="actions">${isKnown ? nothing : html`<button class="main" name="to-weather" @click=${() => context.go('where')}>${say.toWeather}</button>`}
      <button class=${isKnown ? 'main' : ''} name="open-season" @click=${done('season')}>${say.open}</button>
      <button name="print-week" @click=${done('week')}>${say.print}</button></div>
    ${assumedList(context)}</div>`;
}

function sentences({ season, reader, format }: StartContext): TemplateResult {
  const say = startWords(reader.language).season;
  const { weeks, firstDay } = season.garden.span;
  const litres = Array.from({ length: weeks }, (_, week) =>
    sumOf(season.zones.map((zone) => zoneFigure(zone, 'litres', week))),
  );
  const most = Math.max(...litres);
  const weather = weatherByWeek(season);
  return html`<p class="three">${say.needs(format, sumOf(litres), weeks)}
    ${say.weather(format, sumOf(weather.map(({ etoMm }) => etoMm)), sumOf(weather.map(({ rainMm }) => rainMm)))}
    ${most > 0 ? say.busiest(format, firstDay + 7 * litres.indexOf(most), most) : nothing}</p>`;
}

function attention({ plan, season, reader }: StartContext, notices: NoticeLines): TemplateResult {
  const say = startWords(reader.language).season;
  const found = notices(season, plan.name, reader);
  if (found === undefined) return html`<p class="quiet">&hellip;</p>`;
  const worst = found.slice(0, MOST_NOTICES);
  if (worst.length === 0) return html`<p class="quiet">${say.noAttention}</p>`;
  return html`<ol class="worst">${worst.map(({ text }) => {
    const { name, sentence, where } = text();
    return html`<li><b>${name}:</b> ${sentence} <span class="quiet small">${where}</span></li>`;
  })}</ol>`;
}

/** What each zone runs in the first week, or when it will. */
function firstWeek(context: StartContext): TemplateResult {
  const { season } = context;
  return html`<ul class="rows">${season.zones.map(
    (zone) => html`<li><b>${zone.zone.name}</b> <span>${runsText(zone, context)}</span></li>`,
  )}</ul>`;
}

function runsText(zone: ZoneSeason, { season, reader, format }: StartContext): string {
  const say = startWords(reader.language).season;
  const { firstDay, weeks } = season.garden.span;
  const first = Array.from({ length: weeks }, (_, week) => runMask(zone, week)).findIndex((mask) => mask !== 0);
  if (first < 0) return say.noRun;
  if (first > 0) return say.firstRuns(format, firstDay + 7 * first);
  const each = Math.max(0, ...[0, 1, 2, 3, 4, 5, 6].map((day) => minutesOnDay(zone, day)));
  return say.runs(format, each, firstDay, runMask(zone, 0));
}
