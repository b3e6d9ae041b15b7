/** What to run today, big, each with its box; what is held at the timer; the shut-offs to turn tonight. */
import { html, nothing, type TemplateResult } from 'lit';
import { openRunMask } from '../../engine/season/planting-week.ts';
import type { PlantingSeason, ZoneSeason } from '../../engine/season/season.ts';
import { runMask, zoneFigure, zoneOrigin } from '../../engine/season/zone-week.ts';
import { weekStarts } from '../../explain/schedule/week-starts.ts';
import { howDeepWords } from '../../language/en/how-deep.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { betweenSteps } from '../shared/between-steps.ts';
import { readingOf } from '../shared/plan-state.ts';
import { runDepthsTemplate } from '../shared/run-depths-template.ts';
import { asPlannedOn, dayEdit, runAsItStands } from './week-edits.ts';
import type { SendEdit } from './week-entries.ts';
import {
  litresOn,
  openZones,
  runsOn,
  type TodayRun,
  turnedPlantings,
  type WeekContext,
  zoneDay,
} from './week-model.ts';

const EVERY_DAY = 0b111_1111;

export function todayRuns(context: WeekContext, send: SendEdit): TemplateResult {
  const { view, week, firstDay, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).today;
  const format = formatFor(reader);
  const offset = today - firstDay;
  const runs = runsOn(context, offset);
  const ends = runs.map(({ startMinutes, day }) => (startMinutes.at(-1) ?? 0) + day.minutesPerCycle);
  const left = runs.filter(({ day }) => !day.isLogged);
  const starts = weekStarts(view.season, week);
  return html`<section class="today">
    <div class="head">
      <h3>${say.title}</h3>
      ${runs.length === 0 ? nothing : html`<p class="quiet small">${say.ends(format, Math.max(...ends), litresOn(context, offset))}</p>`}
    </div>
    ${runs.length === 0 ? html`<p>${say.nothing} ${nextRun(context)}</p>` : nothing}
    <ul class="runs">${runs.map((run) => runItem(run, context, send))}</ul>
    ${starts.minutesOver > 0.5 ? html`<p class="short">${say.late(format, starts.minutesOver)}</p>` : nothing}
    ${
      left.length > 1 && !view.readOnly
        ? html`<button class="wide" name="all-done" @click=${() =>
            send(
              asPlannedOn(
                context,
                left.map(({ zone }) => zone),
                offset,
              ),
            )}>${say.allDone}</button>`
        : nothing
    }
    ${starts.isAssumed && runs.length > 0 ? html`<p class="quiet small">${say.usualStart(format, starts.opensAtMinute)}</p>` : nothing}
    ${heldToday(context, send)} ${tonight(context)}
  </section>`;
}

function runItem(run: TodayRun, context: WeekContext, send: SendEdit): TemplateResult {
  const { zone, station, day, startMinutes, pauseMinutes } = run;
  const { view, week, firstDay, ask } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).today;
  const format = formatFor(reader);
  const others = runMask(zone, week) & ~(1 << day.offset);
  const by = byHand(zone, week, reader);
  const cycles = say.cycles(format, day.cycles, day.minutesPerCycle);
  const amount = day.cycles > 1 ? cycles : format.minutes(day.minutes);
  const tick = () =>
    send(dayEdit(context, zone, day.offset, day.isLogged ? undefined : runAsItStands(context, zone, day.offset)));
  return html`<li class=${day.isLogged ? 'ticked' : ''}>
    <span class="station quiet" aria-hidden="true">${station}</span>
    <div class="what">
      <p><strong class="zone">${isolated(zone.zone.name)}</strong>
        <span class="quiet small">${others === 0 ? nothing : (others | (1 << day.offset)) === EVERY_DAY ? say.everyDay : say.also(format, firstDay, others)}</span></p>
      <p class="run"><span class="minutes">${by === undefined ? amount : html`<u title=${by}>${amount}</u>`}</span>
        <span class="start">${say.starts(format, startMinutes)}</span>
        ${ask === undefined ? nothing : html`<button class="plain why" aria-label=${say.whyOf(isolated(zone.zone.name))} @click=${() => ask(zone.zone.id)}>${say.why}</button>`}</p>
      ${by === undefined ? nothing : html`<p class="quiet small">${by}</p>`}
      ${day.state === 'changed' ? html`<p class="small">${say.ran(format, day.minutes, day.planned)}</p>` : nothing}
      ${pauseMinutes > 0 ? html`<p>${say.pause(format, pauseMinutes)}</p>` : nothing}
      ${turnedPlantings(zone, week).map((each) => html`<p>${shutOffLine(each, run, context)}</p>`)}
      ${howDeep(run, context)}
    </div>
    ${
      view.readOnly
        ? nothing
        : html`<button class="tick" role="checkbox" name=${`tick-${zone.zone.id}`} aria-checked=${day.isLogged ? 'true' : 'false'}
            aria-label=${say.done(zone.zone.name)} @click=${tick}><span class=${`box ${day.isLogged ? day.state : 'to-run'}`} aria-hidden="true"></span></button>`
    }
  </li>`;
}

/** That the minutes are set by hand; undefined where they are computed. */
function byHand(zone: ZoneSeason, week: number, reader: Reader): string | undefined {
  if (zoneOrigin(zone, week) !== 'hand-set') return undefined;
  return betweenSteps(zone, week, formatFor(reader)) ?? weekWords(reader.language).today.setByHand;
}

/** Folded: how deep the day's run wets the ground of each planting, and what to look for tomorrow. */
function howDeep({ zone, day }: TodayRun, { view, week }: WeekContext): TemplateResult | typeof nothing {
  const reader = readingOf(view);
  const told = runDepthsTemplate({ season: view.season, zone, week, day: 7 * week + day.offset, reader });
  return told === nothing
    ? nothing
    : html`<details class="small"><summary>${howDeepWords(reader.language).title}</summary>${told}</details>`;
}

/** Its name is bold, because a hand must turn it; what to do today comes first. */
function shutOffLine(planting: PlantingSeason, { zone, day }: TodayRun, context: WeekContext): TemplateResult {
  const { view, week, firstDay } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).shutOff;
  const format = formatFor(reader);
  const all = runMask(zone, week);
  const open = openRunMask(zone, planting, week);
  const bit = 1 << day.offset;
  const words = () => {
    if (open === 0) return say.shutAll;
    if (open === all) return say.openAll;
    if ((open & bit) === 0) return say.shutToday(format, firstDay, open);
    const shut = all & ~open;
    return shut === 0 ? say.openTodayOnly : say.openToday(format, firstDay, shut);
  };
  return html`<strong>${isolated(planting.planting.name)}</strong> ${words()}`;
}

function nextRun(context: WeekContext): string {
  const { view, firstDay, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).today;
  for (let offset = today - firstDay + 1; offset < 7; offset++) {
    const { length } = runsOn(context, offset);
    if (length > 0) return say.nextRun(formatFor(reader), firstDay + offset, length);
  }
  return '';
}

/** A person holds the timer: nothing here turns anything. */
function heldToday(context: WeekContext, send: SendEdit): TemplateResult | typeof nothing {
  const { view, week, firstDay, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).held;
  const format = formatFor(reader);
  const offset = today - firstDay;
  const held = openZones(context).filter(
    (zone) => zoneDay(context, zone, offset).state === 'skipped' && !zoneDay(context, zone, offset).isLogged,
  );
  if (held.length === 0) return nothing;
  const usual = (zone: (typeof held)[number]) => zoneFigure(zone, 'minutesPerDay', week);
  const run = (zone: (typeof held)[number]) =>
    send(dayEdit(context, zone, offset, { ...runAsItStands(context, zone, offset), minutes: usual(zone) }));
  return html`<div class="held">
    <p><strong>${say.title}:</strong> ${format.list(held.map(({ zone }) => isolated(zone.name)))}</p>
    <p class="quiet">${say.why}</p>
    ${
      view.readOnly
        ? nothing
        : held
            .filter((zone) => usual(zone) > 0)
            .map(
              (zone) =>
                html`<button class="plain" @click=${() => run(zone)}>${say.runAnywayOf(zone.zone.name)}</button>`,
            )
    }
  </div>`;
}

/** Shut-offs whose handle stands otherwise tomorrow than today, in zones that run then. */
function tonight(context: WeekContext): TemplateResult | typeof nothing {
  const { view, week, firstDay, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).shutOff;
  const format = formatFor(reader);
  const tomorrow = today - firstDay + 1;
  if (tomorrow > 6) return nothing;
  const turns = view.season.zones.flatMap((zone) => {
    const mask = runMask(zone, week);
    const earlier = mask & ((1 << tomorrow) - 1);
    if (((mask >> tomorrow) & 1) === 0 || earlier === 0) return [];
    const last = 31 - Math.clz32(earlier);
    return turnedPlantings(zone, week).flatMap((planting) => {
      const open = openRunMask(zone, planting, week);
      const isOpen = (open >> tomorrow) & 1;
      return isOpen === ((open >> last) & 1) ? [] : [{ name: isolated(planting.planting.name), isOpen: isOpen === 1 }];
    });
  });
  if (turns.length === 0) return nothing;
  const names = (isOpen: boolean) => turns.filter((turn) => turn.isOpen === isOpen).map(({ name }) => name);
  return html`<p class="tonight"><strong>${say.tonight}:</strong>
    ${names(true).length > 0 ? say.open(format, names(true)) : nothing}
    ${names(false).length > 0 ? say.shut(format, names(false)) : nothing}</p>`;
}
