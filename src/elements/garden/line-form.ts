/** One line of a planting, from a day on: its emitters, how it is laid, and what decides the pressure along it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../engine/units.ts';
import { gardenWords } from '../../language/en/garden.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { linesFor } from '../../plan/usual-lines.ts';
import { applicationField } from './application-field.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { choiceField, type FieldWords, numberField, optionsOf, refusal } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, innerSchema, schemaAt } from './form-context.ts';
import { lineSummary } from './line-summary.ts';

type SolidLine = Extract<PlanLine, { kind: 'solid' }>;

/** A line that brings water. */
type WateringLine = Exclude<PlanLine, { kind: 'solid' }>;
type Dripline = Extract<PlanLine, { kind: 'dripline' }>;
type Layout<Kind extends Dripline['layout']['kind']> = Omit<Extract<Dripline['layout'], { kind: Kind }>, 'kind'>;

type DayFields = Pick<PlanLine, 'from' | 'to'>;
type EndFields = Pick<WateringLine, 'topology' | 'slopeSide'>;
/** Shown folded: what usual goods on level ground do without. */
type MoreFields = Pick<WateringLine, 'emitter' | 'insideDiameter' | 'risePercent' | 'application'>;
/** The fields of one kind alone. */
type OwnFields<Kind extends WateringLine['kind']> = Omit<
  Extract<WateringLine, { kind: Kind }>,
  'kind' | keyof DayFields | keyof EndFields | keyof MoreFields
>;

const DAY_FIELDS: FieldTable<DayFields, FormContext> = {
  from: { kind: 'date', isOptional: true },
  to: { kind: 'date', isOptional: true },
};

/** A solid line carries water to where it is wanted: what it loses on the way hangs on these. */
const SOLID_FIELDS: FieldTable<Omit<SolidLine, 'kind' | keyof DayFields>, FormContext> = {
  length: { kind: 'number', quantity: 'length' },
  insideDiameter: { kind: 'number', quantity: 'bore' },
  risePercent: { kind: 'number', fallback: 0 },
};

const DRIPLINE_FIELDS: FieldTable<OwnFields<'dripline'>, FormContext> = {
  flow: { kind: 'number', quantity: 'emitterFlow' },
  spacing: { kind: 'number', quantity: 'spacing' },
  layout: { kind: 'own', fields: layoutFields },
};

const EMITTER_FIELDS: FieldTable<OwnFields<'point' | 'spray'>, FormContext> = {
  flow: { kind: 'number', quantity: 'emitterFlow' },
  count: { kind: 'number' },
};

const END_FIELDS: FieldTable<EndFields, FormContext> = {
  topology: {
    kind: 'choice',
    fallback: DEFAULTS.topology,
    options: (context) => optionsOf(wordsOf(context).topology.options),
  },
  slopeSide: {
    kind: 'choice',
    fallback: DEFAULTS.slopeSide,
    options: (context) => optionsOf(wordsOf(context).slopeSide.options),
  },
};

const MORE_FIELDS: FieldTable<MoreFields, FormContext> = {
  emitter: { kind: 'own', fields: pressureFields },
  insideDiameter: { kind: 'number', quantity: 'bore' },
  risePercent: { kind: 'number', fallback: 0 },
  application: { kind: 'own', fields: lineApplication },
};

const LENGTH_FIELDS: FieldTable<Layout<'length'>, FormContext> = { length: { kind: 'number', quantity: 'length' } };

const ROW_FIELDS: FieldTable<Layout<'rows'>, FormContext> = {
  rows: { kind: 'number' },
  length: { kind: 'number', quantity: 'length' },
};

const LOOP_FIELDS: FieldTable<Layout<'loops'>, FormContext> = {
  perPlant: { kind: 'number' },
  diameter: { kind: 'number', quantity: 'diameter' },
};

const wordsOf = ({ reader }: FormContext) => gardenZonesWords(reader.language).lineForm;

export interface LineIndex {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
  readonly line: PlanLine;
  readonly index: number;
}

export function linePart({ zone, planting, line, index }: LineIndex, context: FormContext): TemplateResult {
  const { plan, form, format, reader } = context;
  const zoneIndex = plan.zones.indexOf(zone);
  const plantingIndex = zone.plantings.indexOf(planting);
  const { line: nameOf, lineForm: say } = gardenZonesWords(reader.language);
  const { actions, actionOn } = gardenWords(reader.language);
  const at = { zone: zone.id, planting: planting.id, index };
  const keys = `planting-${planting.id}-line-`;
  const key = (field: string) => `${keys}${index}-${field}`;
  const edit = (next: PlanLine): Edit => ({ type: 'replace-line', ...at, line: next });
  const schema = schemaAt(plan, ['zones', zoneIndex, 'plantings', plantingIndex, 'lines', index]);
  const partOf = <Line extends PlanLine>(value: Line): FormPart<Line> => ({
    value,
    schema,
    key,
    change: (change) => edit(changed(value, change)),
  });
  const name = nameOf(format, index);
  const summary = lineSummary(planting, index, context);
  const remove = () => {
    form.send(key('remove'), '', { type: 'remove-line', ...at }, () => form.forget(keys));
  };
  return html`<fieldset>
    <legend>${name}</legend>
    <div class="fields">
      ${choiceField(
        {
          key: key('kind'),
          words: say.kind,
          value: line.kind === 'dripline' ? line.layout.kind : line.kind,
          options: optionsOf(say.kind.options),
          edit: (way) => edit(laidAs(way, line, planting, plan.units)),
        },
        context,
      )}
      ${line.kind === 'solid' ? tableFields(SOLID_FIELDS, { ...say, length: say.solidLength }, partOf(line), context) : kindFields(partOf(line), context)}
    </div>
    ${fieldsFold(line.kind === 'solid' ? say.days : say.more, () => [tableFields(DAY_FIELDS, say, partOf<PlanLine>(line), context), line.kind === 'solid' ? nothing : moreFields(partOf(line), context)], context)}
    ${summary === undefined ? nothing : html`<p class="derived">${summary.flow} <span class=${summary.isTooLong ? 'too-long' : ''}>${summary.run}</span></p>`}
    ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${actionOn(actions.remove, name)}</button>${refusal(key('remove'), context)}`}
  </fieldset>`;
}

function kindFields(part: FormPart<WateringLine>, context: FormContext): readonly unknown[] {
  const own = OWN_FIELDS[part.value.kind] as OwnInputs<WateringLine>;
  return own(part.value, part, context);
}

type OwnInputs<Line> = (value: Line, part: FormPart<WateringLine>, context: FormContext) => readonly unknown[];

/** The fields that lines of one kind alone have. */
const OWN_FIELDS: {
  readonly [Kind in WateringLine['kind']]: OwnInputs<Extract<WateringLine, { kind: Kind }>>;
} = {
  dripline: (value, part, context) => tableFields(DRIPLINE_FIELDS, wordsOf(context), { ...part, value }, context),
  point: (value, part, context) => emitterFields(wordsOf(context).emitterCount, { ...part, value }, context),
  spray: (value, part, context) => emitterFields(wordsOf(context).sprayCount, { ...part, value }, context),
};

function emitterFields(count: FieldWords, part: FormPart<OwnFields<'point' | 'spray'>>, context: FormContext) {
  return tableFields(EMITTER_FIELDS, { ...wordsOf(context), count }, part, context);
}

function moreFields(part: FormPart<WateringLine>, context: FormContext): readonly unknown[] {
  return tableFields(END_FIELDS, wordsOf(context), part, context).concat(
    tableFields(MORE_FIELDS, wordsOf(context), part, context),
  );
}

/** Its own efficiency, where it is known: a spray beside drip has another. */
function lineApplication(line: FormPart<MoreFields>, context: FormContext): TemplateResult {
  const { zone, lineForm } = gardenZonesWords(context.reader.language);
  const { computed: _, ...options } = zone.application.options;
  return applicationField(line, { options, usual: lineForm.asZone }, context);
}

type Way = 'rows' | 'loops' | 'length' | 'point' | 'spray' | 'solid';

/** Another way of laying, with the goods that lie there where they fit it; rows and lengths are worked out from the planting's size. */
function laidAs(way: Way, line: PlanLine, { extent }: PlanPlanting, units: UnitSystem): PlanLine {
  const [next = line] = linesFor(way === 'length' ? 'rows' : way === 'point' ? 'points' : way, extent, units, line);
  const days = { from: line.from, to: line.to };
  if (way !== 'length' || next.kind !== 'dripline' || next.layout.kind !== 'rows') return changed(next, days);
  const { rows, length } = next.layout;
  return changed<PlanLine>({ ...next, layout: { kind: 'length', length: rows * length } }, days);
}

function layoutFields(line: FormPart<OwnFields<'dripline'>>, context: FormContext): readonly unknown[] {
  const { layout } = line.value;
  const say = wordsOf(context);
  switch (layout.kind) {
    case 'length':
      return tableFields(LENGTH_FIELDS, say, innerPart(line, 'layout', layout), context);
    case 'rows':
      return tableFields(ROW_FIELDS, { ...say, length: say.rowLength }, innerPart(line, 'layout', layout), context);
    case 'loops':
      return tableFields(
        LOOP_FIELDS,
        { ...say, diameter: say.loopDiameter },
        innerPart(line, 'layout', layout),
        context,
      );
  }
}

/** How its emitters answer to pressure. Left out, they compensate, from a usual pressure on. */
function pressureFields(line: FormPart<MoreFields>, context: FormContext): TemplateResult {
  const { emitter } = line.value;
  const schema = innerSchema(line.schema, 'emitter', emitter ?? { kind: DEFAULTS.emitter });
  const say = wordsOf(context);
  return html`${choiceField(
    {
      key: line.key('emitter'),
      words: say.emitter,
      value: emitter?.kind ?? DEFAULTS.emitter,
      options: optionsOf(say.emitter.options),
      edit: (kind) => line.change({ emitter: kind === 'plain' ? { kind, exponent: DEFAULTS.exponent } : undefined }),
    },
    context,
  )}
  ${
    emitter?.kind === 'plain'
      ? numberField(
          {
            key: line.key('exponent'),
            words: say.exponent,
            value: emitter.exponent,
            schema: fieldSchema(schema, 'exponent'),
            edit: (exponent = Number.NaN) => line.change({ emitter: { ...emitter, exponent } }),
          },
          context,
        )
      : numberField(
          {
            key: line.key('leastPressure'),
            words: say.leastPressure,
            value: emitter?.leastPressure,
            schema: fieldSchema(schema, 'leastPressure'),
            quantity: 'pressure',
            fallback: DEFAULTS.leastPressureKpa,
            edit: (least) =>
              line.change({
                emitter: least === undefined ? undefined : { kind: 'compensating', leastPressure: least },
              }),
          },
          context,
        )
  }`;
}
