/** What the comparison finds, in a sentence, and the choice of zone and rule. */
import { html, nothing, type TemplateResult } from 'lit';
import type { GardenZone, ZoneRule } from '../../engine/garden.ts';
import { rulesOf, type ZoneComparison } from '../../engine/mix/compare-zone.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneFigure } from '../../engine/season/zone-week.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatMinutes } from '../../language/format/minutes.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { mixWords } from '../shared/words/mix-words.ts';
import { nameOfRule } from './rule-choice.ts';

/** Less than this share of the water is not worth a headline: rounding to the timer's step loses as much. */
const LOST_SHARE = 0.05;

export interface MixHeader {
  readonly zones: readonly GardenZone[];
  readonly zone: ZoneSeason;
  readonly comparison: ZoneComparison;
  /** Shown as if it held; left out: as planned. */
  readonly rule: ZoneRule | undefined;
  readonly reading: Reader;
  readonly chooseZone: (zoneId: string) => void;
  readonly chooseRule: (rule: ZoneRule | undefined) => void;
}

export function mixHeader(header: MixHeader): TemplateResult {
  const { zones, zone, comparison, rule, reading, chooseZone } = header;
  const chosen = (event: Event) => chooseZone((event.target as HTMLSelectElement).value);
  return html`<header>
    <h2 part="title">${titleOf(zone, comparison, reading)}</h2>
    <div class="choices">
      <label>${mixWords.zone}
        <select class="zone" @change=${chosen}>
          ${zones.map(({ id, name }) => html`<option value=${id} .selected=${id === zone.zone.id}>${name}</option>`)}
        </select>
      </label>
      ${zone.plantings.length < 2 ? nothing : ruleChoice(header)}
    </div>
    ${rule === undefined ? nothing : html`<p class="as-if">${mixWords.rule.asIf}</p>`}
    ${zone.plantings.length === 0 || rule !== undefined ? nothing : html`<p class="quiet">${openingOf(zone, comparison, reading)}</p>`}
  </header>`;
}

function ruleChoice({ zone, rule, chooseRule }: MixHeader): TemplateResult {
  const rules = rulesOf(zone);
  const changed = (event: Event) => chooseRule(rules[Number((event.target as HTMLSelectElement).value) - 1]);
  const option = (place: number, label: string, selected: boolean) =>
    html`<option value=${place} .selected=${selected}>${label}</option>`;
  return html`<label>${mixWords.rule.label}
    <select class="rule" @change=${changed}>
      ${option(0, mixWords.rule.asPlanned(nameOfRule(zone.zone.rule, zone.zone)), rule === undefined)}
      ${rules.map((each, place) => option(place + 1, nameOfRule(each, zone.zone), rule === each))}
    </select>
  </label>`;
}

function titleOf({ zone, plantings }: ZoneSeason, comparison: ZoneComparison, reading: Reader): string {
  const { drainedLitres, shortDays, litres } = comparison;
  const words = mixWords.titles;
  if (plantings.length === 0) return words.empty(zone.name);
  const lost = formatQuantity(drainedLitres, 'volume', reading);
  const days = formatCount(shortDays, mixWords.days, reading.locale);
  const loses = drainedLitres > LOST_SHARE * litres;
  if (loses && shortDays > 0) return words.both(zone.name, lost, days);
  if (loses) return words.lost(zone.name, lost);
  return shortDays > 0 ? words.short(zone.name, days) : words.right(zone.name);
}

function openingOf(zone: ZoneSeason, { litres }: ZoneComparison, reader: Reader): string {
  let minutes = 0;
  for (let week = 0; week < zone.weeks; week++) minutes += zoneFigure(zone, 'minutes', week);
  return mixWords.opening(formatMinutes(minutes, reader), formatQuantity(litres, 'volume', reader));
}
