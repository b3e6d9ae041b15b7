/** The whole week on one form: a row a zone, a box a watering day. */
import { html, nothing, type TemplateResult } from 'lit';
import { openRunMask, refillOf } from '../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { zoneRuns } from '../../engine/season/zone-runs.ts';
import { runMask, zoneFigure, zoneState } from '../../engine/season/zone-week.ts';
import { weekStarts } from '../../explain/schedule/week-starts.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { betweenSteps } from '../shared/between-steps.ts';
import { readingOf } from '../shared/plan-state.ts';
import { DAYS, turnedPlantings, type WeekContext, type ZoneDay, zoneDays } from './week-model.ts';

export interface WeekTable {
  readonly context: WeekContext;
  readonly hasClimate: boolean;
  /** Left out where boxes can only be looked at. */
  readonly press?: ((zone: ZoneSeason, day: ZoneDay) => void) | undefined;
  /** Whether a box may be pressed. */
  readonly canPress: (zone: ZoneSeason, day: ZoneDay) => boolean;
  /** Whether what is to be set stands under a zone's name. */
  readonly isFull: boolean;
  /** Under a row, where one is unfolded. */
  readonly unfolded?: ((zone: ZoneSeason) => TemplateResult | typeof nothing) | undefined;
  readonly pressName?: ((zone: ZoneSeason) => void) | undefined;
  readonly nameLabel?: ((zone: string) => string) | undefined;
}

export function weekTable(table: WeekTable): TemplateResult {
  const { context } = table;
  const { view, firstDay, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).table;
  const format = formatFor(reader);
  return html`<div class="table" role="table" aria-label=${say.title}>
    <div class="row heads" role="row">
      <span class="name" role="columnheader"><span class="visually-hidden">${say.zone}</span></span>
      ${DAYS.map(
        (offset) => html`<span class=${`day ${firstDay + offset === today ? 'now' : ''}`} role="columnheader"
          ><span class="visually-hidden">${format.day(firstDay + offset, 'weekdayAndDay')}</span><span aria-hidden="true">${format.day(firstDay + offset, 'weekdayLetter')}<br />${format.day(firstDay + offset, 'dayOfMonth')}</span></span>`,
      )}
    </div>
    ${view.season.zones.map((zone, index) => row(zone, index + 1, table))}
  </div>`;
}

/** What the boxes mean: those that stand in the week. */
export function tableKey(context: WeekContext): TemplateResult {
  const say = weekWords(readingOf(context.view).language).table;
  const met = new Set(context.view.season.zones.flatMap((zone) => zoneDays(context, zone).map(({ state }) => state)));
  const states = (['to-run', 'done', 'changed', 'skipped'] as const).filter((state) => met.has(state));
  return html`<p class="key quiet small">${states.map((state) => html`<span><span class=${`box ${state}`} aria-hidden="true">${state === 'changed' ? '15' : nothing}</span> ${say.key[state]}</span>`)}</p>`;
}

function row(zone: ZoneSeason, station: number, table: WeekTable): TemplateResult {
  const { context, isFull, pressName, nameLabel, unfolded } = table;
  const { firstDay, today } = context;
  const name = html`<strong>${isolated(zone.zone.name)}</strong>`;
  return html`<div class="row" role="row">
      <span class="name" role="rowheader"><span class="station quiet" aria-hidden="true">${station}</span>
        <span>${
          pressName === undefined
            ? name
            : html`<button class="zone-name" name=${`zone-${zone.zone.id}`} aria-label=${nameLabel?.(isolated(zone.zone.name)) ?? nothing} @click=${() => pressName(zone)}>${name}</button>`
        }${isFull ? details(zone, table) : nothing}</span></span>
      ${zoneDays(context, zone).map(
        (day) =>
          html`<span class=${`day ${firstDay + day.offset === today ? 'now' : ''}`} role="cell">${box(zone, day, table)}</span>`,
      )}
    </div>
    ${unfolded?.(zone) ?? nothing}`;
}

function box(zone: ZoneSeason, day: ZoneDay, { context, press, canPress }: WeekTable): TemplateResult {
  const { view, firstDay } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).table.box;
  const format = formatFor(reader);
  const label = say[day.state](format.weekday(firstDay + day.offset), format.minutes(day.minutes));
  const sign = html`<span class=${`box ${day.state}`} aria-hidden="true">${day.state === 'changed' ? format.minuteCount(day.minutes) : nothing}</span>`;
  if (press !== undefined && canPress(zone, day)) {
    return html`<button class="cell" name=${`box-${zone.zone.id}-${day.offset}`} aria-label=${`${isolated(zone.zone.name)}, ${label}`} @click=${() => press(zone, day)}>${sign}</button>`;
  }
  return html`${sign}<span class="visually-hidden">${label}</span>`;
}

/** Start and minutes, cycles with their pause, shut-offs, the note. */
function details(zone: ZoneSeason, { context, hasClimate }: WeekTable): TemplateResult {
  const { view, week, firstDay } = context;
  const reader = readingOf(view);
  const words = weekWords(reader.language);
  const format = formatFor(reader);
  const state = zoneState(zone, week);
  const starts = weekStarts(view.season, week).zones.get(zone.zone.id);
  const note = zone.zone.choices.get(week)?.note;
  const idle = () => {
    if (state === 'off') return words.table.off;
    if (state === 'closed') return words.table.closed;
    return hasClimate ? words.table.nothing : words.table.unknown;
  };
  const between = betweenSteps(zone, week, format);
  const runs = zoneRuns(zone, week);
  const [first] = runs;
  const amount = ({ cycles, minutes }: NonNullable<typeof first>) =>
    cycles > 1 ? words.today.cycles(format, cycles, minutes / cycles) : format.minutes(minutes);
  const cycles = Math.max(1, ...runs.map((run) => run.cycles));
  return html`${
    starts === undefined || first === undefined
      ? html`<span class="line quiet">${idle()}</span>`
      : html`<span class="line">${words.today.starts(format, starts.startMinutes.slice(0, cycles))},
          ${runs.length === 1 ? amount(first) : words.table.differs(format, firstDay, runs)}</span>
        ${cycles > 1 ? html`<span class="line">${words.today.pause(format, starts.pauseMinutes)}</span>` : nothing}
        ${between === undefined ? nothing : html`<span class="line">${between}</span>`}`
  }
  ${turnedPlantings(zone, week).map((each) => {
    const open = openRunMask(zone, each, week);
    const all = runMask(zone, week);
    if (all === 0) return nothing;
    const says = () => {
      if (open === 0) return words.shutOff.shutAll;
      return open === all ? words.shutOff.openAll : words.shutOff.openOn(format, firstDay, open);
    };
    return html`<span class="line quiet">${isolated(each.planting.name)} ${says()}</span>`;
  })}
  ${zone.plantings.map((each) => {
    const refill = refillOf(each, week);
    return refill === undefined
      ? nothing
      : html`<span class="line quiet refill">${isolated(each.planting.name)}: ${words.refill[refill]}</span>`;
  })}
  ${state === 'dry' || state === 'short' ? html`<span class="line short">${words.table.states[state]}</span>` : nothing}
  ${note === undefined ? nothing : html`<span class="line note">${note}</span>`}`;
}

export function weekLitres({ view, week }: WeekContext): number {
  return view.season.zones.reduce((sum, zone) => sum + zoneFigure(zone, 'litres', week), 0);
}
