/** One zone: its timer, its rule, its soil, and the plantings in it. */
import { html, nothing, type TemplateResult } from 'lit';
import { defaultEfficiency } from '../../engine/application/efficiency.ts';
import { gardenGroundWords } from '../../language/en/garden-ground.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { spread } from '../../plan/spread.ts';
import { define } from '../shared/define.ts';
import { PlantSearch } from '../shared/plant-search.ts';
import { applicationField } from './application-field.ts';
import { weekdaysField } from './boxes-field.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { copyZone, createPlanting } from './create-and-copy.ts';
import { daysByMonthFields } from './days-by-month.ts';
import { type FieldTable, tableFields, type Unshown } from './field-table.ts';
import { checkField, choiceField, numberField, optionsOf, refusal } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, schemaAt } from './form-context.ts';
import { howOften } from './how-often.ts';
import { plantingPart } from './planting-form.ts';
import { textureOptions } from './texture-options.ts';

type ZoneFields = Omit<PlanZone, 'id' | 'plantings'>;

type Fields<Field extends keyof ZoneFields> = FieldTable<Pick<ZoneFields, Field>, ZoneContext>;

const FIRST_FIELDS: Fields<'name' | 'wateringDays' | 'wateringDaysByMonth' | 'rule'> = {
  name: { kind: 'text' },
  wateringDays: { kind: 'own', fields: daysFields },
  rule: { kind: 'own', fields: ruleField },
  wateringDaysByMonth: {
    kind: 'own',
    fields: (part, context) => [howOften(context.zone, context), daysByMonthFields(part, context)],
  },
};

const TIMER_FIELDS: Fields<'timerStepMinutes' | 'longestCycleMinutes' | 'startsADay'> = {
  timerStepMinutes: { kind: 'number', fallback: DEFAULTS.timerStepMinutes },
  longestCycleMinutes: { kind: 'number' },
  startsADay: { kind: 'number', fallback: DEFAULTS.startsADay },
};

const GROUND_FIELDS: Fields<'soil' | 'availableWater' | 'slopePercent' | 'application'> = {
  soil: { kind: 'choice', options: textureOptions },
  availableWater: { kind: 'number' },
  slopePercent: { kind: 'number' },
  application: { kind: 'own', fields: applicationFields },
};

const CUT_FIELDS: Fields<'cutOrder' | 'cutExempt' | 'note'> = {
  cutOrder: { kind: 'number' },
  cutExempt: { kind: 'check' },
  note: { kind: 'text', isOptional: true },
};

type Shown =
  | keyof typeof FIRST_FIELDS
  | keyof typeof TIMER_FIELDS
  | keyof typeof GROUND_FIELDS
  | keyof typeof CUT_FIELDS;

interface ZoneContext extends FormContext {
  readonly zone: PlanZone;
}

const wordsOf = ({ reader }: FormContext) => gardenZonesWords(reader.language).zone;

/** Called once, before the first form is shown. */
export function zoneForms(): typeof zoneForm {
  define('runnel-plant-search', PlantSearch);
  return zoneForm;
}

function zoneForm(zone: PlanZone, index: number, around: FormContext): TemplateResult {
  const context: ZoneContext = { ...around, zone };
  const { plan, form, reader, toggle } = context;
  const { addPlanting, newPlanting, noPlantings, noPlantingsYet } = gardenZonesWords(reader.language);
  const { availableWater } = gardenGroundWords(reader.language);
  const { id } = zone;
  const part: FormPart<ZoneFields> & Unshown<ZoneFields, Shown> = {
    value: zone,
    schema: schemaAt(plan, ['zones', index]),
    key: (field) => `zone-${id}-${field}`,
    change: (change) => ({ type: 'change-zone', zone: id, change }),
  };
  const add = () => {
    const planting = createPlanting(plan, newPlanting);
    form.send(part.key('add'), '', { type: 'add-planting', zone: id, planting }, () =>
      toggle(`planting-${planting.id}`, true),
    );
  };
  const actions = {
    copy: () => form.send(part.key('actions'), '', { type: 'add-zone', zone: copyZone(plan, zone), at: index + 1 }),
    move: (to: number) => form.send(part.key('actions'), '', { type: 'move-zone', zone: id, to }),
    remove: () => form.send(part.key('actions'), '', { type: 'remove-zone', zone: id }),
  };
  const say = wordsOf(context);
  const { folds } = say;
  return html`<div class="fields">${tableFields(FIRST_FIELDS, say, part, context)}</div>
    ${zone.plantings.length === 0 ? html`<p class="help">${plan.zones.length > 1 ? noPlantingsYet : noPlantings}</p>` : nothing}
    ${zone.plantings.map((planting, at) => plantingPart({ zone, planting, index: at }, context))}
    ${form.readOnly ? nothing : html`<button class="add" name=${part.key('add')} @click=${add}>${addPlanting}</button>${refusal(part.key('add'), context)}`}
    ${fieldsFold(folds.timer, () => tableFields(TIMER_FIELDS, say, part, context), context)}
    ${fieldsFold(folds.ground, () => tableFields(GROUND_FIELDS, { ...say, availableWater }, part, context), context)}
    ${fieldsFold(folds.cut, () => tableFields(CUT_FIELDS, say, part, context), context)}
    ${copyMoveRemove({ name: isolated(zone.name), key: part.key, index, count: plan.zones.length, ...actions }, context)}`;
}

/** So many days a week, or weekdays named one by one. */
function daysFields(
  { value: { wateringDays }, schema, key, change }: FormPart<Pick<ZoneFields, 'wateringDays'>>,
  context: ZoneContext,
): TemplateResult {
  const say = wordsOf(context);
  const isFixed = typeof wateringDays !== 'number';
  const days = isFixed ? wateringDays.length : wateringDays;
  const allowed = context.plan.supply?.window?.weekdays ?? WEEKDAYS;
  return html`${
    isFixed
      ? weekdaysField(
          {
            key: key('weekdays'),
            words: say.weekdays,
            value: wateringDays,
            edit: (weekdays) => change({ wateringDays: [...(weekdays ?? WEEKDAYS)] }),
          },
          context,
        )
      : numberField(
          {
            key: key('wateringDays'),
            words: say.wateringDays,
            value: days,
            schema: fieldSchema(schema, 'wateringDays'),
            edit: (count = Number.NaN) => change({ wateringDays: count }),
          },
          context,
        )
  }
  ${checkField(
    {
      key: key('isFixed'),
      words: say.isFixed,
      value: isFixed,
      edit: (isOn) => change({ wateringDays: isOn ? [...spread(allowed, days)] : days }),
    },
    context,
  )}`;
}

type Rule = 'thirstiest' | 'area-weighted' | `planting:${string}`;

function ruleField(
  { value: { rule }, key, change }: FormPart<Pick<ZoneFields, 'rule'>>,
  context: ZoneContext,
): TemplateResult {
  const say = wordsOf(context);
  const chosen: Rule =
    rule === undefined ? 'thirstiest' : rule.kind === 'planting' ? `planting:${rule.planting}` : rule.kind;
  const asRule = (value: Rule): PlanZone['rule'] => {
    if (value === 'area-weighted') return { kind: value };
    return value === 'thirstiest' ? undefined : { kind: 'planting', planting: value.slice('planting:'.length) };
  };
  return choiceField<Rule>(
    {
      key: key('rule'),
      words: say.rule,
      value: chosen,
      options: [
        ...optionsOf(say.rule.options),
        ...context.zone.plantings.map(({ id, name }) => ({
          value: `planting:${id}` as const,
          label: say.ruledBy(isolated(name)),
        })),
      ],
      edit: (value) => change({ rule: asRule(value) }),
    },
    context,
  );
}

function applicationFields(zone: FormPart<Pick<ZoneFields, 'application'>>, context: ZoneContext): TemplateResult {
  const say = wordsOf(context);
  const usual = say.usualApplication(context.format, defaultEfficiency('drip'));
  return applicationField(zone, { options: say.application.options, usual }, context);
}
