/** One planting: what it needs, how large it is, when it is there, how it is watered, and its lines. */

import { html, nothing, type TemplateResult } from 'lit';
import { toSi } from '../../engine/units.ts';
import { gardenGroundWords } from '../../language/en/garden-ground.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { splitPlanting } from '../../plan/split-planting.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { addNextLine, copyPlanting } from './create-and-copy.ts';
import { type FieldTable, tableFields, type Unshown } from './field-table.ts';
import { choiceField, dateField, numberField, optionsOf, refusal } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';
import { type GroundFields, groundForm } from './ground-form.ts';
import { linePart } from './line-form.ts';
import { needFields, needMoreFields } from './need-form.ts';
import { plantingInGarden } from './planting-in-garden.ts';
import { plantingSummary } from './planting-summary.ts';
import { sizeField } from './size-field.ts';

/** Fields of one form. */
type Fields<Field extends keyof PlanPlanting> = FieldTable<Pick<PlanPlanting, Field>, FormContext>;

const FIRST_FIELDS: Fields<'name' | 'need' | 'extent'> = {
  name: { kind: 'text' },
  need: { kind: 'own', fields: needFields },
  extent: { kind: 'own', fields: sizeField },
};

const ROOT_FIELDS: Fields<'rootDepth' | 'allowedDepletion' | 'target' | 'startDepletion' | 'extent'> = {
  rootDepth: { kind: 'number', quantity: 'rootDepth' },
  allowedDepletion: { kind: 'number' },
  target: { kind: 'number', fallback: DEFAULTS.target },
  startDepletion: { kind: 'number', fallback: DEFAULTS.startDepletion },
  extent: { kind: 'own', fields: trunkField },
};

const DAY_FIELDS: Fields<'inGround' | 'establishing' | 'note'> = {
  inGround: { kind: 'own', fields: inGroundFields },
  establishing: { kind: 'own', fields: establishingFields },
  note: { kind: 'text', isOptional: true },
};

const WATERING_FIELDS: Fields<'shutOff' | 'watering'> = {
  shutOff: { kind: 'check' },
  watering: { kind: 'choice', options: (context) => optionsOf(wordsOf(context).watering.options) },
};

/** What was assumed stands above them, lines below. */
type Shown =
  | keyof typeof FIRST_FIELDS
  | keyof typeof ROOT_FIELDS
  | keyof typeof DAY_FIELDS
  | keyof typeof WATERING_FIELDS
  | keyof GroundFields
  | 'assumed'
  | 'id'
  | 'lines';

const TRUNK_FIELDS: FieldTable<Pick<Extract<PlanPlanting['extent'], { kind: 'canopy' }>, 'trunk'>, FormContext> = {
  trunk: { kind: 'number', quantity: 'diameter' },
};

const IN_GROUND_FIELDS: FieldTable<NonNullable<PlanPlanting['inGround']>, FormContext> = {
  from: { kind: 'date', isOptional: true },
  to: { kind: 'date', isOptional: true },
};

/** How much more new plants are taken to need, until somebody says otherwise. Common practice, no source. */
const ESTABLISHING_FACTOR = 1.3;

const wordsOf = ({ reader }: FormContext) => gardenZonesWords(reader.language).planting;

export interface PlantingIndex {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
  /** In its zone. */
  readonly index: number;
}

export function plantingPart({ zone, planting, index }: PlantingIndex, context: FormContext): TemplateResult {
  const { isOpen, toggle } = context;
  const key = `planting-${planting.id}`;
  return html`<details class="part" ?open=${isOpen(key)} @toggle=${(event: ToggleEvent) => toggle(key, event.newState === 'open')}>
    <summary><span class="part-name">${isolated(planting.name)}</span> ${plantingSummary(planting, context)}</summary>
    ${isOpen(key) ? html`<div class="part-body">${plantingForm({ zone, planting, index }, context)}</div>` : nothing}
  </details>`;
}

function plantingForm({ zone, planting, index }: PlantingIndex, context: FormContext): TemplateResult {
  const { plan, form } = context;
  const say = wordsOf(context);
  const at = { zone: zone.id, planting: planting.id };
  const part: FormPart<PlanPlanting> & Unshown<PlanPlanting, Shown> = {
    value: planting,
    schema: schemaAt(plan, ['zones', plan.zones.indexOf(zone), 'plantings', index]),
    key: (field) => `planting-${planting.id}-${field}`,
    change: (change) => ({ type: 'change-planting', ...at, change }),
  };
  const second = copyPlanting(plan, planting);
  const halves = splitPlanting(planting, { id: second.id, name: second.name });
  const send = (edit: Edit, taken?: () => void) => form.send(part.key('actions'), '', edit, taken);
  const added = (each: PlanPlanting): Edit => ({
    type: 'add-planting',
    zone: zone.id,
    planting: each,
    at: index + 1,
  });
  const split = ([{ extent, lines, container }, half]: NonNullable<typeof halves>) => {
    const change = container === undefined ? { extent, lines } : { extent, lines, container };
    const edits: Edit[] = [{ type: 'change-planting', ...at, change }, added(half)];
    send({ type: 'together', edits }, () => form.forget(part.key('')));
  };
  const actions = {
    copy: () => send(added(second)),
    ...(halves && { split: () => split(halves) }),
    move: (to: number) => send({ type: 'move-planting', ...at, toZone: zone.id, at: to }),
    remove: () => send({ type: 'remove-planting', ...at }),
  };
  const { roots, days, needMore } = say.folds;
  return html`${rightButton(part, context)}
    <div class="fields">
      ${tableFields(FIRST_FIELDS, say, part, context)} ${zoneField(zone, part, context)}
    </div>
    ${fieldsFold(needMore, () => needMoreFields(part, context), context)}
    ${fieldsFold(roots, () => rootFields(part, context), context)}
    ${groundForm(part, context)}
    ${fieldsFold(days, () => tableFields(DAY_FIELDS, say, part, context), context)}
    ${copyMoveRemove({ name: isolated(planting.name), key: part.key, index, count: zone.plantings.length, ...actions }, context)}
    ${linesOf(zone, planting, part, context)}`;
}

/** Its summary says how deep they are taken. */
function rootFields(part: FormPart<PlanPlanting>, context: FormContext): unknown {
  const { season, form, format } = context;
  const say = wordsOf(context);
  const found = plantingInGarden(season.garden, part.value);
  const isUsual = part.value.rootDepth === undefined && found !== undefined;
  form.facts.tell(isUsual && format.quantity(found.rootZone.depthM, 'rootDepth'), say.rootDepth.label);
  return tableFields(ROOT_FIELDS, say, part, context);
}

/** What nobody has said yet stands in the summary, until it is changed or found right. */
function rightButton(
  { value: { assumed }, key, change }: FormPart<PlanPlanting>,
  { form, reader }: FormContext,
): TemplateResult | typeof nothing {
  if (assumed === undefined || form.readOnly) return nothing;
  const right = () => form.send(key('assumed'), '', change({ assumed: undefined }));
  return html`<button class="plain" name=${key('assumed')} @click=${right}>${gardenZonesWords(reader.language).plantingSummary.right}</button>`;
}

function linesOf(
  zone: PlanZone,
  planting: PlanPlanting,
  part: FormPart<PlanPlanting>,
  context: FormContext,
): TemplateResult {
  const { plan, form, reader } = context;
  const { addLine, addFirstLine, noLines, planting: say } = gardenZonesWords(reader.language);
  const key = `planting-${planting.id}-add`;
  const add = () => form.send(key, '', addNextLine(plan, zone.id, planting));
  return html`<h4>${say.lines}</h4>
    <div class="fields">${tableFields(WATERING_FIELDS, say, part, context)}</div>
    ${planting.lines.length === 0 ? html`<p class="help">${noLines}</p>` : nothing}
    ${planting.lines.map((line, index) => linePart({ zone, planting, line, index }, context))}
    ${form.readOnly ? nothing : html`<button class="add" name=${key} @click=${add}>${planting.lines.length === 0 ? addFirstLine : addLine}</button>${refusal(key, context)}`}`;
}

/** Asked of plants that are counted: a tree's ground may be larger than under its leaves. */
function trunkField(planting: FormPart<Pick<PlanPlanting, 'extent'>>, context: FormContext): unknown {
  const { extent } = planting.value;
  if (extent.kind !== 'canopy') return nothing;
  const { trunk, largerGround } = gardenGroundWords(context.reader.language);
  const fields = tableFields(TRUNK_FIELDS, { trunk }, innerPart(planting, 'extent', extent), context);
  if (extent.trunk === undefined) return fields;
  const ofTrunk = DEFAULTS.groundPerTrunk * extent.trunk;
  const say = ofTrunk > extent.diameter ? largerGround.trunk : largerGround.canopy;
  return html`${fields}<p class="help">${say(context.format, toSi(ofTrunk, 'diameter', context.plan.units))}</p>`;
}

function inGroundFields(planting: FormPart<Pick<PlanPlanting, 'inGround'>>, context: FormContext): readonly unknown[] {
  const part = innerPart(planting, 'inGround', planting.value.inGround ?? {});
  return tableFields(IN_GROUND_FIELDS, wordsOf(context).inGround, part, context);
}

function establishingFields(
  planting: FormPart<Pick<PlanPlanting, 'establishing'>>,
  context: FormContext,
): TemplateResult {
  const { establishing } = planting.value;
  const say = wordsOf(context).establishing;
  const part = innerPart(planting, 'establishing', establishing ?? { until: '', factor: ESTABLISHING_FACTOR });
  return html`${dateField(
    {
      key: part.key('until'),
      words: say.until,
      value: establishing?.until,
      isOptional: true,
      edit: (until) => (until === undefined ? planting.change({ establishing: undefined }) : part.change({ until })),
    },
    context,
  )}
  ${
    establishing === undefined
      ? nothing
      : numberField(
          {
            key: part.key('factor'),
            words: say.factor,
            value: establishing.factor,
            schema: fieldSchema(part.schema, 'factor'),
            edit: (factor) => part.change({ factor }),
          },
          context,
        )
  }`;
}

/** Another zone to move it to. */
function zoneField(
  zone: PlanZone,
  { value: { id }, key }: FormPart<PlanPlanting>,
  context: FormContext,
): TemplateResult | typeof nothing {
  const { zones } = context.plan;
  const say = wordsOf(context);
  if (zones.length < 2) return nothing;
  return choiceField(
    {
      key: key('zone'),
      words: say.zone,
      value: zone.id,
      options: zones.map((each) => ({
        value: each.id,
        label: each === zone ? say.thisZone(isolated(each.name)) : isolated(each.name),
      })),
      edit: (toZone) => ({ type: 'move-planting', zone: zone.id, planting: id, toZone }),
    },
    context,
  );
}
