/** One line of a planting, from a day on. */
import { html, nothing, type TemplateResult } from 'lit';
import { unitOf } from '../../engine/units.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import type { PlanLine, PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { createLine } from './create-and-copy.ts';
import { choiceField, numberField, textField } from './fields.ts';
import type { LineContext, PlantingContext, WateringLine } from './form-context.ts';
import { layoutFields } from './layout-fields.ts';
import { pressureFields } from './pressure-fields.ts';
import { lineSummary } from './summaries.ts';

export interface LinePlace {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
  readonly line: PlanLine;
  readonly index: number;
}

export function linePart({ zone, planting, line, index }: LinePlace, context: PlantingContext): TemplateResult {
  const { plan, form } = context;
  const at = { zone: zone.id, planting: planting.id, index };
  const key = (name: string) => `${planting.id}-line-${index}-${name}`;
  const edit = (next: PlanLine): Edit => ({ type: 'replace-line', ...at, line: next });
  const says = lineSummary(planting, index, context);
  const remove = () => {
    form.forget(`${planting.id}-line-`);
    form.commit(key('remove'), '', { type: 'remove-line', ...at });
  };
  return html`<fieldset>
    <legend>${words.line(index + 1)}</legend>
    <div class="fields">
      ${choiceField({
        ...{ form, key: key('kind'), label: words.lineKind, value: line.kind },
        options: (['dripline', 'point', 'spray', 'solid'] as const).map((kind) => ({
          value: kind,
          label: words[kind],
        })),
        edit: (kind) => edit(withDay(createLine(kind as PlanLine['kind'], plan.units), line.from)),
      })}
      ${textField({
        ...{ form, key: key('from'), label: words.from, type: 'date', optional: true, value: line.from },
        edit: (from) => edit(changed(line, { from })),
      })}
      ${line.kind === 'solid' ? nothing : emitterFields(line, { ...context, key, edit })}
    </div>
    ${line.kind === 'solid' ? nothing : pressureFields(line, { ...context, key, edit })}
    ${says === undefined ? nothing : html`<p class="derived">${says.flow} <span class=${says.isTooLong ? 'too-long' : ''}>${says.run}</span></p>`}
    ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${words.of(words.remove, words.line(index + 1))}</button>`}
  </fieldset>`;
}

const withDay = (line: PlanLine, from: string | undefined): PlanLine => (from === undefined ? line : { ...line, from });

function emitterFields(line: WateringLine, context: LineContext): TemplateResult {
  const { plan, form, key, edit } = context;
  return html`${numberField({
    ...{ form, key: key('flow'), label: words.emitterFlow, value: line.flow },
    unit: unitOf('emitterFlow', plan.units).name,
    edit: (flow) => edit({ ...line, flow: flow ?? Number.NaN }),
  })}
  ${
    line.kind === 'dripline'
      ? html`${numberField({
          ...{ form, key: key('spacing'), label: words.spacing, help: help.spacing, value: line.spacing },
          unit: unitOf('spacing', plan.units).name,
          edit: (spacing) => edit({ ...line, spacing: spacing ?? Number.NaN }),
        })}
        ${layoutFields(line, context)}`
      : numberField({
          ...{ form, key: key('count'), label: line.kind === 'point' ? words.emitterCount : words.sprayCount },
          value: line.count,
          edit: (count) => edit({ ...line, count: count ?? Number.NaN }),
        })
  }
  ${choiceField({
    ...{ form, key: key('topology'), label: words.topology, help: help.topology },
    value: line.topology ?? DEFAULTS.topology,
    options: [
      { value: 'dead-end', label: words.deadEnd },
      { value: 'loop', label: words.loopEnd },
    ],
    edit: (topology) => edit({ ...line, topology: topology as 'dead-end' | 'loop' }),
  })}
  ${choiceField({
    ...{ form, key: key('side'), label: words.slopeSide, help: help.slopeSide },
    value: line.slopeSide ?? DEFAULTS.slopeSide,
    options: (['level', 'uphill', 'downhill'] as const).map((side) => ({ value: side, label: words[side] })),
    edit: (side) => edit({ ...line, slopeSide: side as 'level' | 'uphill' | 'downhill' }),
  })}`;
}
