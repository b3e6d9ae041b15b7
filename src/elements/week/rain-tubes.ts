/** The gauge: the rain of single days in seven tubes, or one total of the week with the day it was read through. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { type DayNumber, isoDate } from '../../engine/calendar.ts';
import { fromSi, toSi } from '../../engine/units.ts';
import { weekWords } from '../../language/en/week.ts';
import { formatFor } from '../../language/format/format.ts';
import { parseQuantity } from '../../language/format/parse-quantity.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { readWeek } from '../../plan/edits/week-records.ts';
import { rainDoubt } from '../../sheet/entry/doubt.ts';
import { filledDaysRemark, readThrough, weatherEntry } from '../../sheet/entry/weather-entry.ts';
import { type ReadyView, readingOf } from '../shared/plan-state.ts';
import { entryField, type Read, type WeekEntries, whyTemplate } from './week-entries.ts';
import type { WeekContext } from './week-model.ts';

export interface RainEntry {
  readonly context: WeekContext;
  readonly days: readonly DayNumber[];
  readonly entries: WeekEntries;
  readonly isTotal: boolean;
  readonly setTotal: (isTotal: boolean) => void;
}

const MOST_DECIMALS = 6;
/** What one press of + or − changes. */
const STEPS = { us: 0.05, metric: 1 } as const;
/** A tube is full at 1 in. */
const FULL_MM = 25.4;
/** A whole number of inches from here on is meant as hundredths: no day's rain comes near it. */
const LEAST_HUNDREDTHS = 10;

export function rainTubes(entry: RainEntry): TemplateResult {
  const { context, days, isTotal, setTotal } = entry;
  const say = weekWords(readingOf(context.view).language).rain;
  return html`<div class="rain-entry">
    <p class="end"><span class="quiet small">${isTotal ? '' : say.each(formatFor(readingOf(context.view)).unit('depth'))}</span> <button class="plain" name="rain-form" @click=${() => setTotal(!isTotal)}>${isTotal ? say.byDay : say.onlyTotal}</button></p>
    ${isTotal ? totalField(entry) : html`<div class="tubes" role="group" aria-label=${say.lastDays}>${days.map((day) => tube(day, entry))}</div>`}
  </div>`;
}

/** What was read on a day, in the plan's unit. */
export function readOn({ plan }: ReadyView, day: DayNumber): number | undefined {
  return plan.log?.days?.[isoDate(day)]?.rain;
}

/** What was read of a week by now, mm; undefined where nothing was. */
export function readRainMm({ view, firstDay }: WeekContext): number | undefined {
  const { plan } = view;
  const total = readWeek(plan.log?.weeks, plan.season, isoDate(firstDay))?.rain;
  const days = [0, 1, 2, 3, 4, 5, 6].flatMap((offset) => readOn(view, firstDay + offset) ?? []);
  if (total === undefined && days.length === 0) return undefined;
  const sum = days.reduce((all, depth) => all + depth, 0);
  return toSi(Math.max(total ?? 0, sum), 'depth', plan.units);
}

function tube(day: DayNumber, { context, entries }: RainEntry): TemplateResult {
  const { view, today } = context;
  const reader = readingOf(view);
  const say = weekWords(reader.language).rain;
  const format = formatFor(reader);
  const { units } = view.plan;
  const known = readOn(view, day);
  const key = `rain-${isoDate(day)}`;
  const name = format.day(day, 'weekdayAndDay');
  const edit = (rain: number | undefined): Edit => ({
    type: 'change-day-weather',
    day: isoDate(day),
    change: { rain },
  });
  const shown = (rain: number | undefined) =>
    rain === undefined ? '' : format.number(rain, MOST_DECIMALS, units === 'us' ? 2 : 0);
  const enter = (text: string, rain: number) => {
    const reading = { mm: toSi(rain, 'depth', units), firstDay: day, days: 1, today } as const;
    const doubt = rain === known ? undefined : rainDoubt(reading, view.season, format);
    entries.send(key, text, edit(rain), { doubt });
  };
  const step = (by: number) => () => {
    const next = Math.max(0, Number(((known ?? 0) + by * STEPS[units]).toFixed(2)));
    if (next !== known) enter(shown(next), next);
  };
  const changed = (event: Event) => {
    const text = (event.target as HTMLInputElement).value;
    if (text.trim() === '') {
      if (known === undefined) entries.take(key);
      else entries.send(key, text, edit(undefined));
      return;
    }
    const parsed = parseQuantity(text, 'depth', reader);
    if (parsed.kind !== 'number') entries.refuse(key, text, () => parsed.why);
    else enter(text, hundredths(text, parsed.value, units));
  };
  const refused = entries.refused(key);
  const full = Math.min(1, toSi(known ?? 0, 'depth', units) / FULL_MM);
  return html`<div class=${`tube ${day === today ? 'now' : ''}`}>
    <span class="small" aria-hidden="true">${format.day(day, 'weekdayShort')}<br />${format.day(day, 'dayOfMonth')}</span>
    <button name=${`${key}-more`} aria-label=${say.more(name)} @click=${step(1)}>+</button>
    <span class="glass">
      <svg aria-hidden="true" viewBox="0 0 10 10" preserveAspectRatio="none"><rect x="0" width="10" y=${10 - 10 * full} height=${10 * full}></rect></svg>
      <input name=${key} inputmode="decimal" autocomplete="off" enterkeyhint="done" aria-label=${say.of(name)} placeholder="&ndash;"
        aria-invalid=${refused === undefined ? nothing : 'true'} aria-describedby=${`${key}-why`}
        .value=${live(refused?.text ?? shown(known))} @focus=${selectAll} @change=${changed} /></span>
    <button name=${`${key}-less`} aria-label=${say.less(name)} ?disabled=${(known ?? 0) === 0} @click=${step(-1)}>&minus;</button>
    ${whyTemplate(key, entries, reader)}
  </div>`;
}

const selectAll = ({ target }: Event): void => (target as HTMLInputElement).select();

function hundredths(text: string, value: number, units: 'us' | 'metric'): number {
  const isWhole = /^\s*\d+\s*$/.test(text);
  return units === 'us' && isWhole && value >= LEAST_HUNDREDTHS ? value / 100 : value;
}

function totalField({ context, entries }: RainEntry): TemplateResult {
  const { view, week, firstDay, today } = context;
  const { plan, season } = view;
  const reader = readingOf(view);
  const format = formatFor(reader);
  const say = weekWords(reader.language).rain;
  const key = `rain-${isoDate(firstDay)}-total`;
  const { rain, rainThrough } = readWeek(plan.log?.weeks, plan.season, isoDate(firstDay)) ?? {};
  const last = isoDate(firstDay + 6);
  const usual = readThrough(firstDay, { today }) ?? last;
  const through = rain === undefined ? (entries.chosen.get(key) ?? usual) : (rainThrough ?? last);
  const edit = (depth: number | undefined, day: string): Edit => ({
    type: 'set-week-rain',
    week: isoDate(firstDay),
    rain: depth,
    through: day,
  });
  const read = (text: string): Read => {
    const parsed = parseQuantity(text, 'depth', reader);
    const meant = parsed.kind === 'number' ? hundredths(text, parsed.value, plan.units) : undefined;
    const typed = meant === undefined ? text : format.number(meant, MOST_DECIMALS);
    const entry = weatherEntry('rain', week, typed, { plan, season, format });
    if (entry.kind !== 'edit' || entry.edit.type !== 'set-week-rain') return entry;
    const depth = entry.edit.rain;
    if (depth === undefined) return { kind: 'edit', edit: edit(depth, through) };
    const reading = { mm: toSi(depth, 'depth', plan.units), firstDay, days: 7, today } as const;
    const total = edit(depth, through);
    const remark = filledDaysRemark('rain', total, { plan, season, format });
    return { kind: 'edit', edit: total, doubt: rainDoubt(reading, season, format), remark };
  };
  const choose = (event: Event) => {
    const day = (event.target as HTMLSelectElement).value;
    entries.chosen.set(key, day);
    if (rain === undefined) entries.take(key);
    else {
      const total = edit(rain, day);
      entries.send(key, format.number(rain, MOST_DECIMALS), total, {
        remark: filledDaysRemark('rain', total, { plan, season, format }),
      });
    }
  };
  const text = rain === undefined ? '' : format.number(rain, MOST_DECIMALS);
  return html`<div class="total" role="group" aria-label=${say.total}>
    <span>${say.total}</span>
    ${entryField({ key, label: say.total, text, unit: format.unit('depth'), read }, entries, reader)}
    <label>${say.through}
      <select .value=${live(through)} @change=${choose}>
        ${[0, 1, 2, 3, 4, 5, 6].map((offset) => {
          const day = isoDate(firstDay + offset);
          return html`<option value=${day} ?selected=${day === through}>${format.weekday(firstDay + offset)}</option>`;
        })}
      </select>
    </label>
    <p class="remark" role="status">${entries.remark(key)}</p>
  </div>`;
}

/** A depth of the engine in the plan's unit, as it is written. */
export function depthText(mm: number, view: ReadyView): string {
  const { units } = view.plan;
  const format = formatFor(readingOf(view));
  return `${format.number(fromSi(mm, 'depth', units), 2, units === 'us' ? 2 : 0)}\u00a0${format.unit('depth')}`;
}

/**
 * A finger on a button beside a field counts where it is lifted: what was typed is entered by then, and may have moved the button away from
 * under the click that follows. That click is left out, and the mouse press before it, which would take the focus from the field.
 */
export const onLifted =
  (act: (event: Event) => void) =>
  (event: TouchEvent): void => {
    // The end of a scroll cannot be prevented.
    if (!event.cancelable) return;
    event.preventDefault();
    act(event);
  };

/** Enters what stands in the field that is being typed in. */
export function leaveField({ currentTarget }: Event): void {
  const { activeElement } = (currentTarget as HTMLElement).getRootNode() as ShadowRoot;
  if (activeElement instanceof HTMLInputElement) activeElement.blur();
}
