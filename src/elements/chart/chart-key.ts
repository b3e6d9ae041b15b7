/** The key of the chart, which is also its reading: what each area stands for and what it has come to by a week. */
import { html, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { formatDay, formatWeek } from '../../language/format/dates.ts';
import { formatQuantity, type Reading } from '../../language/format/quantity.ts';
import { chartWords } from '../shared/words/chart-words.ts';
import type { Reserve } from './reserve.ts';

export interface KeyFigure {
  /** Class of the swatch. */
  readonly swatch: string;
  readonly name: string;
  readonly litres: number;
}

/** Top to bottom as the areas lie. */
export function keyFigures(totals: Cumulative, week: number, reserve?: Reserve): readonly KeyFigure[] {
  const { names } = chartWords;
  const figure = (swatch: string, name: string, sums: Float64Array) => ({ swatch, name, litres: sums[week] ?? 0 });
  return [
    figure('demand', names.demand, totals.demand),
    figure('short', names.short, totals.unmet),
    figure('soil', names.fromSoil, totals.fromSoil),
    figure('irrigation', names.irrigation, totals.irrigation),
    figure('rain', names.rain, totals.rain),
    ...(reserve === undefined ? [] : [figure('reserve', names[reserve.kind], reserve.weeklyLitres)]),
  ];
}

/** `week` undefined = the whole season. */
export function keyMoment({ firstDay, weeks }: SeasonSpan, week: number | undefined, locale: string): string {
  if (week === undefined) return chartWords.bySeasonEnd(formatDay(firstDay + 7 * weeks - 1, locale));
  return chartWords.byWeek(formatWeek(firstDay + 7 * week, locale));
}

/** `grossLitres` is the irrigation of the sheet and of the meter, which is more than what the roots keep. */
export function keyTemplate(
  figures: readonly KeyFigure[],
  moment: string,
  grossLitres: number,
  reading: Reading,
): TemplateResult {
  return html`<p class="moment">${moment}</p>
    <dl class="key">
      ${figures.map(
        ({ swatch, name, litres }) => html`<div>
          <dt><span class="swatch ${swatch}"></span>${name}</dt>
          <dd>${formatQuantity(litres, 'volume', reading)}</dd>
        </div>`,
      )}
    </dl>
    <p class="quiet small">${chartWords.atRoots(formatQuantity(grossLitres, 'volume', reading))}</p>
    <span class="swatch line" hidden></span><span class="swatch reserve" hidden></span>`;
}

/** The reading in one sentence, for a screen reader. */
export function keySentence(figures: readonly KeyFigure[], moment: string, reading: Reading): string {
  const parts = figures.map(({ name, litres }) => `${name} ${formatQuantity(litres, 'volume', reading)}`);
  return `${moment}: ${parts.join(', ')}`;
}
