/** The plan's name, its season and its units. */
import { html, type TemplateResult } from 'lit';
import { gardenWords } from '../../language/en/garden.ts';
import { choiceField, dateField, numberField, optionsOf, textField } from './fields.ts';
import { type FormContext, schemaAt } from './form-context.ts';

export function planForm(context: FormContext): TemplateResult {
  const { name, season, units, notes } = context.plan;
  const { plan: say, unitSystems } = gardenWords(context.reader.language);
  return html`<div class="fields">
    ${textField(
      { key: 'plan-name', words: say.name, value: name, edit: (text = '') => ({ type: 'rename-plan', name: text }) },
      context,
    )}
    ${dateField(
      {
        key: 'first-day',
        words: say.firstDay,
        value: season.firstDay,
        edit: (firstDay = '') => ({ type: 'set-season', season: { ...season, firstDay } }),
      },
      context,
    )}
    ${numberField(
      {
        key: 'weeks',
        words: say.weeks,
        value: season.weeks,
        schema: schemaAt(context.plan, ['season', 'weeks']),
        edit: (weeks = Number.NaN) => ({ type: 'set-season', season: { ...season, weeks } }),
      },
      context,
    )}
    ${choiceField(
      {
        key: 'units',
        words: say.units,
        value: units,
        options: optionsOf(unitSystems),
        edit: (chosen) => ({ type: 'convert-units', units: chosen }),
      },
      context,
    )}
    ${textField(
      {
        key: 'plan-notes',
        words: say.notes,
        value: notes,
        isOptional: true,
        edit: (text) => ({ type: 'set-plan-notes', notes: text }),
      },
      context,
    )}
  </div>`;
}
