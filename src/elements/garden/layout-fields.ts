/** How a dripline is laid: by its length, in rows, or in loops round each plant. */
import { html, type TemplateResult } from 'lit';
import { unitOf } from '../../engine/units.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanLine } from '../../plan/schema/plan-schema.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { choiceField, numberField } from './fields.ts';
import type { LineContext } from './form-context.ts';

type Dripline = Extract<PlanLine, { kind: 'dripline' }>;
type Layout = Dripline['layout'];

export function layoutFields(line: Dripline, context: LineContext): TemplateResult {
  const { plan, form, key, edit } = context;
  const us = plan.units === 'us';
  const asKind = (kind: string): Layout => {
    if (kind === 'length') return { kind, length: us ? 40 : 12 };
    return kind === 'rows' ? { kind, rows: 2, length: us ? 20 : 6 } : { kind: 'loops', perPlant: 1 };
  };
  return html`${choiceField({
    ...{ form, key: key('layout'), label: words.layout, value: line.layout.kind },
    options: [
      { value: 'length', label: words.byLength },
      { value: 'rows', label: words.inRows },
      { value: 'loops', label: words.inLoops },
    ],
    edit: (kind) => edit({ ...line, layout: asKind(kind) }),
  })}
  ${sizeFields(line, context)}`;
}

function sizeFields(line: Dripline, { plan, form, key, edit }: LineContext): TemplateResult {
  const { layout } = line;
  const laid = (next: Layout) => edit({ ...line, layout: next });
  if (layout.kind === 'loops') {
    return html`${numberField({
      ...{ form, key: key('loops'), label: words.loops, value: layout.perPlant },
      edit: (perPlant) => laid({ ...layout, perPlant: perPlant ?? Number.NaN }),
    })}
    ${numberField({
      ...{ form, key: key('loop-diameter'), label: words.diameter, unit: unitOf('diameter', plan.units).name },
      ...{ value: layout.diameter, otherwise: words.usual },
      edit: (diameter) => laid(changed(layout, { diameter })),
    })}`;
  }
  const length = numberField({
    ...{ form, key: key('length'), label: layout.kind === 'rows' ? words.rowLength : words.length },
    ...{ unit: unitOf('length', plan.units).name, value: layout.length },
    edit: (value) => laid({ ...layout, length: value ?? Number.NaN }),
  });
  if (layout.kind === 'length') return length;
  return html`${numberField({
    ...{ form, key: key('rows'), label: words.rows, value: layout.rows },
    edit: (rows) => laid({ ...layout, rows: rows ?? Number.NaN }),
  })}
  ${length}`;
}
