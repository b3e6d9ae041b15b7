/** Step 3: zones, their days, the hours, and what the timer can do. */
import { html, nothing, type TemplateResult } from 'lit';
import { weekdayOf } from '../../engine/calendar.ts';
import { startWords } from '../../language/en/start.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { newZoneId } from '../../plan/ids.ts';
import type { PlanZone, Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { wateringMask } from '../../plan/to-garden/weekday-masks.ts';
import { MONDAY } from '../garden/boxes-field.ts';
import { numberField, timeField } from '../garden/fields.ts';
import { fieldSchema, schemaAt } from '../garden/form-context.ts';
import type { MakeStep, StartContext } from './start-context.ts';
import { assumable, fold, stepHead } from './start-parts.ts';

/** A timer for a garden has no more. */
const MOST_ZONES = 12;

const USUAL_WINDOW = { opensAt: '05:00', hoursPerDay: 3 } as const;

export const makeStep: MakeStep = () => stepTimer;

function stepTimer(context: StartContext): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).timer;
  return html`${stepHead(say.title, say.lead)}
    ${assumable(context, 'zones', zonesTemplate(context))}
    ${assumable(context, 'days', html`${plan.zones.map((zone) => daysTemplate(context, zone))}`)}
    ${assumable(context, 'window', windowTemplate(context))}
    <p class="caution">${say.restrictions}</p>
    ${fold(context, 'timer-limits', say.limits, say.limitsSay, () => html`${plan.zones.map((zone, index) => limitsTemplate(context, zone, index))}`)}`;
}

function zonesTemplate(context: StartContext): TemplateResult {
  const { plan, reader, format, form } = context;
  const say = startWords(reader.language);
  const { zones } = plan;
  const last = zones.at(-1);
  const isLastPlanted = (last?.plantings.length ?? 0) > 0;
  const add = () => {
    const name = say.zone(format, zones.length + 1);
    const wateringDays = last?.wateringDays ?? 3;
    form.send('zones', '', {
      type: 'add-zone',
      zone: { id: newZoneId(plan, name), name, wateringDays, plantings: [] },
    });
  };
  const remove = () => last && form.send('zones', '', { type: 'remove-zone', zone: last.id });
  return html`<div class="stepper" role="group" aria-label=${say.timer.zones.label}>
    <span class="label">${say.timer.zones.label}</span>
    <button name="fewer-zones" aria-label=${say.timer.fewer} ?disabled=${zones.length < 2 || isLastPlanted} @click=${remove}>&minus;</button>
    <output>${format.number(zones.length)}</output>
    <button name="more-zones" aria-label=${say.timer.more} ?disabled=${zones.length >= MOST_ZONES} @click=${add}>+</button>
  </div>
  ${last !== undefined && zones.length > 1 && isLastPlanted ? html`<p class="help">${say.timer.lastHasPlantings(isolated(last.name))}</p>` : nothing}`;
}

/** The days that a zone runs on; a number of days a week is shown as the days that the season takes for it. */
function daysTemplate(context: StartContext, zone: PlanZone): TemplateResult {
  const { reader, format, form } = context;
  const say = startWords(reader.language).timer;
  const { wateringDays: days } = zone;
  const chosen = new Set(typeof days === 'number' ? countedDays(days, context) : days);
  const toggle = (day: Weekday) => (event: Event) => {
    const { checked } = event.target as HTMLInputElement;
    const wateringDays = WEEKDAYS.filter((other) => (other === day ? checked : chosen.has(other)));
    if (wateringDays.length === 0) (event.target as HTMLInputElement).checked = true;
    else form.send(`days-${zone.id}`, '', { type: 'change-zone', zone: zone.id, change: { wateringDays } });
  };
  return html`<div class="days" role="group" aria-label=${say.days(zone.name)}>
    <span class="label">${say.days(zone.name)}</span>
    ${WEEKDAYS.map(
      (day, index) =>
        html`<label class="day"><input type="checkbox" name=${`days-${zone.id}-${day}`} .checked=${chosen.has(day)} @change=${toggle(day)} /><span>${format.weekdays(MONDAY, 1 << index)}</span></label>`,
    )}
  </div>`;
}

function countedDays(count: number, { season }: StartContext): readonly Weekday[] {
  const { span, supply } = season.garden;
  const mask = wateringMask(count, { firstDay: span.firstDay, windowWeekdays: supply.windowWeekdays });
  return WEEKDAYS.filter((_, weekday) => (mask >> ((weekday - weekdayOf(span.firstDay) + 7) % 7)) & 1);
}

function windowTemplate(context: StartContext): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).timer;
  const window = plan.supply?.window ?? USUAL_WINDOW;
  const edit = (change: Partial<typeof window>): Edit => ({
    type: 'change-supply',
    change: { window: { ...window, ...change } },
  });
  const schema = schemaAt({ ...plan, supply: { sources: [], ...plan.supply, window } }, ['supply', 'window']);
  return html`<div class="fields">
    ${timeField({ key: 'opens-at', words: say.opensAt, value: window.opensAt, edit: (opensAt = USUAL_WINDOW.opensAt) => edit({ opensAt }) }, context)}
    ${numberField({ key: 'window-hours', words: say.hours, value: window.hoursPerDay, schema: fieldSchema(schema, 'hoursPerDay'), edit: (hoursPerDay = USUAL_WINDOW.hoursPerDay) => edit({ hoursPerDay }) }, context)}
  </div>`;
}

function limitsTemplate(context: StartContext, zone: PlanZone, index: number): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).timer;
  const schema = schemaAt(plan, ['zones', index]);
  const field = <Field extends 'timerStepMinutes' | 'startsADay' | 'longestCycleMinutes'>(key: Field) => ({
    key: `${zone.id}-${key}`,
    value: zone[key],
    schema: fieldSchema(schema, key),
    edit: (value: number | undefined): Edit => ({ type: 'change-zone', zone: zone.id, change: { [key]: value } }),
  });
  return html`${plan.zones.length === 1 ? nothing : html`<h4>${zone.name}</h4>`}<div class="fields">
    ${numberField({ ...field('timerStepMinutes'), words: say.step, fallback: DEFAULTS.timerStepMinutes }, context)}
    ${numberField({ ...field('startsADay'), words: say.starts, fallback: DEFAULTS.startsADay }, context)}
    ${numberField({ ...field('longestCycleMinutes'), words: say.longest }, context)}
  </div>`;
}
