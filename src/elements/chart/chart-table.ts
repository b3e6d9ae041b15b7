import { html, type TemplateResult } from 'lit';
import type { SeasonSpan } from '../../engine/garden.ts';
import type { Cumulative } from '../../engine/season/cumulative.ts';
import { chartWords } from '../../language/en/chart.ts';
import { formatFor } from '../../language/format/format.ts';
import { formatAmount, unitSymbol } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { keyFigures } from './chart-key.ts';
import type { Reserve } from './reserve.ts';

interface TableContent {
  readonly totals: Cumulative;
  readonly reserve: Reserve | undefined;
  readonly span: SeasonSpan;
  readonly reader: Reader;
  readonly selectedWeek: number | undefined;
  readonly select: (week: number) => void;
}

/** The chart's figures for those who cannot see it, or want them exactly. A week's button selects it. */
export function chartTable({ totals, reserve, span, reader, selectedWeek, select }: TableContent): TemplateResult {
  const say = chartWords(reader.language);
  const format = formatFor(reader);
  return html`<table>
    <caption>${say.tableCaption(unitSymbol('volume', reader))}</caption>
    <thead>
      <tr>
        <th scope="col">${say.week}</th>
        ${keyFigures(totals, 0, reader, reserve).map(({ name }) => html`<th scope="col">${name}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${Array.from(
        { length: totals.weeks },
        (_, week) => html`<tr class=${week === selectedWeek ? 'selected' : ''}>
          <th scope="row">
            <button class="plain" aria-label=${say.selectWeek(format, span.firstDay + 7 * week)}
              aria-pressed=${week === selectedWeek} @click=${() => select(week)}>${format.week(span.firstDay + 7 * week)}</button>
          </th>
          ${keyFigures(totals, week, reader, reserve).map(({ litres }) => html`<td>${formatAmount(litres, 'volume', reader)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
