/** One planting: what it needs, how large it is, when it is there, how it is watered, and its lines. */
import { html, nothing, type TemplateResult } from 'lit';
import { unitOf } from '../../engine/units.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanPlanting, PlanZone } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { copyPlanting, createNextLine } from './create-and-copy.ts';
import { checkField, choiceField, numberField, refusal, textField } from './fields.ts';
import type { FormContext, PlantingContext } from './form-context.ts';
import { linePart } from './line-form.ts';
import { needFields } from './need-form.ts';

export interface PlantingPlace {
  readonly zone: PlanZone;
  readonly planting: PlanPlanting;
  /** In its zone. */
  readonly index: number;
}

export function plantingPart({ zone, planting, index }: PlantingPlace, shared: FormContext): TemplateResult {
  const { plan, form, isOpen, toggle } = shared;
  const { id, name } = planting;
  const at = { zone: zone.id, planting: id };
  const context: PlantingContext = {
    ...shared,
    planting,
    key: (field) => `${id}-${field}`,
    change: (part) => ({ type: 'change-planting', ...at, change: part }),
  };
  const addLine = () => form.commit(`${id}-add`, '', { type: 'add-line', ...at, line: createNextLine(plan, planting) });
  return html`<details class="part" ?open=${isOpen(id)} @toggle=${(event: ToggleEvent) => toggle(id, event.newState === 'open')}>
    <summary><span class="part-name">${name}</span></summary>
    ${
      isOpen(id)
        ? html`<div class="part-body">
            <div class="fields">
              ${nameField(context)} ${needFields(context)} ${extentFields(context)} ${waterFields(context)}
              ${dayFields(context)} ${zoneField(zone, context)}
            </div>
            ${drynessFields(context)}
            ${copyMoveRemove({
              ...{ name, index, count: zone.plantings.length, form },
              copy: () =>
                form.commit(`${id}-copy`, '', {
                  type: 'add-planting',
                  zone: zone.id,
                  planting: copyPlanting(plan, planting),
                  at: index + 1,
                }),
              move: (to) => form.commit(`${id}-move`, '', { type: 'move-planting', ...at, toZone: zone.id, at: to }),
              remove: () => form.commit(`${id}-remove`, '', { type: 'remove-planting', ...at }),
            })}
            <h4>${words.lines}</h4>
            ${planting.lines.length === 0 ? html`<p class="help">${words.noLine}</p>` : nothing}
            ${planting.lines.map((line, index) => linePart({ zone, planting, line, index }, context))}
            ${form.readOnly ? nothing : html`<button class="add" @click=${addLine}>${words.addLine}</button>${refusal(form, `${id}-add`)}`}
          </div>`
        : nothing
    }
  </details>`;
}

function nameField({ planting, form, key, change }: PlantingContext): TemplateResult {
  return textField({
    ...{ form, key: key('name'), label: words.plantingName, value: planting.name },
    edit: (name) => change({ name: name ?? '' }),
  });
}

function extentFields({ plan, planting, form, key, change }: PlantingContext): TemplateResult {
  const { extent } = planting;
  const us = plan.units === 'us';
  const asKind = (kind: string): PlanPlanting['extent'] =>
    kind === 'area' ? { kind, area: us ? 100 : 10 } : { kind: 'canopy', count: 1, diameter: us ? 36 : 90 };
  return html`${choiceField({
    ...{ form, key: key('extent'), label: words.extent, help: help.extent, value: extent.kind },
    options: [
      { value: 'area', label: words.byArea },
      { value: 'canopy', label: words.byCanopy },
    ],
    edit: (kind) => change({ extent: asKind(kind) }),
  })}
  ${
    extent.kind === 'area'
      ? numberField({
          ...{ form, key: key('area'), label: words.area, unit: unitOf('area', plan.units).name, value: extent.area },
          edit: (area) => change({ extent: { ...extent, area: area ?? Number.NaN } }),
        })
      : html`${numberField({
          ...{ form, key: key('count'), label: words.count, value: extent.count },
          edit: (count) => change({ extent: { ...extent, count: count ?? Number.NaN } }),
        })}
        ${numberField({
          ...{ form, key: key('diameter'), label: words.diameter, value: extent.diameter },
          unit: unitOf('diameter', plan.units).name,
          edit: (diameter) => change({ extent: { ...extent, diameter: diameter ?? Number.NaN } }),
        })}`
  }`;
}

function waterFields({ plan, planting, form, key, change }: PlantingContext): TemplateResult {
  return html`${numberField({
    ...{ form, key: key('roots'), label: words.rootDepth, help: help.rootDepth, value: planting.rootDepth },
    ...{ unit: unitOf('rootDepth', plan.units).name, otherwise: words.usual },
    edit: (rootDepth) => change({ rootDepth }),
  })}
  ${choiceField({
    ...{ form, key: key('watering'), label: words.watering, help: help.refill, value: planting.watering ?? '' },
    options: [
      { value: '', label: words.asUsual },
      { value: 'keep', label: words.keep },
      { value: 'refill', label: words.refill },
    ],
    edit: (chosen) => change({ watering: chosen === '' ? undefined : (chosen as PlanPlanting['watering']) }),
  })}
  ${checkField({
    ...{ form, key: key('shut-off'), label: words.shutOff, help: help.shutOff, value: planting.shutOff === true },
    edit: (has) => change({ shutOff: has ? true : undefined }),
  })}`;
}

function dayFields({ planting, form, key, change }: PlantingContext): TemplateResult {
  const { inGround, establishing } = planting;
  const day = (name: 'from' | 'to', label: string) =>
    textField({
      ...{ form, key: key(`in-${name}`), label, type: 'date', optional: true, value: inGround?.[name] },
      edit: (value) => change({ inGround: changed(inGround ?? {}, { [name]: value }) }),
    });
  return html`${day('from', words.inFrom)} ${day('to', words.inTo)}
  ${textField({
    ...{ form, key: key('establishing'), label: words.establishingUntil, type: 'date', optional: true },
    value: establishing?.until,
    edit: (until) =>
      change({ establishing: until === undefined ? undefined : { factor: 1.3, ...establishing, until } }),
  })}
  ${
    establishing === undefined
      ? nothing
      : numberField({
          ...{
            form,
            key: key('factor-till'),
            label: words.establishingFactor,
            unit: words.times,
            value: establishing.factor,
          },
          edit: (factor) => change({ establishing: { ...establishing, factor: factor ?? Number.NaN } }),
        })
  }`;
}

function drynessFields({ planting, form, key, change }: PlantingContext): TemplateResult {
  const share = (name: 'allowedDepletion' | 'target' | 'startDepletion', helpText: string, otherwise: string) =>
    numberField({
      ...{ form, key: key(name), label: words[name], help: helpText, value: planting[name], otherwise },
      edit: (value) => change({ [name]: value }),
    });
  return html`<details>
    <summary>${words.more}</summary>
    <div class="part-body"><div class="fields">
      ${share('allowedDepletion', help.allowedDepletion, words.usual)} ${share('target', help.dryness, '0')}
      ${share('startDepletion', help.dryness, '0')}
      ${textField({
        ...{ form, key: key('note'), label: words.note, value: planting.note, optional: true },
        edit: (note) => change({ note }),
      })}
    </div></div>
  </details>`;
}

function zoneField(zone: PlanZone, { plan, planting, form, key }: PlantingContext): TemplateResult | typeof nothing {
  if (plan.zones.length < 2) return nothing;
  return choiceField({
    ...{ form, key: key('zone'), label: words.moveTo, value: zone.id },
    options: plan.zones.map(({ id, name }) => ({
      value: id,
      label: id === zone.id ? `${name} (${words.here})` : name,
    })),
    edit: (toZone) => ({ type: 'move-planting', zone: zone.id, planting: planting.id, toZone }),
  });
}
