/** What a planting needs: a water-use class, a type of plant, or a crop with its planting day and what is known of it. */
import { html, nothing, type TemplateResult } from 'lit';
import { CROPS } from '../../engine/plants/crops.data.ts';
import { findCrop } from '../../engine/plants/find-crop.ts';
import { PLANT_TYPES } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../engine/plants/water-use-classes.data.ts';
import { toSi, type UnitSystem } from '../../engine/units.ts';
import type { ListedPlant } from '../../exchange/plants/plant-list.ts';
import { isUsualRootDepth } from '../../exchange/plants/usual-roots.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { plantsWords } from '../../language/en/plants.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanNeed, PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { stageDaysOf } from '../../plan/to-garden/coefficient.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { choiceField, namedOptions, optionsOf } from './fields.ts';
import { type FormContext, type FormPart, innerPart } from './form-context.ts';
import { needOfListed, rootDepthOfListed } from './listed-plant.ts';
import { plantNameOf } from './plant-name.ts';
import { tickedPart } from './ticked-part.ts';

type Need<Kind extends PlanNeed['kind']> = Extract<PlanNeed, { kind: Kind }>;
type Landscape = Pick<Need<'class'>, 'factor' | 'density' | 'microclimate'>;
type Crop = Need<'crop'>;

const LANDSCAPE_FIELDS: FieldTable<Landscape, FormContext> = {
  factor: { kind: 'number' },
  density: { kind: 'number', fallback: DEFAULTS.density },
  microclimate: { kind: 'number', fallback: DEFAULTS.microclimate },
};

const CLASS_FIELDS: FieldTable<Pick<Need<'class'>, 'class' | 'plant'>, FormContext> = {
  class: { kind: 'choice', options: (context) => namedOptions(WATER_USE_CLASSES, context) },
  plant: { kind: 'own', fields: plantSays },
};

const TYPE_FIELDS: FieldTable<Pick<Need<'type'>, 'type'>, FormContext> = {
  type: { kind: 'choice', options: (context) => namedOptions(PLANT_TYPES, context) },
};

const CROP_FIELDS: FieldTable<Pick<Crop, 'plantedOn'>, FormContext> = {
  plantedOn: { kind: 'date' },
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

type NeedPart = FormPart<Pick<PlanPlanting, 'need' | 'rootDepth' | 'assumed'>>;

/** The plant or crop by its name, and what it goes by. */
export function needFields(planting: NeedPart, context: FormContext): TemplateResult {
  const { need } = planting.value;
  const say = wordsOf(context);
  const fields = () => {
    switch (need.kind) {
      case 'class':
        return tableFields(CLASS_FIELDS, say, innerPart(planting, 'need', need), context);
      case 'type':
        return tableFields(TYPE_FIELDS, say, innerPart(planting, 'need', need), context);
      case 'crop':
        return tableFields(CROP_FIELDS, say, innerPart(planting, 'need', need), context);
    }
  };
  return html`${context.form.readOnly ? nothing : plantSearch(planting, context)} ${fields()}`;
}

/** Whether it goes by class, type or crop, and its figures where somebody knows better than the tables. What a choice begins with is assumed. */
export function needMoreFields(planting: NeedPart, context: FormContext): TemplateResult {
  const { need, assumed = [] } = planting.value;
  const say = wordsOf(context);
  const begun = {
    class: { kind: 'class', class: 'moderate' },
    type: { kind: 'type', type: 'annual-flowers' },
    crop: { kind: 'crop', crop: 'tomato', plantedOn: context.plan.season.firstDay },
  } as const;
  const others = assumed.filter((part) => part !== 'need' && part !== 'plantedOn');
  const begins = (chosen: keyof typeof begun) =>
    chosen === 'crop' ? (['need', 'plantedOn'] as const) : (['need'] as const);
  const kind = choiceField(
    {
      key: planting.key('need'),
      words: say.needKind,
      value: need.kind,
      options: optionsOf(say.needKind.options),
      edit: (chosen) => planting.change({ need: begun[chosen], assumed: [...begins(chosen), ...others] }),
    },
    context,
  );
  if (need.kind === 'crop') {
    const crop = innerPart(planting, 'need', need);
    return html`${kind} ${cropField(crop, context)}
      ${tickedPart({ whole: crop, field: 'stages', words: say.hasStages, begun: publishedStages(need), table: STAGE_FIELDS, tableWords: say.stages }, context)}
      ${tickedPart({ whole: crop, field: 'coefficients', words: say.hasCoefficients, begun: publishedCoefficients(need), table: COEFFICIENT_FIELDS, tableWords: say.coefficients }, context)}`;
  }
  return html`${kind} ${tableFields(LANDSCAPE_FIELDS, say, innerPart(planting, 'need', need), context)}`;
}

/** A plant or a crop by its name, whatever the planting went by before. */
function plantSearch(planting: NeedPart, { form, plan, reader }: FormContext): TemplateResult {
  const { need, rootDepth, assumed = [] } = planting.value;
  const chosen = (plant: ListedPlant, name: string) => {
    const isDayNew = need.kind !== 'crop' && plant.type === 'crop';
    const plantedOn = need.kind === 'crop' ? need.plantedOn : plan.season.firstDay;
    const others = assumed.filter((part) => part !== 'need');
    const next = needOfListed(plant, name, { plantedOn, before: need });
    form.send(
      planting.key('need'),
      name,
      planting.change({
        ...{ need: next, rootDepth: rootDepthOf(plant, rootDepth, plan.units) },
        ...(isDayNew && { assumed: ['plantedOn', ...others] }),
      }),
    );
  };
  return html`<runnel-plant-search class="field" .value=${plantNameOf(need, reader)} .chosen=${chosen}></runnel-plant-search>`;
}

/** That of the plant's kind, but for one that somebody measured; a crop has its own. */
function rootDepthOf(plant: ListedPlant, before: number | undefined, units: UnitSystem): number | undefined {
  if (before !== undefined && !isUsualRootDepth(toSi(before, 'rootDepth', units))) return before;
  return rootDepthOfListed(plant, units);
}

/** What the list says of the plant's class, where somebody chose another. */
function plantSays(
  { value }: FormPart<Pick<Need<'class'>, 'class' | 'plant'>>,
  { reader }: FormContext,
): TemplateResult {
  const { plant } = value;
  const say = plantsWords(reader.language);
  if (plant === undefined) return html``;
  const brought = say.classes[plant.class];
  const says = plant.class === value.class ? say.brought(plant.name, brought) : say.setByHand(plant.name, brought);
  return html`<p class="help">${says}</p>`;
}

/** Another crop has other stages and coefficients. */
function cropField(
  { value: { crop }, key, change }: FormPart<Pick<Crop, 'crop' | 'stages' | 'coefficients'>>,
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

function publishedStages(need: Crop): NonNullable<Crop['stages']> {
  const [initial, development, mid, late] = stageDaysOf(need);
  return { initial, development, mid, late };
}

function publishedCoefficients({ crop }: Pick<Crop, 'crop'>): NonNullable<Crop['coefficients']> {
  const { kcIni, kcMid, kcEnd } = findCrop(crop);
  return { initial: kcIni, mid: kcMid, end: kcEnd };
}
