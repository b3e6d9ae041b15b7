/** What really ran in a zone, day by day: as it was planned until somebody says otherwise. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { isoDate } from '../../engine/calendar.ts';
import { plantingFigure } from '../../engine/season/planting-week.ts';
import type { PlantingSeason } from '../../engine/season/season.ts';
import { runMask } from '../../engine/season/zone-week.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import { ownValue } from '../../plan/edits/change.ts';
import type { DayRunEdit, Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import type { Plan, PlanDayRun, PlanWeekRun } from '../../plan/schema/plan-schema.ts';
import { dayRunEdits, dayRunOf, type RunWeek } from '../../sheet/entry/run-edits.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { entryField, type Read, type WeekEntries } from './week-entries.ts';

export interface ZoneLog extends RunWeek {
  readonly view: ReadyView;
  readonly entries: WeekEntries;
}

const MOST_DECIMALS = 6;

export function weekLog(log: ZoneLog): TemplateResult {
  const { zone, week, view } = log;
  const reader = readingOf(view);
  const mask = runMask(zone, week) | zone.zone.wateringDays;
  const days = [0, 1, 2, 3, 4, 5, 6].filter((day) => (mask >> day) & 1);
  return html`<details class="log">
    <summary>${weekWords(reader.language).log.title}</summary>
    <ul>${days.map((day) => html`<li>${dayTemplate(log, day)}</li>`)}</ul>
  </details>`;
}

function dayTemplate(log: ZoneLog, day: number): TemplateResult {
  const { zone, firstDay, view, entries } = log;
  const reader = readingOf(view);
  const format = formatFor(reader);
  const say = weekWords(reader.language).log;
  const { name, id } = zone.zone;
  const weekday = format.weekday(firstDay + day);
  const run = dayRunOf(log, day);
  const turned = zone.plantings.filter(({ planting }) => planting.hasShutOff && isInGround(log, planting.id));
  const read = (text: string): Read => {
    if (text.trim() === '') return { kind: 'same' };
    const parsed = parseNumber(text, reader.language);
    if (parsed.kind !== 'number') return { kind: 'refused', why: parsed.why };
    return parsed.value === run.minutes
      ? { kind: 'same' }
      : { kind: 'edit', edit: dayEdit(log, day, { ...run, minutes: parsed.value }) };
  };
  const key = `run-${id}-${isoDate(firstDay + day)}`;
  const minutes = {
    key,
    label: say.minutes(name, weekday),
    text: format.number(run.minutes, MOST_DECIMALS),
    unit: format.minuteUnit,
  };
  return html`<span class="day">${weekday}</span>
    ${entryField({ ...minutes, read }, entries, reader)}
    ${turned.length === 0 ? nothing : turned.map((each) => openBox(log, day, run, each))}`;
}

function openBox(log: ZoneLog, day: number, run: PlanDayRun, { planting }: PlantingSeason): TemplateResult {
  const { firstDay, view, entries, zone } = log;
  const reader = readingOf(view);
  const say = weekWords(reader.language).log;
  const { id, name } = planting;
  const key = `open-${zone.zone.id}-${id}-${isoDate(firstDay + day)}`;
  const open = run.open ?? [];
  const changed = (event: Event) => {
    const isOpen = (event.target as HTMLInputElement).checked;
    const others = open.filter((other) => other !== id);
    entries.send(key, '', dayEdit(log, day, { ...run, open: isOpen ? [...others, id] : others }));
  };
  return html`<label class="check"><input type="checkbox" name=${key} .checked=${live(open.includes(id))}
    aria-label=${say.openOn(name, formatFor(reader).weekday(firstDay + day))} @change=${changed} /><span aria-hidden="true">${say.open(name)}</span></label>`;
}

function isInGround({ zone, week }: ZoneLog, id: string): boolean {
  const planting = zone.plantings.find((each) => each.planting.id === id);
  return planting !== undefined && plantingFigure(planting, 'groundDays', week) > 0;
}

/** A day's run; where the week is not logged by day yet, the other days as they stand with it. */
function dayEdit(log: ZoneLog, day: number, run: PlanDayRun): Edit {
  const { zone, firstDay, view } = log;
  const edit: DayRunEdit = { type: 'set-day-run', zone: zone.zone.id, day: isoDate(firstDay + day), run };
  if (isLoggedByDay(view.plan, log)) return edit;
  const others = dayRunEdits(log).filter(({ day: other }) => other !== edit.day);
  return { type: 'together', action: 'log-weeks', edits: [{ type: 'together', edits: [...others, edit] }] };
}

function isLoggedByDay(plan: Plan, { zone, firstDay }: RunWeek): boolean {
  const weeks = ownValue(plan.log?.runs, zone.zone.id);
  return typeof readWeek<PlanWeekRun>(weeks, plan.season, isoDate(firstDay)) === 'object';
}
