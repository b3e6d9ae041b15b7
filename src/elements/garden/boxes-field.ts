/** Weekdays and months as boxes of which any may be ticked. */
import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { dayNumber } from '../../engine/calendar.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { type FieldContext, refusal } from './fields.ts';

interface GroupOfBoxes {
  /** Unlike any other of the page. */
  readonly key: string;
  readonly words: { readonly label: string; readonly help?: string };
}

export interface WeekdaysField extends GroupOfBoxes {
  readonly value: readonly Weekday[] | undefined;
  readonly edit: (value: readonly Weekday[] | undefined) => Edit;
}

export interface MonthsField extends GroupOfBoxes {
  /** 1 to 12. */
  readonly value: readonly number[];
  /** In the order of the year; empty where none is ticked. */
  readonly edit: (value: readonly number[]) => Edit;
}

/** A week that begins on a Monday. */
export const MONDAY = dayNumber('2001-01-01');

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

/** None ticked means every day. */
export function weekdaysField(
  { value = WEEKDAYS, edit, ...group }: WeekdaysField,
  context: FieldContext,
): TemplateResult {
  const boxes = WEEKDAYS.map((id, index) => ({ id, label: context.format.weekdays(MONDAY, 1 << index) }));
  const ticked = (next: readonly Weekday[]) =>
    edit(next.length === 0 || next.length === WEEKDAYS.length ? undefined : next);
  return boxesOf({ ...group, boxes, value, edit: ticked }, context);
}

export function monthsField(field: MonthsField, context: FieldContext): TemplateResult {
  const boxes = MONTHS.map((id) => ({ id, label: context.format.month(id - 1) }));
  return boxesOf<number>({ ...field, boxes }, context);
}

interface Boxes<Id extends string | number> extends GroupOfBoxes {
  readonly boxes: readonly { readonly id: Id; readonly label: string }[];
  readonly value: readonly Id[];
  /** In the order of the boxes. */
  readonly edit: (value: readonly Id[]) => Edit;
}

function boxesOf<Id extends string | number>(
  { key, words, boxes, value, edit }: Boxes<Id>,
  context: FieldContext,
): TemplateResult {
  const { form } = context;
  const ticked = boxes.filter(({ id }) => value.includes(id)).map(({ label }) => label);
  form.facts.tell(ticked.length < boxes.length && context.format.list(ticked), words.label);
  const toggle = (id: Id) => (event: Event) => {
    const { checked } = event.target as HTMLInputElement;
    const next = boxes.map((box) => box.id).filter((other) => (other === id ? checked : value.includes(other)));
    form.send(key, '', edit(next));
  };
  const box = ({ id, label }: { readonly id: Id; readonly label: string }) => html`<label class="check"
    ><input name=${`${key}-${id}`} type="checkbox" .checked=${live(value.includes(id))} ?disabled=${form.readOnly} @change=${toggle(id)} />
    <span>${label}</span></label
  >`;
  return html`<div class="field wide" role="group" aria-label=${words.label}>
    <span class="label">${words.label}</span>
    <span class="weekdays">${boxes.map(box)}</span>
    ${words.help === undefined ? nothing : html`<p class="help">${words.help}</p>`}
    ${refusal(key, context)}
  </div>`;
}
