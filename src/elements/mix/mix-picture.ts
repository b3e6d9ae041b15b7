/** The plantings of a zone one under the other: which is overwatered, which goes short, in which weeks, at what cost. */

import { html, svg, type TemplateResult } from 'lit';
import type { GardenPlanting, SeasonSpan } from '../../engine/garden.ts';
import type { PlantingComparison, ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { mixWords } from '../../language/en/mix.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { monthStarts } from '../../language/format/month-starts.ts';
import type { Reader } from '../../language/reader.ts';
import { HATCH_ID, hatchDefinition, needBar, receivedBar, weekStrip } from './planting-picture.ts';
import { type PlantingVerdict, plantingVerdict, type Verdict } from './verdict.ts';

export interface MixPicture {
  readonly comparison: ZoneComparison;
  readonly plantings: readonly GardenPlanting[];
  readonly span: SeasonSpan;
  readonly reader: Reader;
}

export function mixPicture(picture: MixPicture): TemplateResult {
  const { plantings } = picture.comparison;
  const mostOfSeason = Math.max(
    ...plantings.flatMap(({ neededLitres, receivedLitres, areaM2 }) => [
      neededLitres / areaM2,
      receivedLitres / areaM2,
    ]),
  );
  const mostOfWeek = Math.max(...plantings.flatMap(({ neededMm, receivedMm }) => [...neededMm, ...receivedMm]));
  return html`${hatchDefinition}
    <ul class="picture" part="picture">
      ${plantings.map((planting) => plantingRow(planting, picture, mostOfSeason, mostOfWeek))}
    </ul>
    ${keyTemplate(picture.reader)}`;
}

function plantingRow(
  planting: PlantingComparison,
  { plantings, span, reader }: MixPicture,
  mostOfSeason: number,
  mostOfWeek: number,
): TemplateResult {
  const ground = plantings.find(({ id }) => id === planting.plantingId);
  const lastDay = span.firstDay + 7 * span.weeks - 1;
  const inGround =
    ground !== undefined && ground.from <= lastDay && ground.to >= span.firstDay && ground.from <= ground.to;
  const verdict = plantingVerdict(planting, inGround);
  const words = mixWords(reader.language).picture;
  const weeksOf = (weeks: readonly number[]) => weeksText(weeks, span, reader);
  const label = words.byWeek(isolated(planting.name), weeksOf(verdict.overWeeks), weeksOf(verdict.shortWeeks));
  const format = formatFor(reader);
  // The bar is a depth: that of plantings of any size can be compared.
  const amount = (litres: number) =>
    html`<span>${format.quantity(litres / planting.areaM2, 'depth')}</span><span class="small">${format.quantity(litres, 'volume')}</span>`;
  return html`<li>
    <div class="who">
      <h3>${isolated(planting.name)}</h3>
      ${verdict.verdicts.map((each) => verdictTemplate(each, planting, verdict, weeksOf, reader))}
    </div>
    <dl class="bars">
      <dt>${words.needs}</dt>
      <dd>${needBar(planting, mostOfSeason)}${amount(planting.neededLitres)}</dd>
      <dt>${words.gets}</dt>
      <dd>${receivedBar(planting, mostOfSeason)}${amount(planting.receivedLitres)}</dd>
    </dl>
    ${weekStrip(planting, { most: mostOfWeek, label, months: monthStarts(span, reader.locale) })}
  </li>`;
}

/** A sign of its own for each, so that none is told by colour alone. */
const SIGNS: Readonly<Record<Verdict, string>> = {
  over: '▲',
  short: '▼',
  more: '●',
  right: '●',
  none: '▼',
  unplanted: '○',
};

function verdictTemplate(
  verdict: Verdict,
  planting: PlantingComparison,
  { overWeeks, shortWeeks }: PlantingVerdict,
  weeksOf: (weeks: readonly number[]) => string,
  reader: Reader,
): TemplateResult {
  const words = mixWords(reader.language).picture;
  const says = verdictText(verdict, planting, reader);
  const weeks = verdict === 'over' ? overWeeks : verdict === 'short' ? shortWeeks : [];
  return html`<p class="verdict ${verdict}">
    <strong><span aria-hidden="true">${SIGNS[verdict]}</span> ${words.verdicts[verdict]}</strong>
    <span class="small">${weeks.length === 0 ? says : words.inWeeks(says, weeksOf(weeks))}</span>
  </p>`;
}

function verdictText(verdict: Verdict, planting: PlantingComparison, reader: Reader): string {
  const { ratio, drainedLitres, shortDayCount } = planting;
  const format = formatFor(reader);
  const words = mixWords(reader.language).picture;
  switch (verdict) {
    case 'over':
    case 'more':
      return Number.isFinite(ratio) ? words.over(format, ratio, drainedLitres) : words.lost(format, drainedLitres);
    case 'short':
      return words.short(format, shortDayCount);
    case 'right':
      if (planting.neededLitres === 0) return words.noNeed;
      return Number.isFinite(ratio) ? words.right(format, ratio) : '';
    case 'none':
      return words.noLine;
    case 'unplanted':
      return '';
  }
}

/** `in 9 weeks, Jul 5 – Sep 5`: from the first to the last of them. */
function weeksText(weeks: readonly number[], { firstDay }: SeasonSpan, reader: Reader): string {
  const words = mixWords(reader.language).picture;
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (first === undefined || last === undefined) return words.never;
  return words.weeks(formatFor(reader), weeks.length, firstDay + 7 * first, firstDay + 7 * last + 6);
}

const SWATCHES = {
  needs: svg`<path class="need" d="M1 1h18v8h-18z" />`,
  stays: svg`<rect class="stays" width="20" height="10" />`,
  lost: svg`<rect class="lost" fill="url(#${HATCH_ID})" width="20" height="10" />`,
  short: svg`<path class="short" d="M3 1h14l-7 8z" />`,
} as const;

function keyTemplate({ language }: Reader): TemplateResult {
  const words = mixWords(language).picture;
  return html`<ul class="key small" aria-label=${words.key}>
    ${(['needs', 'stays', 'lost', 'short'] as const).map(
      (name) =>
        html`<li><svg class="swatch" viewBox="0 0 20 10" aria-hidden="true">${SWATCHES[name]}</svg>${words.keys[name]}</li>`,
    )}
  </ul>`;
}
