/** Weekdays as seven boxes. None ticked means every day. */
import { html, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { Edit } from '../../plan/edits/edit.ts';
import type { Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import type { Field } from './fields.ts';

/** 2001-01-01 was a Monday. */
const monday = Date.UTC(2001, 0, 1);
const MS_PER_DAY = 86_400_000;

export function weekdaysField(
  field: Field & {
    readonly value: readonly Weekday[] | undefined;
    readonly edit: (value: readonly Weekday[] | undefined) => Edit;
  },
): TemplateResult {
  const { form, key, label, value, edit } = field;
  const chosen = new Set(value ?? WEEKDAYS);
  const names = new Intl.DateTimeFormat(form.locale, { weekday: 'short', timeZone: 'UTC' });
  const toggle = (day: Weekday) => (event: Event) => {
    const { checked } = event.target as HTMLInputElement;
    const next = WEEKDAYS.filter((other) => (other === day ? checked : chosen.has(other)));
    form.commit(key, '', edit(next.length === 0 || next.length === WEEKDAYS.length ? undefined : next));
  };
  return html`<div class="field wide" role="group" aria-label=${label}>
    <span class="label">${label}</span>
    <span class="weekdays">
      ${WEEKDAYS.map(
        (day, index) => html`<label class="check"
          ><input type="checkbox" .checked=${live(chosen.has(day))} ?disabled=${form.readOnly} @change=${toggle(day)} />
          <span>${names.format(monday + index * MS_PER_DAY)}</span></label
        >`,
      )}
    </span>
  </div>`;
}
