/** What a planting needs: a water-use class, a type of plant, or a crop with its planting day. */
import { html, type TemplateResult } from 'lit';
import { CROPS, type CropId } from '../../engine/plants/crops.data.ts';
import { PLANT_TYPES } from '../../engine/plants/plant-types.data.ts';
import { WATER_USE_CLASSES } from '../../engine/plants/water-use-classes.data.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanNeed } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { cropFigures } from './crop-figures.ts';
import { choiceField, numberField, textField } from './fields.ts';
import type { PlantingContext } from './form-context.ts';

export function needFields(context: PlantingContext): TemplateResult {
  const { plan, planting, form, key, change } = context;
  const { need } = planting;
  const asKind = (kind: string): PlanNeed => {
    if (kind === 'crop') return { kind, crop: 'tomato', plantedOn: plan.season.firstDay };
    return kind === 'type' ? { kind, type: 'annual-flowers' } : { kind: 'class', class: 'moderate' };
  };
  return html`${choiceField({
    ...{ form, key: key('need'), label: words.need, value: need.kind },
    options: [
      { value: 'class', label: words.needClass },
      { value: 'type', label: words.needType },
      { value: 'crop', label: words.needCrop },
    ],
    edit: (kind) => change({ need: asKind(kind) }),
  })}
  ${need.kind === 'crop' ? cropFields(need, context) : landscapeFields(need, context)}`;
}

type Landscape = Exclude<PlanNeed, { kind: 'crop' }>;

function landscapeFields(need: Landscape, { form, key, change }: PlantingContext): TemplateResult {
  const factor = (name: 'factor' | 'density' | 'microclimate', otherwise: string, helpText?: string) =>
    numberField({
      ...{ form, key: key(name), label: words[name], help: helpText, value: need[name], otherwise },
      edit: (value) => change({ need: changed(need, { [name]: value }) }),
    });
  return html`${need.kind === 'class' ? classField(need, { form, key, change }) : typeField(need, { form, key, change })}
  ${factor('factor', words.usual)} ${factor('density', String(DEFAULTS.density), help.density)}
  ${factor('microclimate', String(DEFAULTS.microclimate), help.microclimate)}`;
}

type Changing = Pick<PlantingContext, 'form' | 'key' | 'change'>;

function classField(need: Extract<PlanNeed, { kind: 'class' }>, { form, key, change }: Changing): TemplateResult {
  return choiceField({
    ...{ form, key: key('class'), label: words.class, help: help.class, value: need.class },
    options: WATER_USE_CLASSES.map(({ id, name }) => ({ value: id, label: name })),
    edit: (chosen) => change({ need: { ...need, class: chosen as typeof need.class } }),
  });
}

function typeField(need: Extract<PlanNeed, { kind: 'type' }>, { form, key, change }: Changing): TemplateResult {
  return choiceField({
    ...{ form, key: key('type'), label: words.type, value: need.type },
    options: PLANT_TYPES.map(({ id, name }) => ({ value: id, label: name })),
    edit: (chosen) => change({ need: { ...need, type: chosen as typeof need.type } }),
  });
}

function cropFields(need: Extract<PlanNeed, { kind: 'crop' }>, context: PlantingContext): TemplateResult {
  const { form, key, change } = context;
  return html`${choiceField({
    ...{ form, key: key('crop'), label: words.crop, value: need.crop },
    options: CROPS.map(({ id, name }) => ({ value: id, label: name })),
    edit: (crop) => change({ need: { kind: 'crop', crop: crop as CropId, plantedOn: need.plantedOn } }),
  })}
  ${textField({
    ...{ form, key: key('planted'), label: words.plantedOn, type: 'date', value: need.plantedOn },
    edit: (plantedOn) => change({ need: { ...need, plantedOn: plantedOn ?? '' } }),
  })}
  ${cropFigures(need, context)}`;
}
