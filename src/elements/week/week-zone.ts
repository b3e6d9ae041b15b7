/** One zone's instructions for a week. */

import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { openRunMask, plantingFigure, refillOf } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { type ZoneRuns, zoneRuns } from '../../engine/season/zone-runs.ts';
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
  /** Whether the week is over. */
  readonly isPast: boolean;
  /** What ran day by day. */
  readonly log: TemplateResult | undefined;
}

export function weekZone(instructions: ZoneInstructions): TemplateResult {
  const { season, week, reader, note, hasClimate, check, isPast, log } = instructions;
  const cell = zoneWeek(season, week);
  const { name } = season.zone;
  const say = weekWords(reader.language);
  const isUnknown = !hasClimate && cell.minutes === 0 && cell.state !== 'off' && cell.state !== 'closed';
  return html`<article class=${cell.minutes > 0 ? 'runs' : 'rests'}>
    <h3>${name}</h3>
    <p class="task">${isUnknown ? say.unknown : taskTemplate(cell, instructions)}</p>
    ${decisionsTemplate(cell, instructions)} ${plantingsTemplate(cell, instructions)}
    <p class="quiet small">${rainWords(cell, reader)}</p>
    ${stateTemplate(cell, reader)} ${note === undefined ? nothing : html`<p class="note">${note}</p>`}
    ${isPast && isPlanned(cell) ? html`<p class="assumed quiet">${say.assumed}</p>` : nothing}
    ${check === undefined || !canBeChecked(cell) ? nothing : checkTemplate(name, cell, check, reader)}
    ${log === undefined || cell.state === 'off' || cell.origin === 'closed' ? nothing : log}
  </article>`;
}

function taskTemplate(cell: ZoneWeek, instructions: ZoneInstructions): TemplateResult | string {
  const { season, reader } = instructions;
  const say = weekWords(reader.language);
  if (cell.state === 'off') return say.off;
  if (cell.state === 'closed') return say.closed;
  if (cell.minutes === 0) return cell.skippedMask === 0 ? say.nothing : say.skipped;
  const { litres, origin } = cell;
  const amount = say.amounts[origin === 'hand-set' || origin === 'run' ? origin : 'computed'];
  const runs = zoneRuns(season, cell.week);
  const hasCycles = runs.some(({ cycles }) => cycles > 1);
  return html`${runs.map((each) => runsTemplate(each, instructions))}
    ${hasCycles ? html`<span class="soak">${say.soak}</span>` : nothing}
    <span class="quiet">${amount(formatFor(reader), litres)}</span>`;
}

/** Days that run alike. */
function runsTemplate({ mask, minutes, cycles }: ZoneRuns, { firstDay, reader }: ZoneInstructions): TemplateResult {
  const say = weekWords(reader.language);
  const format = formatFor(reader);
  return html`<strong>${mask === EVERY_DAY ? say.runDaily(format, minutes) : say.runOn(format, minutes, firstDay, mask)}</strong>
    ${cycles > 1 ? html`<span>${say.cycles(format, cycles, minutes / cycles)}</span>` : nothing}`;
}

/** Why some days are without a run, and why those that run differ. */
function decisionsTemplate(cell: ZoneWeek, { season, firstDay, reader }: ZoneInstructions): TemplateResult {
  const { minutes, skippedMask, decidedMask, week } = cell;
  const say = weekWords(reader.language);
  const format = formatFor(reader);
  const isUneven = zoneRuns(season, week).length > 1 || (minutes > 0 && skippedMask !== 0);
  const anew = decidedMask & (decidedMask - 1);
  return html`${minutes > 0 && skippedMask !== 0 ? html`<p>${say.skippedOn(format, firstDay, skippedMask)}</p>` : nothing}
    ${isUneven && anew !== 0 ? html`<p class="quiet small">${say.anew(format, firstDay, anew)}</p>` : nothing}`;
}

/** Those that a hand must turn, where the zone runs, and those that were due for a refill. */
function plantingsTemplate(cell: ZoneWeek, instructions: ZoneInstructions): TemplateResult | typeof nothing {
  const told = instructions.season.plantings.flatMap((each) => {
    const words = plantingWords(each, cell, instructions);
    return words.length === 0
      ? []
      : [html`<dt>${isolated(each.planting.name)}</dt>${words.map((says) => html`<dd>${says}</dd>`)}`];
  });
  return told.length === 0 ? nothing : html`<dl>${told}</dl>`;
}

function plantingWords(planting: PlantingSeason, { week, minutes }: ZoneWeek, of: ZoneInstructions): readonly string[] {
  const { hasShutOff } = planting.planting;
  const isTurned = hasShutOff && minutes > 0 && plantingFigure(planting, 'groundDays', week) > 0;
  const refill = refillOf(planting, week);
  return [
    ...(isTurned ? [shutOffWords(planting, of)] : []),
    ...(refill === undefined ? [] : [weekWords(of.reader.language).refill[refill]]),
  ];
}

function shutOffWords(planting: PlantingSeason, { season, week, firstDay, reader }: ZoneInstructions): string {
  const say = weekWords(reader.language);
  const mask = openRunMask(season, planting, week);
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

/** Nothing is logged, and there was something to run. */
function isPlanned({ minutes, origin }: ZoneWeek): boolean {
  return minutes > 0 && origin !== 'run';
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
