/** What limits the water beside the source itself: watering restrictions, and weeks in which it is cut. */
import { html, nothing, type TemplateResult } from 'lit';
import { isoDate } from '../../engine/calendar.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { isolated } from '../../language/format/isolated.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanCut, PlanRestriction, PlanSupply } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { weekdaysField } from './boxes-field.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { choiceField, optionsOf, refusal } from './fields.ts';
import { type FormContext, type FormPart, schemaAt } from './form-context.ts';

type SupplyPart = FormPart<Pick<PlanSupply, 'restrictions' | 'cuts'>>;
type ListField = 'restrictions' | 'cuts';
type Entry<Field extends ListField> = NonNullable<PlanSupply[Field]>[number];

const RESTRICTION_FIELDS: FieldTable<PlanRestriction, FormContext> = {
  name: { kind: 'text', isOptional: true },
  from: { kind: 'date', isOptional: true },
  to: { kind: 'date', isOptional: true },
  hoursPerDay: { kind: 'number' },
  weekdays: { kind: 'own', fields: restrictedDays },
};

const CUT_FIELDS: FieldTable<PlanCut, FormContext> = {
  from: { kind: 'date' },
  to: { kind: 'date' },
  share: { kind: 'own', fields: cutAmount },
  // With `share`: one of the two.
  perWeek: { kind: 'own', fields: () => nothing },
};

/** Of a cut that is added: a fifth less, until somebody says otherwise. */
const USUAL_SHARE = 0.2;

const wordsOf = ({ reader }: FormContext) => gardenPlaceWords(reader.language).supply;

export function restrictionFields(supply: SupplyPart, context: FormContext): TemplateResult {
  const { restriction, restrictions: say } = wordsOf(context);
  const add: PlanRestriction = { weekdays: ['tue', 'thu', 'sat'] };
  return listFields('restrictions', { supply, say, add }, context, (entry, part, index) => ({
    name: entry.name === undefined ? say.unnamed(context.format, index) : isolated(entry.name),
    fields: tableFields(RESTRICTION_FIELDS, restriction, part, context),
  }));
}

export function cutFields(supply: SupplyPart, context: FormContext): TemplateResult {
  const { cut, cuts: say } = wordsOf(context);
  const { firstDay, weeks } = context.season.garden.span;
  const add: PlanCut = { from: isoDate(firstDay), to: isoDate(firstDay + 7 * weeks - 1), share: USUAL_SHARE };
  return listFields('cuts', { supply, say, add }, context, (_, part, index) => ({
    name: say.unnamed(context.format, index),
    fields: tableFields(CUT_FIELDS, cut, part, context),
  }));
}

interface ListWords {
  readonly title: string;
  readonly help: string;
  readonly add: string;
}

interface EntryForm {
  readonly name: string;
  readonly fields: unknown;
}

function listFields<Field extends ListField>(
  field: Field,
  list: { readonly supply: SupplyPart; readonly say: ListWords; readonly add: Entry<Field> },
  context: FormContext,
  formOf: (entry: Entry<Field>, part: FormPart<Entry<Field>>, index: number) => EntryForm,
): TemplateResult {
  const { supply, say, add } = list;
  const { plan, form, reader } = context;
  const { actions, actionOn } = gardenWords(reader.language);
  const entries = (supply.value[field] ?? []) as readonly Entry<Field>[];
  const set = (next: readonly Entry<Field>[]) => supply.change({ [field]: next.length === 0 ? undefined : next });
  const key = (index: number, inner: string) => supply.key(`${field}-${index}-${inner}`);
  const entryForm = (entry: Entry<Field>, index: number) => {
    const part: FormPart<Entry<Field>> = {
      value: entry,
      schema: schemaAt(plan, ['supply', field, index]),
      key: (inner) => key(index, inner),
      change: (change) => set(entries.with(index, changed<Entry<Field>>(entry, change))),
    };
    const { name, fields } = formOf(entry, part, index);
    const remove = () => {
      form.send(part.key('remove'), '', set(entries.toSpliced(index, 1)), () => form.forget(supply.key(`${field}-`)));
    };
    return html`<fieldset>
      <legend>${name}</legend>
      <div class="fields">${fields}</div>
      ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${actionOn(actions.remove, name)}</button>${refusal(part.key('remove'), context)}`}
    </fieldset>`;
  };
  const addKey = supply.key(`${field}-add`);
  return html`<div class="wide">
    <h3>${say.title}</h3>
    <p class="help">${say.help}</p>
    ${entries.map(entryForm)}
    ${form.readOnly ? nothing : html`<button name=${addKey} @click=${() => form.send(addKey, '', set([...entries, add]))}>${say.add}</button>${refusal(addKey, context)}`}
  </div>`;
}

function restrictedDays({ value, key, change }: FormPart<PlanRestriction>, context: FormContext): TemplateResult {
  return weekdaysField(
    {
      key: key('weekdays'),
      words: wordsOf(context).restriction.weekdays,
      value: value.weekdays,
      edit: (weekdays) => change({ weekdays: [...(weekdays ?? WEEKDAYS)] }),
    },
    context,
  );
}

/** A share that is taken away, or the water that is left for a week. */
function cutAmount(cut: FormPart<PlanCut>, context: FormContext): TemplateResult {
  const { value, key, change } = cut;
  const say = wordsOf(context).cut;
  const isShare = value.perWeek === undefined;
  const begun = context.plan.units === 'us' ? 500 : 2000;
  const begin = (kind: 'share' | 'perWeek') =>
    change(kind === 'share' ? { share: USUAL_SHARE, perWeek: undefined } : { share: undefined, perWeek: begun });
  return html`${choiceField(
    {
      key: key('kind'),
      words: say.kind,
      value: isShare ? 'share' : 'perWeek',
      options: optionsOf(say.kind.options),
      edit: begin,
    },
    context,
  )}
  ${isShare ? tableFields(SHARE_FIELDS, say, cut, context) : tableFields(WEEK_FIELDS, say, cut, context)}`;
}

const SHARE_FIELDS: FieldTable<Pick<PlanCut, 'share'>, FormContext> = { share: { kind: 'number' } };
const WEEK_FIELDS: FieldTable<Pick<PlanCut, 'perWeek'>, FormContext> = {
  perWeek: { kind: 'number', quantity: 'volume' },
};
