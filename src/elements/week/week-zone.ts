/** One zone's instructions for a week. */

import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { type ZoneWeek, zoneWeek } from '../../engine/season/zone-week.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';

/** All seven bits of a week's mask. */
const EVERY_DAY = 0b111_1111;

export interface ZoneInstructions {
  readonly season: ZoneSeason;
  readonly week: number;
  /** First day of the week. */
  readonly firstDay: number;
  readonly reader: Reader;
  readonly note: string | undefined;
  /** Whether reference ET is known of the week. */
  readonly hasClimate: boolean;
  /** Checks the zone off or takes that back; left out where the plan can only be looked at. */
  readonly check: ((done: boolean) => void) | undefined;
}

export function weekZone(instructions: ZoneInstructions): TemplateResult {
  const { season, week, reader, note, hasClimate, check } = instructions;
  const cell = zoneWeek(season, week);
  const { name } = season.zone;
  const say = weekWords(reader.language);
  const isUnknown = !hasClimate && cell.minutes === 0 && cell.state !== 'off' && cell.state !== 'closed';
  return html`<article class=${cell.minutes > 0 ? 'runs' : 'rests'}>
    <h3>${name}</h3>
    <p class="task">${isUnknown ? say.unknown : taskTemplate(cell, instructions)}</p>
    ${shutOffsTemplate(cell, instructions)}
    <p class="quiet small">${rainWords(cell, reader)}</p>
    ${stateTemplate(cell, reader)} ${note === undefined ? nothing : html`<p class="note">${note}</p>`}
    ${check === undefined || !canBeChecked(cell) ? nothing : checkTemplate(name, cell, check, reader)}
  </article>`;
}

function taskTemplate(cell: ZoneWeek, { season, firstDay, reader }: ZoneInstructions): TemplateResult | string {
  const say = weekWords(reader.language);
  if (cell.state === 'off') return say.off;
  if (cell.state === 'closed') return say.closed;
  if (cell.minutes === 0) return say.nothing;
  const format = formatFor(reader);
  const { minutesPerDay, cycles, litres, origin } = cell;
  const { wateringDays } = season.zone;
  const run =
    wateringDays === EVERY_DAY
      ? say.runDaily(format, minutesPerDay)
      : say.runOn(format, minutesPerDay, firstDay, wateringDays);
  const amount = say.amounts[origin === 'hand-set' || origin === 'run' ? origin : 'computed'];
  return html`<strong>${run}</strong>
    ${cycles > 1 ? html`<span class="cycles">${say.cycles(format, cycles, minutesPerDay / cycles)}</span>` : nothing}
    <span class="quiet">${amount(format, litres)}</span>`;
}

/** Only those that a hand must turn: plantings behind a shut-off in a zone that runs. */
function shutOffsTemplate(cell: ZoneWeek, instructions: ZoneInstructions): TemplateResult | typeof nothing {
  if (cell.minutes === 0) return nothing;
  const turned = instructions.season.plantings.filter(
    (each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', cell.week) > 0,
  );
  if (turned.length === 0) return nothing;
  return html`<dl>
    ${turned.map((each) => html`<dt>${isolated(each.planting.name)}</dt><dd>${shutOffWords(each, instructions)}</dd>`)}
  </dl>`;
}

function shutOffWords(planting: PlantingSeason, { season, week, firstDay, reader }: ZoneInstructions): string {
  const say = weekWords(reader.language);
  const mask = plantingFigure(planting, 'openMask', week);
  if (mask === 0) return say.shut;
  return mask === season.zone.wateringDays ? say.openAll : say.openOn(formatFor(reader), firstDay, mask);
}

function rainWords({ rainCreditMm, rainCreditLitres }: ZoneWeek, reader: Reader): string {
  const say = weekWords(reader.language);
  return rainCreditLitres < 0.5 ? say.noRain : say.rain(formatFor(reader), rainCreditMm, rainCreditLitres);
}

function stateTemplate({ state }: ZoneWeek, reader: Reader): TemplateResult | typeof nothing {
  const { states } = weekWords(reader.language);
  if (state !== 'dry' && state !== 'short' && state !== 'over') return nothing;
  return html`<p class="state ${state}">${states[state]}</p>`;
}

/** What ran can be noted; a week that stands on a hand-set number keeps it, and is noted beside it. */
function canBeChecked({ minutes, origin }: ZoneWeek): boolean {
  return minutes > 0 || origin === 'run';
}

function checkTemplate(
  name: string,
  { origin }: ZoneWeek,
  check: (done: boolean) => void,
  reader: Reader,
): TemplateResult {
  const say = weekWords(reader.language);
  const changed = (event: Event) => check((event.target as HTMLInputElement).checked);
  return html`<label class="check">
    <input type="checkbox" .checked=${live(origin === 'run')} aria-label=${say.done(name)} @change=${changed} />
    <span aria-hidden="true">${say.doneShort}</span>
  </label>`;
}
