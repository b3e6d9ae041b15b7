/** The comparison in figures: by planting, by week, and under each rule. */
import { html, type TemplateResult } from 'lit';
import type { ZoneRule } from '../../engine/garden.ts';
import type { ZoneComparison } from '../../engine/mix/compare-zone.ts';
import { type Quantity, unitOf } from '../../engine/units.ts';
import { formatWeek } from '../../language/format/dates.ts';
import { formatNumber } from '../../language/format/number.ts';
import { formatAmount, formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import type { MixFigures } from '../../remedies/mix/mix-figures.ts';
import { mixWords } from '../shared/words/mix-words.ts';

const words = mixWords.table;

export function plantingTable(comparison: ZoneComparison, reading: Reader): TemplateResult {
  const { plantings } = comparison;
  const volume = (litres: number) => formatAmount(litres, 'volume', reading);
  const together = (litresOf: (planting: ZoneComparison['plantings'][number]) => number) =>
    volume(plantings.reduce((sum, planting) => sum + litresOf(planting), 0));
  const [gallons, rate] = [nameOfUnit('volume', reading), nameOfUnit('rate', reading)];
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.title}>
      <table>
        <thead>
          <tr>
            ${[words.planting, words.rate(rate), words.needed(gallons), words.received(gallons), words.ratio, words.lost(gallons), words.shortDays].map(columnHead)}
          </tr>
        </thead>
        <tbody>
          ${plantings.map(
            (planting) => html`<tr>
              <th scope="row">${planting.name}</th>
              <td>${formatAmount(planting.rateMmPerHour, 'rate', reading)}</td>
              <td>${volume(planting.neededLitres)}</td>
              <td>${volume(planting.receivedLitres)}</td>
              <td>${formatNumber(planting.ratio, reading.locale, 2, 2)}</td>
              <td>${volume(planting.drainedLitres)}</td>
              <td>${formatNumber(planting.shortDayCount, reading.locale)}</td>
            </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">${words.total}</th>
            <td></td>
            <td>${together(({ neededLitres }) => neededLitres)}</td>
            <td>${together(({ receivedLitres }) => receivedLitres)}</td>
            <td></td>
            <td>${volume(comparison.drainedLitres)}</td>
            <td>${formatNumber(comparison.shortDays, reading.locale)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
    <p class="quiet small">${words.note(formatQuantity(comparison.litres, 'volume', reading))}</p>`;
}

export function weekTable({ plantings }: ZoneComparison, firstDay: number, reading: Reader): TemplateResult {
  const weeks = plantings[0]?.neededMm.length ?? 0;
  const amount = (mm: number, areaM2: number) => formatAmount(mm * areaM2, 'volume', reading);
  return html`<p class="quiet small">${words.weeklyNote(nameOfUnit('volume', reading))}</p>
    <div class="scroller" tabindex="0" role="region" aria-label=${words.weekly}>
      <table>
        <thead>
          <tr>${[words.week, ...plantings.map(({ name }) => name)].map(columnHead)}</tr>
        </thead>
        <tbody>
          ${Array.from(
            { length: weeks },
            (_, week) => html`<tr>
              <th scope="row">${formatWeek(firstDay + 7 * week, reading.locale)}</th>
              ${plantings.map(
                ({ receivedMm, neededMm, areaM2 }) =>
                  html`<td>${amount(receivedMm[week] as number, areaM2)} / ${amount(neededMm[week] as number, areaM2)}</td>`,
              )}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

export interface RuleRow {
  readonly rule: ZoneRule;
  readonly figures: MixFigures;
  readonly isNow: boolean;
}

export function ruleTable(
  rows: readonly RuleRow[],
  nameOf: (rule: ZoneRule) => string,
  reading: Reader,
): TemplateResult {
  const gallons = nameOfUnit('volume', reading);
  const volume = (litres: number) => formatAmount(litres, 'volume', reading);
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.rules}>
    <table>
      <thead>
        <tr>${[words.ruleColumn, words.metered(gallons), words.lost(gallons), words.shortDays].map(columnHead)}</tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ rule, figures, isNow }) => html`<tr>
            <th scope="row">${nameOf(rule)}${isNow ? html` <span class="quiet">(${words.now})</span>` : ''}</th>
            <td>${volume(figures.litres)}</td>
            <td>${volume(figures.drainedLitres)}</td>
            <td>${formatNumber(figures.shortDays, reading.locale)}</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function columnHead(label: string): TemplateResult {
  return html`<th scope="col">${label}</th>`;
}

function nameOfUnit(quantity: Quantity, { units }: Reader): string {
  return unitOf(quantity, units).name;
}
