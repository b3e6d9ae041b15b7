/** The fields of a line, by how it lies. */
import { html, nothing, type TemplateResult } from 'lit';
import { startWords } from '../../language/en/start.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import type { SchemaNode } from '../../plan/schema/walk.ts';
import { choiceField, type FieldWords, numberField, optionsOf } from '../garden/fields.ts';
import { fieldSchema, innerSchema, schemaAt } from '../garden/form-context.ts';
import type { StartContext } from './start-context.ts';

/** A planting with the zone that it stands in. */
export interface PlantingInZone {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
}

type Tube = Exclude<PlanLine, { kind: 'solid' }>;
type Quantity = Parameters<typeof numberField>[0]['quantity'];

/** Edits of one line; `schema`: of the line as it lies. */
function partOf({ plan }: StartContext, { zone, planting }: PlantingInZone, index: number, line: PlanLine) {
  const at = { zone: zone.id, planting: planting.id };
  const path = ['zones', plan.zones.indexOf(zone), 'plantings', zone.plantings.indexOf(planting), 'lines', index];
  const edit = (next: PlanLine): Edit => ({ type: 'replace-line', ...at, index, line: next });
  return { schema: schemaAt(plan, path), edit, key: (field: string) => `laid-${planting.id}-${index}-${field}`, line };
}

export function lineFields(context: StartContext, laid: PlantingInZone, index: number, line: PlanLine): TemplateResult {
  const say = startWords(context.reader.language).lines;
  const part = partOf(context, laid, index, line);
  const field = (
    name: string,
    words: FieldWords,
    value: number | undefined,
    quantity: Quantity,
    edit: (value: number) => PlanLine,
    schema: SchemaNode = part.schema,
  ) =>
    numberField(
      {
        key: part.key(name),
        words,
        value,
        quantity,
        schema: fieldSchema(schema, name),
        edit: (typed) => part.edit(typed === undefined ? line : edit(typed)),
      },
      context,
    );
  switch (line.kind) {
    case 'dripline': {
      const inner = innerSchema(part.schema, 'layout', line.layout);
      return html`<div class="fields">
        ${field('flow', say.emitter, line.flow, 'emitterFlow', (flow) => ({ ...line, flow }))}
        ${field('spacing', say.spacing, line.spacing, 'spacing', (spacing) => ({ ...line, spacing }))}
        ${layoutFields(line, say, (name, words, value, quantity, layout) => field(name, words, value, quantity, (typed) => ({ ...line, layout: layout(typed) }), inner))}
      </div>`;
    }
    case 'point':
    case 'spray':
      return html`<div class="fields">
        ${field('flow', say.emitter, line.flow, 'emitterFlow', (flow) => ({ ...line, flow }))}
        ${field('count', line.kind === 'point' ? say.count : say.sprays, line.count, undefined, (count) => ({ ...line, count }))}
      </div>`;
    case 'solid':
      return html`<div class="fields">${field('length', { ...say.solidLength, empty: '' }, line.length, 'length', (length) => ({ ...line, length }))}</div>`;
  }
}

type Dripline = Extract<PlanLine, { kind: 'dripline' }>;
type Layout = Dripline['layout'];

function layoutFields(
  { layout }: Dripline,
  say: ReturnType<typeof startWords>['lines'],
  field: (
    name: string,
    words: FieldWords,
    value: number,
    quantity: Quantity,
    layout: (value: number) => Layout,
  ) => TemplateResult,
): TemplateResult {
  if (layout.kind === 'loops')
    return field('perPlant', say.perPlant, layout.perPlant, undefined, (perPlant) => ({ ...layout, perPlant }));
  const length = field('length', say.length, layout.length, 'length', (typed) => ({ ...layout, length: typed }));
  return layout.kind === 'rows'
    ? html`${field('rows', say.rows, layout.rows, undefined, (rows) => ({ ...layout, rows }))}${length}`
    : length;
}

/** Its far end and its way on a slope; a solid line has none of them. */
export function moreLineFields(
  context: StartContext,
  laid: PlantingInZone,
  index: number,
  line: PlanLine,
): TemplateResult | typeof nothing {
  if (line.kind === 'solid') return nothing;
  const say = startWords(context.reader.language).lines;
  const part = partOf(context, laid, index, line);
  const change = (fields: { readonly [Field in 'topology' | 'slopeSide' | 'risePercent']?: Tube[Field] | undefined }) =>
    part.edit(changed<Tube>(line, fields));
  const side = line.slopeSide ?? DEFAULTS.slopeSide;
  return html`<div class="fields">
    ${choiceField<NonNullable<Tube['topology']>>({ key: part.key('topology'), words: say.topology, value: line.topology ?? DEFAULTS.topology, options: optionsOf(say.topology.options), edit: (topology) => change({ topology }) }, context)}
    ${choiceField<NonNullable<Tube['slopeSide']>>({ key: part.key('slopeSide'), words: say.side, value: side, options: optionsOf(say.side.options), edit: (slopeSide) => change({ slopeSide }) }, context)}
    ${numberField({ key: part.key('risePercent'), words: { ...say.rise, empty: '0' }, value: line.risePercent, schema: fieldSchema(part.schema, 'risePercent'), edit: (risePercent) => change({ risePercent }) }, context)}
  </div>
  ${side === 'level' && (line.risePercent ?? 0) === 0 ? nothing : html`<p class="caution">${say.slopeSays}</p>`}`;
}
