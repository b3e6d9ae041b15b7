/** The season in review, on one page: water by zone, rain, days short, and what made the worst weeks so. */
import { html } from 'lit';
import { fromSi } from '../../../engine/units.ts';
import { seasonReview, type ZoneReview } from '../../../explain/review/season-review.ts';
import { paperWords } from '../../../language/en/paper.ts';
import { isolated } from '../../../language/format/isolated.ts';
import { planSeasonOf } from '../../../store/plan-view.ts';
import type { PaperBlock, PaperContext, PaperLayout } from './paper-block.ts';
import { title } from './table-layouts.ts';

/** Of a zone, in the order of their columns. */
const VOLUMES = ['plannedLitres', 'runLitres', 'neededLitres', 'rainCountedLitres'] as const;

const sumOf = (figure: (typeof VOLUMES)[number] | 'groundM2', zones: readonly ZoneReview[]): number =>
  zones.reduce((sum, zone) => sum + zone[figure], 0);

export function reviewLayout(context: PaperContext): PaperLayout {
  const { view, reader, format } = context;
  const { plan } = view;
  const season = planSeasonOf(view);
  const { firstDay, weeks } = season.garden.span;
  const say = paperWords(reader.language);
  const words = say.review;
  const review = seasonReview(plan, season);
  const unit = format.unit('volume');
  const byArea = words.run(format.unit('waterPerArea').replaceAll(' ', '\u00a0'));
  const heads = [words.planned(unit), words.run(unit), words.needed(unit), words.rain(unit), byArea, words.short];
  const heading = html`<div class="review row heads"><span>${say.head.zone}</span>${heads.map((head) => html`<span class="end">${head}</span>`)}</div>`;
  const byGround = (zones: readonly ZoneReview[]) =>
    format.number(fromSi(sumOf('runLitres', zones) / sumOf('groundM2', zones), 'waterPerArea', plan.units), 1, 1);
  const row = (name: unknown, zones: readonly ZoneReview[], shortDays: number, kind = '') =>
    html`<div class=${`review row ${kind}`}><span><b>${name}</b></span>
      ${VOLUMES.map((volume) => html`<span class="end">${format.amount(sumOf(volume, zones), 'volume')}</span>`)}
      <span class="end">${byGround(zones)}</span><span class="end">${format.number(shortDays)}</span></div>`;
  const zones = review.zones.map(
    (zone): PaperBlock => ({ heading, content: row(isolated(zone.name), [zone], zone.shortDays) }),
  );
  const worst = review.worstWeeks.map((each) =>
    words.worst(format, {
      week: format.week(firstDay + 7 * each.week),
      zone: isolated(each.zone),
      days: each.shortDays,
      unmetLitres: each.unmetLitres,
      cause: words.causes[each.cause],
      since: each.since < each.week ? format.week(firstDay + 7 * each.since) : undefined,
    }),
  );
  return {
    title: html`${title(context, words.title)}<p class="facts">${say.seasonOf(format, firstDay, firstDay + 7 * weeks - 1)}
      <br />${words.rainFell(format, review.rainMm, review.usualRainMm)} ${words.shortDays(format, review.shortDays)}</p>`,
    blocks: [
      ...zones,
      { heading, content: row(say.garden, review.zones, review.shortDays, 'sum') },
      { content: html`<p class="key">${words.key}</p>` },
      {
        content: html`<h2>${words.worstTitle}</h2>
          ${worst.length === 0 ? html`<p>${words.none}</p>` : html`<ol class="worst">${worst.map((each) => html`<li>${each}</li>`)}</ol>`}`,
      },
    ],
  };
}
