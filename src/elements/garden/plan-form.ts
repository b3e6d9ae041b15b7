/** The plan's name, its season and its units. */
import { html, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import type { FieldKeeper } from './field-keeper.ts';
import { choiceField, numberField, textField } from './fields.ts';

export function planForm(plan: Plan, keeper: FieldKeeper): TemplateResult {
  const { season, units } = plan;
  return html`<div class="fields">
    ${textField({
      ...{ keeper, key: 'plan-name', label: words.name, value: plan.name },
      edit: (name) => ({ type: 'rename-plan', name: name ?? '' }),
    })}
    ${textField({
      ...{ keeper, key: 'first-day', label: words.firstDay, type: 'date', value: season.firstDay },
      edit: (firstDay) => ({ type: 'set-season', season: { ...season, firstDay: firstDay ?? '' } }),
    })}
    ${numberField({
      ...{ keeper, key: 'weeks', label: words.weeks, value: season.weeks },
      edit: (weeks) => ({ type: 'set-season', season: { ...season, weeks: weeks ?? 0 } }),
    })}
    ${choiceField({
      ...{ keeper, key: 'units', label: words.units, value: units },
      options: [
        { value: 'us', label: words.us },
        { value: 'metric', label: words.metric },
      ],
      edit: (chosen) => ({ type: 'convert-units', units: chosen as UnitSystem }),
    })}
    ${textField({
      ...{ keeper, key: 'plan-notes', label: words.note, value: plan.notes, optional: true },
      edit: (notes) => ({ type: 'set-plan-notes', notes }),
    })}
  </div>`;
}
