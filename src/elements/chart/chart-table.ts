import { html, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { unitOf } from '../../engine/units.ts';
import { formatWeek } from '../../language/format/dates.ts';
import { formatAmount, type Reading } from '../../language/format/quantity.ts';
import { chartWords } from '../shared/words/chart-words.ts';
import { keyFigures } from './chart-key.ts';
import type { Reserve } from './reserve.ts';

interface TableContent {
  readonly totals: Cumulative;
  readonly reserve: Reserve | undefined;
  readonly span: SeasonSpan;
  readonly reading: Reading;
  readonly selectedWeek: number | undefined;
  readonly select: (week: number) => void;
}

/** The chart's figures for those who cannot see it, or want them exactly. A week's button selects it. */
export function chartTable({ totals, reserve, span, reading, selectedWeek, select }: TableContent): TemplateResult {
  const weekLabel = (week: number) => formatWeek(span.firstDay + 7 * week, reading.locale);
  return html`<table>
    <caption>${chartWords.tableCaption(unitOf('volume', reading.units).name)}</caption>
    <thead>
      <tr>
        <th scope="col">${chartWords.week}</th>
        ${keyFigures(totals, 0, reserve).map(({ name }) => html`<th scope="col">${name}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${Array.from(
        { length: totals.weeks },
        (_, week) => html`<tr class=${week === selectedWeek ? 'selected' : ''}>
          <th scope="row">
            <button class="plain" aria-label=${chartWords.selectWeek(weekLabel(week))}
              aria-pressed=${week === selectedWeek} @click=${() => select(week)}>${weekLabel(week)}</button>
          </th>
          ${keyFigures(totals, week, reserve).map(({ litres }) => html`<td>${formatAmount(litres, 'volume', reading)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
