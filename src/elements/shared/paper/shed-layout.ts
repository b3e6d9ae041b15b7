/** This week for the shed door: large type, a box to tick a day, room for a pencil. */
import { html, nothing, type TemplateResult } from 'lit';
import { openRunMask, plantingFigure } from '../../../engine/season/planting-week.ts';
import type { ZoneSeason } from '../../../engine/season/season.ts';
import { zoneRuns } from '../../../engine/season/zone-runs.ts';
import { runMask, zoneFigure, zoneOrigin, zoneState } from '../../../engine/season/zone-week.ts';
import { weekStarts } from '../../../explain/schedule/week-starts.ts';
import { paperWords } from '../../../language/en/paper.ts';
import { isolated } from '../../../language/format/isolated.ts';
import { betweenSteps } from '../between-steps.ts';
import type { PaperBlock, PaperContext, PaperLayout } from './paper-block.ts';

const DAYS = [0, 1, 2, 3, 4, 5, 6];
const NOTE_LINES = 2;

export function shedLayout(context: PaperContext): PaperLayout {
  const { view, choice, reader, format } = context;
  const say = paperWords(reader.language);
  const firstDay = view.season.garden.span.firstDay + 7 * choice.week;
  const heading = html`<div class="shed row heads"><span>${say.head.zone}</span><span>${say.head.start}</span><span class="end">${say.head.run}<br />${format.minuteUnit}</span>
    ${DAYS.map((day) => html`<span class="day">${format.day(firstDay + day, 'weekdayShort')}<b>${format.day(firstDay + day, 'dayOfMonth')}</b></span>`)}</div>`;
  const rain: PaperBlock = {
    heading,
    content: html`<div class="shed row rain"><span class="wide"><b>${say.rainRead}</b><br /><small>${say.rainUnit(format.unit('depth'))}</small></span>
      ${DAYS.map(() => html`<span class="day"><i class="gauge"></i></span>`)}</div>`,
  };
  // As many of them as the last page has room for.
  const notes = Array.from(
    { length: NOTE_LINES },
    (_, at): PaperBlock => ({
      isOptional: true,
      content: html`<div class="notes">${at === 0 ? say.notes : nothing}<i class="line"></i></div>`,
    }),
  );
  return {
    mayBeDense: true,
    title: html`<header class="shed-title"><div><p class="garden">${isolated(view.plan.name)}</p><h1>${format.days(firstDay, firstDay + 6, 'long')}</h1></div>
      <p class="how">${say.tick.map((line) => html`${line}<br />`)}</p></header>`,
    blocks: [
      ...view.season.zones.map((zone, index) => ({ heading, content: zoneRow(zone, index + 1, context) })),
      rain,
      ...notes,
    ],
  };
}

function zoneRow(zone: ZoneSeason, station: number, context: PaperContext): TemplateResult {
  const { view, choice, reader, format } = context;
  const { week } = choice;
  const say = paperWords(reader.language);
  const state = zoneState(zone, week);
  const starts = weekStarts(view.season, week).zones.get(zone.zone.id);
  const runs = zoneRuns(zone, week);
  const mask = runMask(zone, week);
  const skipped = zoneFigure(zone, 'skippedMask', week);
  const name = html`<span class="zone">${zoneLines(zone, station, context)}</span>`;
  if (starts === undefined || runs.length === 0) {
    const why = state === 'off' ? say.nothingPlanted : state === 'closed' ? say.closed : say.rest;
    return html`<div class="shed row">${name}<span class="idle">${why}</span>
      ${DAYS.map((day) => html`<span class="day">${(skipped >> day) & 1 ? heldBox(say.held) : nothing}</span>`)}</div>`;
  }
  const cycles = Math.max(...runs.map((run) => run.cycles));
  const isOne = runs.length === 1;
  const shown = starts.startMinutes.slice(0, cycles);
  return html`<div class="shed row">${name}
    <span class="start">${shown.map((minute) => html`<span>${format.time(minute)}</span>`)}</span>
    ${runCell(zone, isOne ? shown.length : 1, cycles, context)}
    ${DAYS.map((day) => {
      const runsToday = (mask >> day) & 1;
      if (!runsToday) return html`<span class="day">${(skipped >> day) & 1 ? heldBox(say.held) : nothing}</span>`;
      const own = runs.find((run) => (run.mask >> day) & 1);
      return html`<span class="day"><i class="box"></i>${isOne || own === undefined ? nothing : html`<small>${format.minutes(own.minutes)}</small>`}<i class="pencil"></i>
        ${turned(zone, week).map((planting) => {
          const isOpen = (openRunMask(zone, planting, week) >> day) & 1;
          return html`<span class="turn">${isOpen ? html`<b>${say.open}</b>` : say.shut}</span>`;
        })}</span>`;
    })}</div>`;
}

/** The minutes of each cycle, beside so many of its starts as have the same; where rows are low, once. */
function runCell(
  zone: ZoneSeason,
  alike: number,
  cycles: number,
  { choice: { week }, reader, format }: PaperContext,
): TemplateResult {
  const say = paperWords(reader.language);
  const before = week > 0 ? zoneFigure(zone, 'minutesPerDay', week - 1) : 0;
  const now = zoneFigure(zone, 'minutesPerDay', week);
  const minutes = format.minuteCount(now / Math.max(1, cycles));
  const further = Array.from({ length: alike - 1 }, () => html`<span class="again"><br />${minutes}</span>`);
  return html`<span class="end run">${alike > 1 ? html`<small class="times">${say.times(format, alike)}</small>` : nothing}${minutes}${further}
      ${before > 0 && before !== now ? html`<small>${cycles > 1 ? say.wasInAll(format, now, before) : say.was(format, before)}</small>` : nothing}
      ${zoneOrigin(zone, week) === 'hand-set' ? html`<small>${betweenSteps(zone, week, format) ?? say.setByHand}</small>` : nothing}</span>`;
}

const heldBox = (word: string): TemplateResult => html`<i class="box held"></i><small>${word}</small>`;

function turned(zone: ZoneSeason, week: number) {
  return zone.plantings.filter((each) => each.planting.hasShutOff && plantingFigure(each, 'groundDays', week) > 0);
}

/** Cycles, and a line for each shut-off, level with the words in the days' columns. */
function zoneLines(zone: ZoneSeason, station: number, { view, choice, reader, format }: PaperContext): TemplateResult {
  const { week } = choice;
  const say = paperWords(reader.language);
  const starts = weekStarts(view.season, week).zones.get(zone.zone.id);
  const cycles = Math.max(0, ...zoneRuns(zone, week).map((run) => run.cycles));
  const isRunning = runMask(zone, week) !== 0;
  return html`<span class="top">${station} <b>${isolated(zone.zone.name)}</b>${cycles > 1 && starts ? html`<small>${say.cycles(format, cycles, starts.pauseMinutes)}</small>` : nothing}</span>
    ${isRunning ? turned(zone, week).map(({ planting }) => html`<span class="turn">${say.shutOff(isolated(planting.name))}</span>`) : nothing}`;
}
