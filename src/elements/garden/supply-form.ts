/** The water supply: sources, watering window, allowance, tank. */

import { html, nothing, type TemplateResult } from 'lit';
import { bucketTestFlowLpm } from '../../engine/supply/bucket-test.ts';
import { toSi } from '../../engine/units.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenGroundWords } from '../../language/en/garden-ground.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanSupply } from '../../plan/schema/plan-schema.ts';
import { weekdaysField } from './boxes-field.ts';
import { type FieldTable, tableFields, type Unshown } from './field-table.ts';
import { choiceField, numberField, optionsOf, refusal, timeField } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';
import { laterSourceButton, withBegun, withSourceAt } from './later-source.ts';
import { cutFields, restrictionFields } from './supply-limits.ts';
import { priceFields } from './supply-price.ts';
import { tickedPart } from './ticked-part.ts';

type Source = PlanSupply['sources'][number];
type Flow = NonNullable<Source['flow']>;
type Bucket = Extract<Flow, { kind: 'bucket' }>;
type Tank = NonNullable<PlanSupply['tank']>;

type Supply = Omit<PlanSupply, 'sources'>;
type Fields<Field extends keyof Supply> = FieldTable<Pick<Supply, Field>, FormContext>;

const WINDOW_FIELDS: Fields<'window'> = { window: { kind: 'own', fields: windowFields } };

const LIMIT_FIELDS: Fields<'restrictions' | 'cuts' | 'allowance'> = {
  restrictions: { kind: 'own', fields: restrictionFields },
  cuts: { kind: 'own', fields: cutFields },
  allowance: { kind: 'own', fields: allowanceFields },
};

const MORE_FIELDS: Fields<'tank' | 'price' | 'leachingFraction'> = {
  tank: { kind: 'own', fields: tankFields },
  price: { kind: 'own', fields: priceFields },
  leachingFraction: { kind: 'number' },
};

type Shown = keyof typeof WINDOW_FIELDS | keyof typeof LIMIT_FIELDS | keyof typeof MORE_FIELDS;

type SourceFields<Field extends keyof Source> = FieldTable<Pick<Source, Field>, FormContext>;

const SOURCE_FIELDS: SourceFields<'name' | 'from' | 'flow'> = {
  name: { kind: 'text' },
  from: { kind: 'date', isOptional: true },
  flow: { kind: 'own', fields: flowFields },
};

const PRESSURE_FIELDS: SourceFields<'flow' | 'pressure' | 'waterHeight'> = {
  pressure: { kind: 'number', quantity: 'pressure' },
  waterHeight: { kind: 'number', quantity: 'waterHeight' },
  flow: { kind: 'own', fields: bucketShareField },
};

type ShownOfSource = keyof typeof SOURCE_FIELDS | keyof typeof PRESSURE_FIELDS;

const TYPED_FLOW_FIELDS: FieldTable<Omit<Extract<Flow, { kind: 'typed' }>, 'kind'>, FormContext> = {
  flow: { kind: 'number', quantity: 'supplyFlow' },
};

const BUCKET_FIELDS: FieldTable<Pick<Bucket, 'volume' | 'seconds'>, FormContext> = {
  volume: { kind: 'number', quantity: 'volume' },
  seconds: { kind: 'number' },
};

const SHARE_FIELDS: FieldTable<Pick<Bucket, 'share'>, FormContext> = {
  share: { kind: 'number', fallback: DEFAULTS.bucketShare },
};

const ALLOWANCE_FIELDS: FieldTable<NonNullable<PlanSupply['allowance']>, FormContext> = {
  perWeek: { kind: 'number', quantity: 'volume' },
  perSeason: { kind: 'number', quantity: 'volume' },
  perArea: { kind: 'number', quantity: 'waterPerArea' },
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
  const supply: FormPart<PlanSupply> & Unshown<Supply, Shown> = {
    value: plan.supply ?? { sources: [] },
    schema: schemaAt(plan, ['supply']),
    key: (field) => `supply-${field}`,
    change: (change) => ({ type: 'change-supply', change }),
  };
  const { sources } = supply.value;
  const add = () => {
    const source = { name: say.source(format, sources.length) };
    form.send(supply.key('add'), '', supply.change({ sources: [source] }));
  };
  const key = supply.key('add');
  const button =
    sources.length > 0
      ? laterSourceButton({ sources, key, add: say.addSource }, context)
      : html`<button name=${key} @click=${add}>${say.addSource}</button>${refusal(key, context)}`;
  return html`${withBegun(sources, say.source(format, sources.length), context).map((source, index) => sourceForm(source, index, supply, context))}
    ${form.readOnly ? nothing : button}
    <div class="fields">${tableFields(WINDOW_FIELDS, say, supply, context)}</div>
    ${fieldsFold(say.folds.limits, () => tableFields(LIMIT_FIELDS, say, supply, context), context)}
    ${fieldsFold(say.folds.more, () => tableFields(MORE_FIELDS, gardenGroundWords(context.reader.language), supply, context), context)}`;
}

function sourceForm(source: Source, index: number, supply: FormPart<PlanSupply>, context: FormContext): TemplateResult {
  const { plan, form, reader } = context;
  const { actions, actionOn } = gardenWords(reader.language);
  const { sources } = supply.value;
  const say = wordsOf(context);
  const part: FormPart<Source> & Unshown<Source, ShownOfSource> = {
    value: source,
    schema: schemaAt(plan, ['supply', 'sources', index]),
    key: (field) => supply.key(`source-${index}-${field}`),
    change: (change) => supply.change({ sources: withSourceAt(sources, index, changed(source, change), context) }),
  };
  const remove = () => {
    form.send(part.key('remove'), '', supply.change({ sources: sources.toSpliced(index, 1) }), () =>
      form.forget(supply.key('source-')),
    );
  };
  return html`<fieldset>
    <legend>${isolated(source.name)}</legend>
    <div class="fields">${tableFields(SOURCE_FIELDS, say, part, context)}</div>
    ${fieldsFold(say.folds.pressure, () => tableFields(PRESSURE_FIELDS, say, part, context), context)}
    ${form.readOnly || index === sources.length ? nothing : html`<button class="plain" @click=${remove}>${actionOn(actions.remove, isolated(source.name))}</button>${refusal(part.key('remove'), context)}`}
  </fieldset>`;
}

/** Of what ran into the bucket. */
function bucketShareField(source: FormPart<Pick<Source, 'flow'>>, context: FormContext): unknown {
  const { flow } = source.value;
  if (flow?.kind !== 'bucket') return nothing;
  return tableFields(SHARE_FIELDS, wordsOf(context), innerPart(source, 'flow', flow), context);
}

/** What a choice begins with is assumed until it is typed. */
function flowFields(source: FormPart<Pick<Source, 'flow'>>, context: FormContext): TemplateResult {
  const { flow } = source.value;
  const us = context.plan.units === 'us';
  const say = wordsOf(context);
  const isFirst = source.value === context.plan.supply?.sources[0];
  const others = (context.plan.assumed ?? []).filter((part) => part !== 'flow');
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
      edit: (kind) => {
        const change = source.change({ flow: begun[kind] });
        if (!isFirst || kind === 'unknown') return change;
        return { type: 'together', edits: [change, { type: 'set-assumed', assumed: [...others, 'flow'] }] };
      },
    },
    context,
  )}
  ${flow?.kind === 'typed' ? tableFields(TYPED_FLOW_FIELDS, say, innerPart(source, 'flow', flow), context) : nothing}
  ${
    flow?.kind === 'bucket'
      ? html`${tableFields(BUCKET_FIELDS, say, innerPart(source, 'flow', flow), context)}
        <p class="derived wide">${say.bucketGives(context.format, bucketFlowLpm(flow, context), flow.share ?? DEFAULTS.bucketShare)}</p>`
      : nothing
  }`;
}

function bucketFlowLpm({ volume, seconds }: Bucket, { plan }: FormContext): number {
  return bucketTestFlowLpm({ volumeL: toSi(volume, 'volume', plan.units), seconds });
}

function windowFields(supply: FormPart<Pick<Supply, 'window'>>, context: FormContext): TemplateResult {
  const { window } = supply.value;
  const say = wordsOf(context);
  const { windowHoursPerDay } = DEFAULTS;
  const part = innerPart(supply, 'window', { hoursPerDay: windowHoursPerDay, ...window });
  const hours = (hoursPerDay: number | undefined) => {
    // Days and a time that were named stay.
    if (hoursPerDay !== undefined) return part.change({ hoursPerDay });
    return window?.weekdays === undefined && window?.opensAt === undefined
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
  ${timeField(
    {
      key: part.key('opens-at'),
      words: say.opensAt,
      value: window?.opensAt,
      isOptional: true,
      edit: (opensAt) => part.change({ opensAt }),
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

function allowanceFields(supply: FormPart<Pick<Supply, 'allowance'>>, context: FormContext): readonly unknown[] {
  const part = innerPart(supply, 'allowance', supply.value.allowance ?? {});
  return tableFields(ALLOWANCE_FIELDS, wordsOf(context), part, context);
}

function tankFields(supply: FormPart<Pick<Supply, 'tank'>>, context: FormContext): TemplateResult {
  const say = wordsOf(context);
  const begun: Tank = { capacity: context.plan.units === 'us' ? 275 : 1000, start: 0 };
  return tickedPart(
    { whole: supply, field: 'tank', words: say.tank, begun, table: TANK_FIELDS, tableWords: say },
    context,
  );
}
