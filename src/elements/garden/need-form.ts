/** What a planting needs: a water-use class, a type of plant, or a crop with its planting day and what is known of it. */
import { html, nothing, type TemplateResult } from 'lit';
import { CROPS } from '../../engine/plants/crops.data.ts';
import { findCrop } from '../../engine/plants/find-crop.ts';
import { PLANT_TYPES } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../engine/plants/water-use-classes.data.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanNeed, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { stageDaysOf } from '../../plan/to-garden/coefficient.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { checkField, choiceField, namedOptions, optionsOf } from './fields.ts';
import { type FormContext, type FormPart, innerPart } from './form-context.ts';

type Need<Kind extends PlanNeed['kind']> = Extract<PlanNeed, { kind: Kind }>;
type Landscape = Pick<Need<'class'>, 'factor' | 'density' | 'microclimate'>;
type Crop = Need<'crop'>;

const LANDSCAPE_FIELDS: FieldTable<Landscape, FormContext> = {
  factor: { kind: 'number' },
  density: { kind: 'number', fallback: DEFAULTS.density },
  microclimate: { kind: 'number', fallback: DEFAULTS.microclimate },
};

const CLASS_FIELDS: FieldTable<Omit<Need<'class'>, 'kind'>, FormContext> = {
  class: { kind: 'choice', options: (context) => namedOptions(WATER_USE_CLASSES, context) },
  ...LANDSCAPE_FIELDS,
};

const TYPE_FIELDS: FieldTable<Omit<Need<'type'>, 'kind'>, FormContext> = {
  type: { kind: 'choice', options: (context) => namedOptions(PLANT_TYPES, context) },
  ...LANDSCAPE_FIELDS,
};

const CROP_FIELDS: FieldTable<Omit<Crop, 'kind'>, FormContext> = {
  crop: { kind: 'own', fields: cropField },
  plantedOn: { kind: 'date' },
  stages: { kind: 'own', fields: stagesFields },
  coefficients: { kind: 'own', fields: coefficientsFields },
};

const STAGE_FIELDS: FieldTable<NonNullable<Crop['stages']>, FormContext> = {
  initial: { kind: 'number' },
  development: { kind: 'number' },
  mid: { kind: 'number' },
  late: { kind: 'number' },
};

const COEFFICIENT_FIELDS: FieldTable<NonNullable<Crop['coefficients']>, FormContext> = {
  initial: { kind: 'number' },
  mid: { kind: 'number' },
  end: { kind: 'number' },
};

const wordsOf = ({ reader }: FormContext) => gardenZonesWords(reader.language).planting;

export function needFields(planting: FormPart<Pick<PlanPlanting, 'need'>>, context: FormContext): TemplateResult {
  const { need } = planting.value;
  const say = wordsOf(context);
  const begun = {
    class: { kind: 'class', class: 'moderate' },
    type: { kind: 'type', type: 'annual-flowers' },
    crop: { kind: 'crop', crop: 'tomato', plantedOn: context.plan.season.firstDay },
  } as const;
  return html`${choiceField(
    {
      key: planting.key('need'),
      words: say.needKind,
      value: need.kind,
      options: optionsOf(say.needKind.options),
      edit: (kind) => planting.change({ need: begun[kind] }),
    },
    context,
  )}
  ${kindFields(planting, context)}`;
}

function kindFields(planting: FormPart<Pick<PlanPlanting, 'need'>>, context: FormContext): readonly unknown[] {
  const { need } = planting.value;
  const say = wordsOf(context);
  switch (need.kind) {
    case 'class':
      return tableFields(CLASS_FIELDS, say, innerPart(planting, 'need', need), context);
    case 'type':
      return tableFields(TYPE_FIELDS, say, innerPart(planting, 'need', need), context);
    case 'crop':
      return tableFields(CROP_FIELDS, say, innerPart(planting, 'need', need), context);
  }
}

/** Another crop has other stages and coefficients. */
function cropField(
  { value: { crop }, key, change }: FormPart<Omit<Crop, 'kind'>>,
  context: FormContext,
): TemplateResult {
  return choiceField(
    {
      key: key('crop'),
      words: wordsOf(context).crop,
      value: crop,
      options: namedOptions(CROPS, context),
      edit: (chosen) => change({ crop: chosen, stages: undefined, coefficients: undefined }),
    },
    context,
  );
}

/** Days of each stage, where a gardener knows them better than the published tables; from these on. */
function stagesFields(crop: FormPart<Omit<Crop, 'kind'>>, context: FormContext): TemplateResult {
  const { stages } = crop.value;
  const say = wordsOf(context);
  return html`${checkField(
    {
      key: crop.key('stages'),
      words: say.hasStages,
      value: stages !== undefined,
      edit: (has) => crop.change({ stages: has ? publishedStages(crop.value) : undefined }),
    },
    context,
  )}
  ${stages === undefined ? nothing : tableFields(STAGE_FIELDS, say.stages, innerPart(crop, 'stages', stages), context)}`;
}

/** The same for its coefficients. */
function coefficientsFields(crop: FormPart<Omit<Crop, 'kind'>>, context: FormContext): TemplateResult {
  const { coefficients } = crop.value;
  const say = wordsOf(context);
  return html`${checkField(
    {
      key: crop.key('coefficients'),
      words: say.hasCoefficients,
      value: coefficients !== undefined,
      edit: (has) => crop.change({ coefficients: has ? publishedCoefficients(crop.value) : undefined }),
    },
    context,
  )}
  ${
    coefficients === undefined
      ? nothing
      : tableFields(COEFFICIENT_FIELDS, say.coefficients, innerPart(crop, 'coefficients', coefficients), context)
  }`;
}

function publishedStages(need: Omit<Crop, 'kind'>): NonNullable<Crop['stages']> {
  const [initial, development, mid, late] = stageDaysOf({ kind: 'crop', ...need });
  return { initial, development, mid, late };
}

function publishedCoefficients({ crop }: Pick<Crop, 'crop'>): NonNullable<Crop['coefficients']> {
  const { kcIni, kcMid, kcEnd } = findCrop(crop);
  return { initial: kcIni, mid: kcMid, end: kcEnd };
}
