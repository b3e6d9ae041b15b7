/** One zone: its timer, its rule, its soil, and the plantings in it. */

import { html, nothing, type TemplateResult } from 'lit';
import { defaultEfficiency } from '../../engine/application/efficiency.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { spread } from '../../plan/spread.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { copyZone, createPlanting } from './create-and-copy.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { checkField, choiceField, numberField, optionsOf, refusal, weekdaysField } from './fields.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';
import { plantingPart } from './planting-form.ts';
import { textureOptions } from './site-form.ts';
import { zoneSummary } from './summaries.ts';

type ZoneFields = Omit<PlanZone, 'id' | 'plantings'>;
type Application = NonNullable<PlanZone['application']>;

const ZONE_FIELDS: FieldTable<ZoneFields, ZoneContext> = {
  name: { kind: 'text' },
  wateringDays: { kind: 'own', fields: daysFields },
  rule: { kind: 'own', fields: ruleField },
  timerStepMinutes: { kind: 'number', fallback: DEFAULTS.timerStepMinutes },
  longestCycleMinutes: { kind: 'number' },
  startsADay: { kind: 'number', fallback: DEFAULTS.startsADay },
  soil: { kind: 'choice', options: textureOptions },
  slopePercent: { kind: 'number' },
  application: { kind: 'own', fields: applicationFields },
  note: { kind: 'text', isOptional: true },
};

interface ZoneContext extends FormContext {
  readonly zone: PlanZone;
}

const wordsOf = ({ reader }: FormContext) => gardenZonesWords(reader.language).zone;

export function zonePart(zone: PlanZone, index: number, context: FormContext): TemplateResult {
  const { isOpen, toggle } = context;
  const key = `zone-${zone.id}`;
  return html`<details class="part" ?open=${isOpen(key)} @toggle=${(event: ToggleEvent) => toggle(key, event.newState === 'open')}>
    <summary><span class="part-name">${isolated(zone.name)}</span> <span class="quiet">${zoneSummary(zone, context)}</span></summary>
    ${isOpen(key) ? html`<div class="part-body">${zoneForm(zone, index, { ...context, zone })}</div>` : nothing}
  </details>`;
}

function zoneForm(zone: PlanZone, index: number, context: ZoneContext): TemplateResult {
  const { plan, form, reader, toggle } = context;
  const { addPlanting, newPlanting } = gardenZonesWords(reader.language);
  const { id } = zone;
  const part: FormPart<ZoneFields> = {
    value: zone,
    schema: schemaAt(plan, ['zones', index]),
    key: (field) => `zone-${id}-${field}`,
    change: (change) => ({ type: 'change-zone', zone: id, change }),
  };
  const add = () => {
    const planting = createPlanting(plan, newPlanting);
    const { ok } = form.send(part.key('add'), '', { type: 'add-planting', zone: id, planting });
    if (ok) toggle(`planting-${planting.id}`, true);
  };
  const actions = {
    copy: () => form.send(part.key('actions'), '', { type: 'add-zone', zone: copyZone(plan, zone), at: index + 1 }),
    move: (to: number) => form.send(part.key('actions'), '', { type: 'move-zone', zone: id, to }),
    remove: () => form.send(part.key('actions'), '', { type: 'remove-zone', zone: id }),
  };
  return html`<div class="fields">${tableFields(ZONE_FIELDS, wordsOf(context), part, context)}</div>
    ${copyMoveRemove({ name: isolated(zone.name), key: part.key, index, count: plan.zones.length, ...actions }, context)}
    ${zone.plantings.map((planting, at) => plantingPart({ zone, planting, index: at }, context))}
    ${form.readOnly ? nothing : html`<button class="add" name=${part.key('add')} @click=${add}>${addPlanting}</button>${refusal(part.key('add'), context)}`}`;
}

/** So many days a week, or weekdays named one by one. */
function daysFields(
  { value: { wateringDays }, schema, key, change }: FormPart<ZoneFields>,
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

function ruleField({ value: { rule }, key, change }: FormPart<ZoneFields>, context: ZoneContext): TemplateResult {
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
          label: say.ruledBy(name),
        })),
      ],
      edit: (value) => change({ rule: asRule(value) }),
    },
    context,
  );
}

/** What a share that is asked for begins with. */
const BEGUN: Readonly<Record<Application['kind'], Application>> = {
  efficiency: { kind: 'efficiency', value: defaultEfficiency('drip') },
  'distribution-uniformity': { kind: 'distribution-uniformity', value: 0.8 },
  computed: { kind: 'computed' },
};

function applicationFields(zone: FormPart<ZoneFields>, context: ZoneContext): TemplateResult {
  const { application } = zone.value;
  const say = wordsOf(context);
  const usual = say.usualApplication(context.format, defaultEfficiency('drip'));
  return html`${choiceField<Application['kind'] | ''>(
    {
      key: zone.key('application'),
      words: say.application,
      value: application?.kind ?? '',
      options: [{ value: '', label: usual }, ...optionsOf(say.application.options)],
      edit: (kind) => zone.change({ application: kind === '' ? undefined : BEGUN[kind] }),
    },
    context,
  )}
  ${application === undefined || application.kind === 'computed' ? nothing : shareField(zone, application, context)}`;
}

function shareField(
  zone: FormPart<ZoneFields>,
  application: Exclude<Application, { kind: 'computed' }>,
  context: ZoneContext,
): TemplateResult {
  const { schema, key, change } = innerPart(zone, 'application', application);
  return numberField(
    {
      key: key('value'),
      words: wordsOf(context).share[application.kind],
      value: application.value,
      schema: fieldSchema(schema, 'value'),
      edit: (value) => change({ value }),
    },
    context,
  );
}
