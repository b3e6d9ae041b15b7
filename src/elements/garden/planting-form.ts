/** One planting: what it needs, how large it is, when it is there, how it is watered, and its lines. */

import { html, nothing, type TemplateResult } from 'lit';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { isolated } from '../../language/format/isolated.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { copyPlanting, createNextLine } from './create-and-copy.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { choiceField, dateField, numberField, optionsOf, refusal } from './fields.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';
import { linePart } from './line-form.ts';
import { needFields } from './need-form.ts';

type Extent = PlanPlanting['extent'];

/** Shown folded: a planting is watered well without them. */
type MoreFields = Pick<PlanPlanting, 'allowedDepletion' | 'target' | 'startDepletion' | 'note'>;

const PLANTING_FIELDS: FieldTable<Omit<PlanPlanting, keyof MoreFields | 'id' | 'lines'>, FormContext> = {
  name: { kind: 'text' },
  need: { kind: 'own', fields: needFields },
  extent: { kind: 'own', fields: extentFields },
  rootDepth: { kind: 'number', quantity: 'rootDepth' },
  watering: { kind: 'choice', options: (context) => optionsOf(wordsOf(context).watering.options) },
  shutOff: { kind: 'check' },
  inGround: { kind: 'own', fields: inGroundFields },
  establishing: { kind: 'own', fields: establishingFields },
};

const MORE_FIELDS: FieldTable<MoreFields, FormContext> = {
  allowedDepletion: { kind: 'number' },
  target: { kind: 'number', fallback: DEFAULTS.target },
  startDepletion: { kind: 'number', fallback: DEFAULTS.startDepletion },
  note: { kind: 'text', isOptional: true },
};

const AREA_FIELDS: FieldTable<Omit<Extract<Extent, { kind: 'area' }>, 'kind'>, FormContext> = {
  area: { kind: 'number', quantity: 'area' },
};

const CANOPY_FIELDS: FieldTable<Omit<Extract<Extent, { kind: 'canopy' }>, 'kind'>, FormContext> = {
  count: { kind: 'number' },
  diameter: { kind: 'number', quantity: 'diameter' },
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
    <summary><span class="part-name">${isolated(planting.name)}</span></summary>
    ${isOpen(key) ? html`<div class="part-body">${plantingForm({ zone, planting, index }, context)}</div>` : nothing}
  </details>`;
}

function plantingForm({ zone, planting, index }: PlantingIndex, context: FormContext): TemplateResult {
  const { plan, form } = context;
  const say = wordsOf(context);
  const at = { zone: zone.id, planting: planting.id };
  const part: FormPart<PlanPlanting> = {
    value: planting,
    schema: schemaAt(plan, ['zones', plan.zones.indexOf(zone), 'plantings', index]),
    key: (field) => `planting-${planting.id}-${field}`,
    change: (change) => ({ type: 'change-planting', ...at, change }),
  };
  const actions = {
    copy: () =>
      form.send(part.key('actions'), '', {
        type: 'add-planting',
        zone: zone.id,
        planting: copyPlanting(plan, planting),
        at: index + 1,
      }),
    move: (to: number) => form.send(part.key('actions'), '', { type: 'move-planting', ...at, toZone: zone.id, at: to }),
    remove: () => form.send(part.key('actions'), '', { type: 'remove-planting', ...at }),
  };
  return html`<div class="fields">
      ${tableFields(PLANTING_FIELDS, say, part, context)} ${zoneField(zone, part, context)}
    </div>
    <details>
      <summary>${say.more}</summary>
      <div class="part-body"><div class="fields">${tableFields(MORE_FIELDS, say, part, context)}</div></div>
    </details>
    ${copyMoveRemove({ name: isolated(planting.name), key: part.key, index, count: zone.plantings.length, ...actions }, context)}
    ${linesOf(zone, planting, context)}`;
}

function linesOf(zone: PlanZone, planting: PlanPlanting, context: FormContext): TemplateResult {
  const { plan, form, reader } = context;
  const { addLine, noLines, planting: say } = gardenZonesWords(reader.language);
  const key = `planting-${planting.id}-add`;
  const add = () =>
    form.send(key, '', {
      type: 'add-line',
      zone: zone.id,
      planting: planting.id,
      line: createNextLine(plan, planting),
    });
  return html`<h4>${say.lines}</h4>
    ${planting.lines.length === 0 ? html`<p class="help">${noLines}</p>` : nothing}
    ${planting.lines.map((line, index) => linePart({ zone, planting, line, index }, context))}
    ${form.readOnly ? nothing : html`<button class="add" name=${key} @click=${add}>${addLine}</button>${refusal(key, context)}`}`;
}

function extentFields(planting: FormPart<Pick<PlanPlanting, 'extent'>>, context: FormContext): TemplateResult {
  const { extent } = planting.value;
  const us = context.plan.units === 'us';
  const say = wordsOf(context);
  const begun = {
    area: { kind: 'area', area: us ? 100 : 10 },
    canopy: { kind: 'canopy', count: 1, diameter: us ? 36 : 90 },
  } as const;
  return html`${choiceField(
    {
      key: planting.key('extent'),
      words: say.extentKind,
      value: extent.kind,
      options: optionsOf(say.extentKind.options),
      edit: (kind) => planting.change({ extent: begun[kind] }),
    },
    context,
  )}
  ${
    extent.kind === 'area'
      ? tableFields(AREA_FIELDS, say, innerPart(planting, 'extent', extent), context)
      : tableFields(CANOPY_FIELDS, say, innerPart(planting, 'extent', extent), context)
  }`;
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
