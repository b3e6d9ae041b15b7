/** The plantings of a zone one under the other: who is drowned, who goes short, in which weeks, at what cost. */
import { html, nothing, svg, type TemplateResult } from 'lit';
import type { GardenPlanting, SeasonSpan } from '../../engine/garden.ts';
import type { PlantingComparison, ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatDays } from '../../language/format/dates.ts';
import { monthStarts } from '../../language/format/month-starts.ts';
import { formatNumber, formatPercent } from '../../language/format/number.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { mixWords } from '../shared/words/mix-words.ts';
import { HATCH_ID, hatchDefinition, needBar, receivedBar, weekStrip } from './planting-picture.ts';
import { type PlantingVerdict, plantingVerdict, type Verdict } from './verdict.ts';

export interface MixPicture {
  readonly comparison: ZoneComparison;
  readonly plantings: readonly GardenPlanting[];
  readonly span: SeasonSpan;
  readonly reading: Reader;
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
    ${keyTemplate()}`;
}

function plantingRow(
  planting: PlantingComparison,
  { plantings, span, reading }: MixPicture,
  mostOfSeason: number,
  mostOfWeek: number,
): TemplateResult {
  const ground = plantings.find(({ id }) => id === planting.plantingId);
  const lastDay = span.firstDay + 7 * span.weeks - 1;
  const inGround =
    ground !== undefined && ground.from <= lastDay && ground.to >= span.firstDay && ground.from <= ground.to;
  const verdict = plantingVerdict(planting, inGround);
  const weeksOf = (weeks: readonly number[]) => weeksInWords(weeks, span, reading);
  const label = mixWords.byWeek(planting.name, weeksOf(verdict.overWeeks), weeksOf(verdict.shortWeeks));
  const volume = (litres: number) => formatQuantity(litres, 'volume', reading);
  return html`<li>
    <div class="who">
      <h3>${planting.name}</h3>
      ${verdict.verdicts.map((each) => verdictTemplate(each, planting, verdict, weeksOf, reading))}
    </div>
    <dl class="bars">
      <dt>${mixWords.needs}</dt>
      <dd>${needBar(planting, mostOfSeason)}<span>${volume(planting.neededLitres)}</span></dd>
      <dt>${mixWords.gets}</dt>
      <dd>${receivedBar(planting, mostOfSeason)}<span>${volume(planting.receivedLitres)}</span></dd>
    </dl>
    ${weekStrip(planting, { most: mostOfWeek, label, months: monthStarts(span, reading.locale) })}
  </li>`;
}

/** A sign of its own for each, so that none is told by colour alone. */
const SIGNS: Readonly<Record<Verdict, string>> = { over: '▲', short: '▼', right: '●', none: '▼', unplanted: '○' };

function verdictTemplate(
  verdict: Verdict,
  planting: PlantingComparison,
  { overWeeks, shortWeeks }: PlantingVerdict,
  weeksOf: (weeks: readonly number[]) => string,
  reading: Reader,
): TemplateResult {
  const says = verdictSays(verdict, planting, reading);
  const weeks = verdict === 'over' ? overWeeks : verdict === 'short' ? shortWeeks : [];
  return html`<p class="verdict ${verdict}">
    <strong><span aria-hidden="true">${SIGNS[verdict]}</span> ${mixWords.verdicts[verdict]}</strong>
    <span class="small">${says}${weeks.length === 0 ? nothing : html`; ${weeksOf(weeks)}`}</span>
  </p>`;
}

function verdictSays(verdict: Verdict, planting: PlantingComparison, reading: Reader): string {
  const { ratio, drainedLitres, shortDayCount } = planting;
  switch (verdict) {
    case 'over': {
      const lost = formatQuantity(drainedLitres, 'volume', reading);
      if (!Number.isFinite(ratio) || ratio < 1.05) return mixWords.lostSays(lost);
      return mixWords.overSays(`${formatNumber(ratio, reading.locale, 1)} ×`, lost);
    }
    case 'short':
      return mixWords.shortSays(formatCount(shortDayCount, mixWords.days, reading.locale));
    case 'right':
      return Number.isFinite(ratio) ? mixWords.rightSays(formatPercent(ratio, reading.locale)) : '';
    case 'none':
      return mixWords.noLineSays;
    case 'unplanted':
      return '';
  }
}

/** `in 9 weeks, 5 Jul – 5 Sep`: from the first to the last of them. */
function weeksInWords(weeks: readonly number[], { firstDay }: SeasonSpan, { locale }: Reader): string {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (first === undefined || last === undefined) return mixWords.never;
  const days = formatDays(firstDay + 7 * first, firstDay + 7 * last + 6, locale);
  const count = formatCount(weeks.length, mixWords.weeks, locale);
  return mixWords.weeksSay(count, days);
}

const SWATCHES: Readonly<Record<keyof typeof mixWords.keys, TemplateResult>> = {
  needs: svg`<path class="need" d="M1 1h18v8h-18z" />`,
  stays: svg`<rect class="stays" width="20" height="10" />`,
  lost: svg`<rect class="lost" fill="url(#${HATCH_ID})" width="20" height="10" />`,
  short: svg`<path class="short" d="M3 1h14l-7 8z" />`,
};

function keyTemplate(): TemplateResult {
  return html`<ul class="key small" aria-label=${mixWords.key}>
    ${(['needs', 'stays', 'lost', 'short'] as const).map(
      (name) =>
        html`<li><svg class="swatch" viewBox="0 0 20 10" aria-hidden="true">${SWATCHES[name]}</svg>${mixWords.keys[name]}</li>`,
    )}
  </ul>`;
}
