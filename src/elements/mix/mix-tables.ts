/** The comparison in figures: by planting, by week, and under each rule. */
import { html, type TemplateResult } from 'lit';
import { rulesOf, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { ruleName } from '../../language/describe-mix-remedy.ts';
import { mixWords } from '../../language/en/mix.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { isSameRule } from '../../remedies/mix/kinds/rule.ts';
import type { MixFigures } from '../../remedies/mix/mix-figures.ts';
import type { MixRemedies } from '../../remedies/mix/search.ts';

export function plantingTable(comparison: ZoneComparison, reader: Reader): TemplateResult {
  const { plantings } = comparison;
  const words = mixWords(reader.language).table;
  const format = formatFor(reader);
  const volume = (litres: number) => format.amount(litres, 'volume');
  const total = (litresOf: (planting: ZoneComparison['plantings'][number]) => number) =>
    volume(plantings.reduce((sum, planting) => sum + litresOf(planting), 0));
  const [gallons, rate] = [format.unit('volume'), format.unit('rate')];
  const heads = [
    words.rate(rate),
    words.needed(gallons),
    words.received(gallons),
    words.ratio,
    words.lost(gallons),
    words.shortDays,
  ];
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.title}>
      <table>
        <thead>
          <tr>
            ${[words.planting, ...heads].map(columnHead)}
          </tr>
        </thead>
        <tbody>
          ${plantings.map(
            (planting) => html`<tr>
              <th scope="row">${isolated(planting.name)}</th>
              ${cells(heads, [
                format.amount(planting.rateMmPerHour, 'rate'),
                volume(planting.neededLitres),
                volume(planting.receivedLitres),
                format.number(planting.ratio, 2, 2),
                volume(planting.drainedLitres),
                format.number(planting.shortDayCount),
              ])}
            </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">${words.total}</th>
            ${cells(heads, [
              '',
              total(({ neededLitres }) => neededLitres),
              total(({ receivedLitres }) => receivedLitres),
              '',
              volume(comparison.drainedLitres),
              format.number(comparison.shortDays),
            ])}
          </tr>
        </tfoot>
      </table>
    </div>
    <p class="quiet small">${words.note(format, comparison.litres)}</p>`;
}

export function weekTable({ plantings }: ZoneComparison, firstDay: number, reader: Reader): TemplateResult {
  const words = mixWords(reader.language).table;
  const format = formatFor(reader);
  const weeks = plantings[0]?.neededMm.length ?? 0;
  const names = plantings.map(({ name }) => isolated(name));
  const amount = (mm: number, areaM2: number) => format.amount(mm * areaM2, 'volume');
  return html`<p class="quiet small">${words.weeklyNote(format.unit('volume'))}</p>
    <div class="scroller" tabindex="0" role="region" aria-label=${words.weekly}>
      <table>
        <thead>
          <tr>${[words.week, ...names].map(columnHead)}</tr>
        </thead>
        <tbody>
          ${Array.from(
            { length: weeks },
            (_, week) => html`<tr>
              <th scope="row">${format.week(firstDay + 7 * week)}</th>
              ${cells(
                names,
                plantings.map(
                  ({ receivedMm, neededMm, areaM2 }) =>
                    `${amount(receivedMm[week] as number, areaM2)} / ${amount(neededMm[week] as number, areaM2)}`,
                ),
              )}
            </tr>`,
          )}
        </tbody>
      </table>
    </div>`;
}

interface RuleRow {
  readonly name: string;
  readonly figures: MixFigures;
}

/** What the zone's season comes to under each rule that it could have; those whose season was refused are left out. */
export function ruleDetails(
  { before, rules }: Pick<MixRemedies, 'before' | 'rules'>,
  zone: ZoneSeason,
  reader: Reader,
): TemplateResult {
  const words = mixWords(reader.language).table;
  const nameOf = (id: string) => isolated(zone.zone.plantings.find((planting) => planting.id === id)?.name ?? id);
  const rows = rulesOf(zone).flatMap((rule): readonly RuleRow[] => {
    const name = ruleName(rule, nameOf, reader);
    if (isSameRule(rule, zone.zone.rule)) return [{ name: words.now(name), figures: before }];
    const outcome = rules.find(({ changes: [change] }) => change?.kind === 'rule' && isSameRule(change.rule, rule));
    return outcome === undefined ? [] : [{ name, figures: outcome.after }];
  });
  return html`<details>
    <summary>${words.rules}</summary>
    ${ruleTable(rows, reader)}
  </details>`;
}

function ruleTable(rows: readonly RuleRow[], reader: Reader): TemplateResult {
  const words = mixWords(reader.language).table;
  const format = formatFor(reader);
  const gallons = format.unit('volume');
  const volume = (litres: number) => format.amount(litres, 'volume');
  const heads = [words.metered(gallons), words.lost(gallons), words.shortDays];
  return html`<div class="scroller" tabindex="0" role="region" aria-label=${words.rules}>
    <table>
      <thead>
        <tr>${[words.ruleColumn, ...heads].map(columnHead)}</tr>
      </thead>
      <tbody>
        ${rows.map(
          ({ name, figures }) => html`<tr>
            <th scope="row">${name}</th>
            ${cells(heads, [volume(figures.litres), volume(figures.drainedLitres), format.number(figures.shortDays)])}
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}

function columnHead(label: string): TemplateResult {
  return html`<th scope="col">${label}</th>`;
}

/** Each with its heading, which a narrow page writes before it. */
function cells(heads: readonly string[], texts: readonly string[]): readonly TemplateResult[] {
  return texts.map((text, at) => html`<td data-head=${heads[at] ?? ''}>${text}</td>`);
}
