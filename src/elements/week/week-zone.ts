/** One zone's instructions for a week. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { type ZoneWeek, zoneWeek } from '../../engine/season/zone-week.ts';
import { formatMinutes } from '../../language/format/minutes.ts';
import { formatNumber } from '../../language/format/number.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import { formatWeekdays } from '../../language/format/weekdays.ts';
import type { Reader } from '../../language/reader.ts';
import { weekWords } from '../shared/words/week-words.ts';

/** All seven bits of a week's mask. */
const EVERY_DAY = 0b111_1111;

export interface ZoneInstructions {
  readonly season: ZoneSeason;
  readonly week: number;
  /** First day of the week. */
  readonly firstDay: number;
  readonly reading: Reader;
  readonly note: string | undefined;
  /** Whether reference ET is known of the week. */
  readonly hasClimate: boolean;
  /** Checks the zone off or takes that back; left out where the plan can only be looked at. */
  readonly check: ((done: boolean) => void) | undefined;
}

export function weekZone({
  season,
  week,
  firstDay,
  reading,
  note,
  hasClimate,
  check,
}: ZoneInstructions): TemplateResult {
  const cell = zoneWeek(season, week);
  const { zone } = season;
  const isUnknown = !hasClimate && cell.minutes === 0 && cell.state !== 'off' && cell.state !== 'closed';
  const daily = zone.wateringDays === EVERY_DAY;
  const days = daily
    ? weekWords.everyDay
    : weekWords.onDays(formatWeekdays(firstDay, zone.wateringDays, reading.locale));
  return html`<article class=${cell.minutes > 0 ? 'runs' : 'rests'}>
    <h3>${zone.name}</h3>
    <p class="task">${isUnknown ? weekWords.unknown : taskTemplate(cell, days, reading)}</p>
    ${shutOffsTemplate(season, cell, firstDay, reading)}
    <p class="quiet small">${rainWords(cell, reading)}</p>
    ${stateTemplate(cell)} ${note === undefined ? nothing : html`<p class="note">${note}</p>`}
    ${check === undefined || !canBeChecked(cell) ? nothing : checkTemplate(zone.name, cell, check)}
  </article>`;
}

function taskTemplate(cell: ZoneWeek, days: string, reader: Reader): TemplateResult | string {
  if (cell.state === 'off') return weekWords.off;
  if (cell.state === 'closed') return weekWords.closed;
  if (cell.minutes === 0) return weekWords.nothing;
  const { locale } = reader;
  const perDay = formatMinutes(cell.minutesPerDay, reader);
  const volume = formatQuantity(cell.litres, 'volume', reader);
  const cycles = weekWords.cycles(
    formatNumber(cell.cycles, locale),
    formatMinutes(cell.minutesPerDay / cell.cycles, reader),
  );
  return html`<strong>${weekWords.run(perDay, days)}</strong>
    ${cell.cycles > 1 ? html`<span class="cycles">${cycles}</span>` : nothing}
    <span class="quiet">${volume}${originWords(cell)}</span>`;
}

function originWords({ origin }: ZoneWeek): string {
  if (origin === 'hand-set') return `, ${weekWords.byHand}`;
  return origin === 'run' ? `, ${weekWords.asRun}` : '';
}

/** Only those that a hand must turn: plantings behind a shut-off in a zone that runs. */
function shutOffsTemplate(
  season: ZoneSeason,
  cell: ZoneWeek,
  firstDay: number,
  reading: Reader,
): TemplateResult | typeof nothing {
  if (cell.minutes === 0) return nothing;
  const turned = season.plantings.filter(
    (each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', cell.week) > 0,
  );
  if (turned.length === 0) return nothing;
  const says = (each: PlantingSeason) => shutOffWords(each, season, cell.week, firstDay, reading.locale);
  return html`<dl>
    ${turned.map((each) => html`<dt>${each.planting.name}</dt><dd>${says(each)}</dd>`)}
  </dl>`;
}

function shutOffWords(
  each: PlantingSeason,
  { zone }: ZoneSeason,
  week: number,
  firstDay: number,
  locale: string,
): string {
  const mask = plantingFigure(each, 'openMask', week);
  if (mask === 0) return weekWords.shut;
  return mask === zone.wateringDays ? weekWords.openAll : weekWords.open(formatWeekdays(firstDay, mask, locale));
}

function rainWords({ rainCreditMm, rainCreditLitres }: ZoneWeek, reading: Reader): string {
  if (rainCreditLitres < 0.5) return weekWords.noRain;
  return weekWords.rain(
    formatQuantity(rainCreditMm, 'depth', reading),
    formatQuantity(rainCreditLitres, 'volume', reading),
  );
}

function stateTemplate({ state }: ZoneWeek): TemplateResult | typeof nothing {
  const says = weekWords.states[state];
  return says === '' ? nothing : html`<p class="state ${state}">${says}</p>`;
}

/** What ran can be noted; a week that stands on a hand-set number keeps it, and is noted beside it. */
function canBeChecked({ minutes, origin }: ZoneWeek): boolean {
  return minutes > 0 || origin === 'run';
}

function checkTemplate(name: string, { origin }: ZoneWeek, check: (done: boolean) => void): TemplateResult {
  const changed = (event: Event) => check((event.target as HTMLInputElement).checked);
  return html`<label class="check">
    <input type="checkbox" .checked=${live(origin === 'run')} aria-label=${weekWords.done(name)} @change=${changed} />
    <span aria-hidden="true">${weekWords.doneShort}</span>
  </label>`;
}
