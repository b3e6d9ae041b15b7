/** The water supply: sources, watering window, allowance, tank. */

import { html, nothing, type TemplateResult } from 'lit';
import { bucketTestFlowLpm } from '../../engine/supply/bucket-test.ts';
import { toSi } from '../../engine/units.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanSupply } from '../../plan/schema/plan-schema.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { checkField, choiceField, numberField, optionsOf, refusal, weekdaysField } from './fields.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';

type Source = PlanSupply['sources'][number];
type Flow = NonNullable<Source['flow']>;
type Bucket = Extract<Flow, { kind: 'bucket' }>;
type Tank = NonNullable<PlanSupply['tank']>;

const SUPPLY_FIELDS: FieldTable<Omit<PlanSupply, 'sources'>, FormContext> = {
  window: { kind: 'own', fields: windowFields },
  allowance: { kind: 'own', fields: allowanceFields },
  tank: { kind: 'own', fields: tankFields },
};

const SOURCE_FIELDS: FieldTable<Source, FormContext> = {
  name: { kind: 'text' },
  from: { kind: 'date', isOptional: true },
  flow: { kind: 'own', fields: flowFields },
  pressure: { kind: 'number', quantity: 'pressure' },
};

const TYPED_FLOW_FIELDS: FieldTable<Omit<Extract<Flow, { kind: 'typed' }>, 'kind'>, FormContext> = {
  flow: { kind: 'number', quantity: 'supplyFlow' },
};

const BUCKET_FIELDS: FieldTable<Omit<Bucket, 'kind'>, FormContext> = {
  volume: { kind: 'number', quantity: 'volume' },
  seconds: { kind: 'number' },
};

const ALLOWANCE_FIELDS: FieldTable<NonNullable<PlanSupply['allowance']>, FormContext> = {
  perWeek: { kind: 'number', quantity: 'volume' },
  perSeason: { kind: 'number', quantity: 'volume' },
};

const TANK_FIELDS: FieldTable<Tank, FormContext> = {
  capacity: { kind: 'number', quantity: 'volume' },
  start: { kind: 'number', quantity: 'volume' },
  roofArea: { kind: 'number', quantity: 'area' },
  runoffCoefficient: { kind: 'number', fallback: DEFAULTS.runoffCoefficient },
};

const wordsOf = ({ reader }: FormContext) => gardenPlaceWords(reader.language).supply;

export function supplyForm(context: FormContext): TemplateResult {
  const { plan, form, format } = context;
  const say = wordsOf(context);
  const supply: FormPart<PlanSupply> = {
    value: plan.supply ?? { sources: [] },
    schema: schemaAt(plan, ['supply']),
    key: (field) => `supply-${field}`,
    change: (change) => ({ type: 'change-supply', change }),
  };
  const { sources } = supply.value;
  const add = () => {
    const source = { name: say.source(format, sources.length) };
    form.send(supply.key('add'), '', supply.change({ sources: [...sources, source] }));
  };
  return html`${sources.map((source, index) => sourceForm(source, index, supply, context))}
    ${form.readOnly ? nothing : html`<button name=${supply.key('add')} @click=${add}>${say.addSource}</button>${refusal(supply.key('add'), context)}`}
    <div class="fields">${tableFields(SUPPLY_FIELDS, {}, supply, context)}</div>`;
}

function sourceForm(source: Source, index: number, supply: FormPart<PlanSupply>, context: FormContext): TemplateResult {
  const { plan, form, reader } = context;
  const { actions, actionOn } = gardenWords(reader.language);
  const { sources } = supply.value;
  const part: FormPart<Source> = {
    value: source,
    schema: schemaAt(plan, ['supply', 'sources', index]),
    key: (field) => supply.key(`source-${index}-${field}`),
    change: (change) => supply.change({ sources: sources.with(index, changed(source, change)) }),
  };
  const remove = () => {
    const { ok } = form.send(part.key('remove'), '', supply.change({ sources: sources.toSpliced(index, 1) }));
    if (ok) form.forget(supply.key('source-'));
  };
  return html`<fieldset>
    <legend>${isolated(source.name)}</legend>
    <div class="fields">${tableFields(SOURCE_FIELDS, wordsOf(context), part, context)}</div>
    ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${actionOn(actions.remove, isolated(source.name))}</button>${refusal(part.key('remove'), context)}`}
  </fieldset>`;
}

function flowFields(source: FormPart<Source>, context: FormContext): TemplateResult {
  const { flow } = source.value;
  const us = context.plan.units === 'us';
  const say = wordsOf(context);
  const begun = {
    unknown: undefined,
    typed: { kind: 'typed', flow: us ? 5 : 20 },
    bucket: { kind: 'bucket', volume: us ? 5 : 20, seconds: 60 },
  } as const;
  return html`${choiceField(
    {
      key: source.key('flow-kind'),
      words: say.flowKind,
      value: flow?.kind ?? 'unknown',
      options: optionsOf(say.flowKind.options),
      edit: (kind) => source.change({ flow: begun[kind] }),
    },
    context,
  )}
  ${flow?.kind === 'typed' ? tableFields(TYPED_FLOW_FIELDS, say, innerPart(source, 'flow', flow), context) : nothing}
  ${
    flow?.kind === 'bucket'
      ? html`${tableFields(BUCKET_FIELDS, say, innerPart(source, 'flow', flow), context)}
        <p class="derived wide">${say.bucketGives(context.format, bucketFlowLpm(flow, context))}</p>`
      : nothing
  }`;
}

function bucketFlowLpm({ volume, seconds }: Bucket, { plan }: FormContext): number {
  return bucketTestFlowLpm({ volumeL: toSi(volume, 'volume', plan.units), seconds });
}

function windowFields(supply: FormPart<Omit<PlanSupply, 'sources'>>, context: FormContext): TemplateResult {
  const { window } = supply.value;
  const say = wordsOf(context);
  const { windowHoursPerDay } = DEFAULTS;
  const part = innerPart(supply, 'window', { hoursPerDay: windowHoursPerDay, ...window });
  const hours = (hoursPerDay: number | undefined) => {
    // Days that were named stay.
    if (hoursPerDay !== undefined) return part.change({ hoursPerDay });
    return window?.weekdays === undefined
      ? supply.change({ window: undefined })
      : part.change({ hoursPerDay: windowHoursPerDay });
  };
  return html`${numberField(
    {
      key: part.key('hours'),
      words: say.hoursPerDay,
      value: window?.hoursPerDay,
      schema: fieldSchema(part.schema, 'hoursPerDay'),
      edit: hours,
    },
    context,
  )}
  ${weekdaysField(
    {
      key: part.key('weekdays'),
      words: say.weekdays,
      value: window?.weekdays,
      edit: (weekdays) => part.change({ weekdays }),
    },
    context,
  )}`;
}

function allowanceFields(supply: FormPart<Omit<PlanSupply, 'sources'>>, context: FormContext): readonly unknown[] {
  const part = innerPart(supply, 'allowance', supply.value.allowance ?? {});
  return tableFields(ALLOWANCE_FIELDS, wordsOf(context), part, context);
}

function tankFields(supply: FormPart<Omit<PlanSupply, 'sources'>>, context: FormContext): TemplateResult {
  const { tank } = supply.value;
  const say = wordsOf(context);
  const begun: Tank = { capacity: context.plan.units === 'us' ? 275 : 1000, start: 0 };
  return html`${checkField(
    {
      key: supply.key('tank'),
      words: say.tank,
      value: tank !== undefined,
      edit: (has) => supply.change({ tank: has ? begun : undefined }),
    },
    context,
  )}
  ${tank === undefined ? nothing : tableFields(TANK_FIELDS, say, innerPart(supply, 'tank', tank), context)}`;
}
