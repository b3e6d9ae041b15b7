/** What the comparison finds, in a sentence, and the choice of zone and rule. */
import { html, nothing, type TemplateResult } from 'lit';
import type { GardenZone, ZoneRule } from '../../engine/garden.ts';
import { rulesOf, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { ruleName } from '../../language/describe-mix-remedy.ts';
import { mixWords } from '../../language/en/mix.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';

/** Less than this share of the water is not worth a headline: rounding to the timer's step loses as much. */
const LOST_SHARE = 0.05;

export interface MixHeader {
  readonly zones: readonly GardenZone[];
  readonly zone: ZoneSeason;
  readonly comparison: ZoneComparison;
  /** Shown as if it held; left out: as planned. */
  readonly rule: ZoneRule | undefined;
  readonly reader: Reader;
  readonly chooseZone: (zoneId: string) => void;
  readonly chooseRule: (rule: ZoneRule | undefined) => void;
}

export function mixHeader(header: MixHeader): TemplateResult {
  const { zones, zone, comparison, rule, reader, chooseZone } = header;
  const words = mixWords(reader.language);
  const chosen = (event: Event) => chooseZone((event.target as HTMLSelectElement).value);
  return html`<header>
    <h2 part="title">${titleOf(zone, comparison, reader)}</h2>
    <div class="choices">
      <label>${words.zone}
        <select class="zone" @change=${chosen}>
          ${zones.map(({ id, name }) => html`<option value=${id} .selected=${id === zone.zone.id}>${isolated(name)}</option>`)}
        </select>
      </label>
      ${zone.plantings.length < 2 ? nothing : ruleChoice(header)}
    </div>
    ${rule === undefined ? nothing : html`<p class="as-if">${words.rule.asIf}</p>`}
    ${zone.plantings.length === 0 || rule !== undefined ? nothing : html`<p class="quiet">${openingOf(zone, comparison, reader)}</p>`}
  </header>`;
}

function ruleChoice({ zone, rule, reader, chooseRule }: MixHeader): TemplateResult {
  const words = mixWords(reader.language).rule;
  const rules = rulesOf(zone);
  const nameOf = (id: string) => isolated(zone.zone.plantings.find((planting) => planting.id === id)?.name ?? id);
  const changed = (event: Event) => chooseRule(rules[Number((event.target as HTMLSelectElement).value) - 1]);
  const option = (index: number, label: string, selected: boolean) =>
    html`<option value=${index} .selected=${selected}>${label}</option>`;
  return html`<label>${words.label}
    <select class="rule" @change=${changed}>
      ${option(0, words.asPlanned(ruleName(zone.zone.rule, nameOf, reader)), rule === undefined)}
      ${rules.map((each, index) => option(index + 1, ruleName(each, nameOf, reader), rule === each))}
    </select>
  </label>`;
}

function titleOf({ zone, plantings }: ZoneSeason, comparison: ZoneComparison, reader: Reader): string {
  const { drainedLitres, shortDays, litres } = comparison;
  const format = formatFor(reader);
  const { title } = mixWords(reader.language);
  if (plantings.length === 0) return title.empty(isolated(zone.name));
  const loses = drainedLitres > LOST_SHARE * litres;
  if (loses && shortDays > 0) return title.both(format, isolated(zone.name), drainedLitres, shortDays);
  if (loses) return title.lost(format, isolated(zone.name), drainedLitres);
  return shortDays > 0 ? title.short(format, isolated(zone.name), shortDays) : title.right(isolated(zone.name));
}

function openingOf(zone: ZoneSeason, { litres }: ZoneComparison, reader: Reader): string {
  let minutes = 0;
  for (let week = 0; week < zone.weeks; week++) minutes += zoneFigure(zone, 'minutes', week);
  return mixWords(reader.language).opening(formatFor(reader), minutes, litres);
}
