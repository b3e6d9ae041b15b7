/** The key of the chart, which also says its figures: what each area stands for and what it has come to by a week. */
import { html, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatFor } from '../../language/format/format.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import type { Reserve } from './reserve.ts';

export interface KeyFigure {
  /** Class of the swatch. */
  readonly swatch: string;
  readonly name: string;
  readonly litres: number;
}

/** What is needed and what lacks, then what came, in the order of the areas from above; then what an allowance or a tank comes to. */
export function keyFigures(
  totals: Cumulative,
  week: number,
  { language }: Reader,
  reserve?: Reserve,
): readonly KeyFigure[] {
  const { names } = chartWords(language);
  const figure = (swatch: string, name: string, sums: Float64Array) => ({ swatch, name, litres: sums[week] ?? 0 });
  const rest = { swatch: 'rest', name: names.notKept, litres: meterReading(totals, week).notKept };
  return [
    figure('demand', names.demand, totals.demand),
    figure('short', names.short, totals.unmet),
    figure('soil', names.fromSoil, totals.fromSoil),
    figure('irrigation', names.kept, totals.irrigation),
    rest,
    figure('rain', names.rain, totals.rain),
    ...(reserve === undefined ? [] : [figure('meter', names[reserve.kind], usedOf(reserve, totals))]),
    ...(reserve === undefined
      ? []
      : [{ swatch: 'bound', name: names.bound[reserve.kind], litres: reserve.mostLitres }]),
  ];
}

/** Of a season's allowance all that the meter shows is used: one number, as it stands elsewhere. */
function usedOf({ kind, weeklyLitres }: Reserve, totals: Cumulative): Float64Array {
  return kind === 'allowance' ? totals.irrigationGross : weeklyLitres;
}

/** `week` undefined = the whole season. */
export function keyMoment({ firstDay, weeks }: SeasonSpan, week: number | undefined, reader: Reader): string {
  const say = chartWords(reader.language);
  const format = formatFor(reader);
  return week === undefined
    ? say.bySeasonEnd(format, firstDay + 7 * weeks - 1)
    : say.byWeek(format, firstDay + 7 * week);
}

/** Irrigation in litres by the end of a week: as sheet and meter have it, what of it stayed at the roots, and what did not. */
export interface MeterReading {
  readonly metered: number;
  readonly kept: number;
  readonly notKept: number;
}

export function meterReading({ irrigation, irrigationGross }: Cumulative, week: number): MeterReading {
  const metered = irrigationGross[week] ?? 0;
  const kept = irrigation[week] ?? 0;
  return { metered, kept, notKept: metered - kept };
}

export function keyTemplate(
  figures: readonly KeyFigure[],
  moment: string,
  { metered, kept, notKept }: MeterReading,
  reader: Reader,
): TemplateResult {
  const say = chartWords(reader.language);
  return html`<p class="moment">${moment}</p>
    <dl class="key">
      ${figures.map(
        ({ swatch, name, litres }) => html`<div>
          <dt><span class="swatch ${swatch}"></span>${name}</dt>
          <dd>${formatQuantity(litres, 'volume', reader)}</dd>
        </div>`,
      )}
    </dl>
    <p class="quiet small">${say.atRoots(formatFor(reader), metered, kept, notKept)}</p>
    <span class="swatch line" hidden></span>`;
}

/** The key in one sentence, for a screen reader. */
export function keySentence(figures: readonly KeyFigure[], moment: string, reader: Reader): string {
  const parts = figures.map(({ name, litres }) => `${name} ${formatQuantity(litres, 'volume', reader)}`);
  return `${moment}: ${parts.join(', ')}`;
}
