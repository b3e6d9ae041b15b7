/** The plan's name, its season and its units. */
import { html, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { choiceField, numberField, textField } from './fields.ts';
import type { FormController } from './form-controller.ts';

export function planForm(plan: Plan, form: FormController): TemplateResult {
  const { season, units } = plan;
  return html`<div class="fields">
    ${textField({
      ...{ form, key: 'plan-name', label: words.name, value: plan.name },
      edit: (name) => ({ type: 'rename-plan', name: name ?? '' }),
    })}
    ${textField({
      ...{ form, key: 'first-day', label: words.firstDay, type: 'date', value: season.firstDay },
      edit: (firstDay) => ({ type: 'set-season', season: { ...season, firstDay: firstDay ?? '' } }),
    })}
    ${numberField({
      ...{ form, key: 'weeks', label: words.weeks, value: season.weeks },
      edit: (weeks) => ({ type: 'set-season', season: { ...season, weeks: weeks ?? 0 } }),
    })}
    ${choiceField({
      ...{ form, key: 'units', label: words.units, value: units },
      options: [
        { value: 'us', label: words.us },
        { value: 'metric', label: words.metric },
      ],
      edit: (chosen) => ({ type: 'convert-units', units: chosen as UnitSystem }),
    })}
    ${textField({
      ...{ form, key: 'plan-notes', label: words.note, value: plan.notes, optional: true },
      edit: (notes) => ({ type: 'set-plan-notes', notes }),
    })}
  </div>`;
}
