/** What one zone really ran: its days, the minutes, the shut-offs. */
import { html, nothing, type TemplateResult } from 'lit';
import { isoDate } from '../../engine/calendar.ts';
import type { ZoneSeason } from '../../engine/season/season.ts';
import { weekCloseWords } from '../../language/en/week-close.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import { parseNumber } from '../../language/format/parse-number.ts';
import type { PlanDayRun } from '../../plan/schema/plan-schema.ts';
import { readingOf } from '../shared/plan-state.ts';
import type { Closing } from './closing.ts';
import { dayEdit, runAsItStands } from './week-edits.ts';
import { entryField, type Read } from './week-entries.ts';
import { turnedPlantings, zoneDay } from './week-model.ts';

const MOST_DECIMALS = 6;
/** What one press changes: minutes, or the timer's step where that is longer. */
const STEP_MINUTES = 5;

export function closeZone({ context, state, entries, send, change }: Closing, zone: ZoneSeason): TemplateResult {
  const { view, week, firstDay } = context;
  const reader = readingOf(view);
  const say = weekCloseWords(reader.language);
  const format = formatFor(reader);
  const offset = state.offset ?? 0;
  const day = zoneDay(context, zone, offset);
  const run = runAsItStands(context, zone, offset);
  const set = (next: PlanDayRun) => send(dayEdit(context, zone, offset, next));
  const step = Math.max(STEP_MINUTES, zone.zone.timerStepMinutes);
  const by = (minutes: number) => () => set({ ...run, minutes: Math.max(0, run.minutes + minutes) });
  const weekday = format.weekday(firstDay + offset);
  const read = (text: string): Read => {
    const parsed = parseNumber(text, reader.language);
    if (parsed.kind !== 'number') return { kind: 'refused', why: parsed.why };
    if (parsed.value === run.minutes && day.isLogged) return { kind: 'same' };
    return { kind: 'edit', edit: dayEdit(context, zone, offset, { ...run, minutes: parsed.value }) };
  };
  return html`<div class="edit-zone" role="group" aria-label=${say.edit(zone.zone.name)}>
    <div class="segments" role="group" aria-label=${say.days(zone.zone.name)}>
      ${[0, 1, 2, 3, 4, 5, 6].map(
        (each) =>
          html`<button name=${`day-${each}`} aria-pressed=${each === offset ? 'true' : 'false'} @click=${() => change({ offset: each })}>${format.day(firstDay + each, 'weekdayShort')}</button>`,
      )}
    </div>
    <div class="stepper">
      <button name="fewer" aria-label=${say.fewer} ?disabled=${run.minutes === 0} @click=${by(-step)}>&minus;</button>
      ${entryField(
        {
          key: `run-${zone.zone.id}-${isoDate(firstDay + offset)}`,
          label: say.minutes(zone.zone.name, weekday),
          text: format.number(run.minutes, MOST_DECIMALS),
          unit: format.minuteUnit,
          read,
        },
        entries,
        reader,
      )}
      <button name="more" aria-label=${say.more} @click=${by(step)}>+</button>
    </div>
    <span class="quiet">${say.planned(format, day.planned)}</span>
    ${
      run.minutes > 0
        ? html`<button class="plain" name="not-run" @click=${() => set({ ...run, minutes: 0 })}>${say.notRun}</button>`
        : nothing
    }
    ${
      day.isLogged && day.state === 'changed'
        ? html`<button class="plain" name="planned" @click=${() => send(dayEdit(context, zone, offset, undefined))}>${say.asPlannedAgain}</button>`
        : nothing
    }
    ${turnedPlantings(zone, week).map(({ planting }) => {
      const open = run.open ?? [];
      const isOpen = open.includes(planting.id);
      const turn = (next: boolean) => () => {
        const others = open.filter((id) => id !== planting.id);
        set({ ...run, open: next ? [...others, planting.id] : others });
      };
      return html`<div class="turn"><span>${isolated(planting.name)}</span>
        <span class="segments" role="group" aria-label=${say.shutOff(planting.name)}>
          <button name=${`open-${planting.id}`} aria-pressed=${isOpen ? 'true' : 'false'} @click=${turn(true)}>${say.open}</button>
          <button name=${`shut-${planting.id}`} aria-pressed=${isOpen ? 'false' : 'true'} @click=${turn(false)}>${say.shut}</button>
        </span></div>`;
    })}
  </div>`;
}
