/** The plan beside changes of it: water, days short, money where water has a price, and what to buy. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { describeShopping } from '../../language/describe-what-if.ts';
import { whatIfsWords } from '../../language/en/what-ifs.ts';
import { formatFor } from '../../language/format/format.ts';
import { formatMoney } from '../../language/format/money.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { gardenFigures } from '../../remedies/mix/mix-figures.ts';
import type { ShoppingList } from '../../remedies/mix/shopping-list.ts';
import { priceOf } from '../../remedies/mix/what-if.ts';

export interface Compared {
  readonly name: string;
  readonly plan: Plan;
  /** Of that plan; undefined where the changes no longer fit. */
  readonly season: Season | undefined;
  /** Left out of the plan as it is; a column of its own where one has any. */
  readonly shopping?: ShoppingList | undefined;
  /** What can be done with the row. */
  readonly actions?: TemplateResult | undefined;
}

export function comparison(rows: readonly Compared[], reader: Reader): TemplateResult {
  const words = whatIfsWords(reader.language);
  const format = formatFor(reader);
  const hasMoney = rows.some(({ plan }) => plan.supply?.price !== undefined);
  const hasActions = rows.some(({ actions }) => actions !== undefined);
  const hasParts = rows.some(({ shopping }) => shopping !== undefined);
  const columns = { hasMoney, hasParts };
  const heads = [words.name, words.water(format.unit('volume')), words.shortDays, ...(hasMoney ? [words.money] : [])];
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.comparison}>
    <table class="compared">
      <caption>${words.comparison}</caption>
      <thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}${hasParts ? html`<th scope="col" class="parts">${words.parts}</th>` : nothing}${hasActions ? html`<td></td>` : nothing}</tr></thead>
      <tbody>${rows.map(
        (row) => html`<tr>
        <th scope="row">${row.name}</th>
        ${figures(row, columns, reader)}
        ${hasActions ? html`<td class="do">${row.actions}</td>` : nothing}
      </tr>`,
      )}</tbody>
    </table>
  </div>`;
}

interface Columns {
  readonly hasMoney: boolean;
  readonly hasParts: boolean;
}

function figures(
  { plan, season, shopping }: Compared,
  { hasMoney, hasParts }: Columns,
  reader: Reader,
): TemplateResult {
  const words = whatIfsWords(reader.language);
  const format = formatFor(reader);
  if (season === undefined)
    return html`<td colspan=${2 + Number(hasMoney) + Number(hasParts)} class="parts">${words.doesNotFit}</td>`;
  const { litres, shortDays } = gardenFigures(season);
  const money = priceOf(litres, plan);
  const parts = shopping === undefined ? [] : describeShopping(shopping, reader);
  const partsText = parts.length === 0 ? words.noParts : format.list(parts);
  return html`<td data-head=${words.water(format.unit('volume'))}>${format.amount(litres, 'volume')}</td>
    <td data-head=${words.shortDays}>${format.number(shortDays)}</td>
    ${hasMoney ? html`<td data-head=${words.money}>${money === undefined ? nothing : formatMoney(money.amount, money.currency, reader.locale)}</td>` : nothing}
    ${hasParts ? html`<td class="parts" data-head=${words.parts}>${shopping === undefined ? nothing : partsText}</td>` : nothing}`;
}
