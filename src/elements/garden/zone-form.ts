/** One zone: its timer, its rule, its soil, and the plantings in it. */
import { html, nothing, type TemplateResult } from 'lit';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { PlanZone, Weekday } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { spread } from '../../plan/spread.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { copyMoveRemove } from './copy-move-remove.ts';
import { copyZone, createPlanting } from './create-and-copy.ts';
import { checkField, choiceField, numberField, refusal, textField } from './fields.ts';
import type { FormContext } from './form-context.ts';
import { plantingPart } from './planting-form.ts';
import { textureOptions } from './site-form.ts';
import { zoneSummary } from './summaries.ts';
import { weekdaysField } from './weekdays-field.ts';

export function zonePart(zone: PlanZone, index: number, context: FormContext): TemplateResult {
  const { plan, form, isOpen, toggle } = context;
  const add = () => {
    const planting = createPlanting(plan);
    form.commit(`${zone.id}-add`, '', { type: 'add-planting', zone: zone.id, planting });
    toggle(planting.id, true);
  };
  return html`<details class="part" ?open=${isOpen(zone.id)} @toggle=${(event: ToggleEvent) => toggle(zone.id, event.newState === 'open')}>
    <summary><span class="part-name">${zone.name}</span> <span class="quiet">${zoneSummary(zone, context)}</span></summary>
    ${
      isOpen(zone.id)
        ? html`<div class="part-body">
            ${zoneFields(zone, context)}
            ${copyMoveRemove({
              ...{ name: zone.name, index, count: plan.zones.length, form },
              copy: () =>
                form.commit(`${zone.id}-copy`, '', { type: 'add-zone', zone: copyZone(plan, zone), at: index + 1 }),
              move: (to) => form.commit(`${zone.id}-move`, '', { type: 'move-zone', zone: zone.id, to }),
              remove: () => form.commit(`${zone.id}-remove`, '', { type: 'remove-zone', zone: zone.id }),
            })}
            ${zone.plantings.map((planting, index) => plantingPart({ zone, planting, index }, context))}
            ${form.readOnly ? nothing : html`<button class="add" @click=${add}>${words.addPlanting}</button>${refusal(form, `${zone.id}-add`)}`}
          </div>`
        : nothing
    }
  </details>`;
}

function zoneFields(zone: PlanZone, { plan, form }: FormContext): TemplateResult {
  const key = (name: string) => `${zone.id}-${name}`;
  const change = (part: Change<Omit<PlanZone, 'id' | 'plantings'>>): Edit => ({
    type: 'change-zone',
    zone: zone.id,
    change: part,
  });
  return html`<div class="fields">
    ${textField({
      ...{ form, key: key('name'), label: words.zoneName, help: help.zone, value: zone.name },
      edit: (name) => change({ name: name ?? '' }),
    })}
    ${daysFields(zone, plan.supply?.window?.weekdays ?? WEEKDAYS, { form, key, change })} ${ruleField(zone, { form, key, change })}
    ${numberField({
      ...{ form, key: key('step'), label: words.timerStep, help: help.timerStep, unit: words.minutes },
      ...{ value: zone.timerStepMinutes, otherwise: String(DEFAULTS.timerStepMinutes) },
      edit: (timerStepMinutes) => change({ timerStepMinutes }),
    })}
    ${numberField({
      ...{ form, key: key('cycle'), label: words.longestCycle, help: help.longestCycle, unit: words.minutes },
      ...{ value: zone.longestCycleMinutes, otherwise: words.fromSoil },
      edit: (longestCycleMinutes) => change({ longestCycleMinutes }),
    })}
    ${choiceField({
      ...{ form, key: key('soil'), label: words.zoneSoil, value: zone.soil ?? '' },
      options: [{ value: '', label: words.siteSoil }, ...textureOptions],
      edit: (soil) => change({ soil: soil === '' ? undefined : (soil as PlanZone['soil']) }),
    })}
    ${numberField({
      ...{ form, key: key('slope'), label: words.zoneSlope, unit: '%' },
      ...{ value: zone.slopePercent, otherwise: words.siteSoil },
      edit: (slopePercent) => change({ slopePercent }),
    })}
    ${applicationFields(zone, { form, key, change })}
    ${textField({
      ...{ form, key: key('note'), label: words.note, value: zone.note, optional: true },
      edit: (note) => change({ note }),
    })}
  </div>`;
}

/** So many days a week, or weekdays named one by one. */
function daysFields(
  { wateringDays }: PlanZone,
  allowed: readonly Weekday[],
  { form, key, change }: ZoneContext,
): TemplateResult {
  const isFixed = typeof wateringDays !== 'number';
  const days = isFixed ? wateringDays.length : wateringDays;
  const fixed = (isOn: boolean) => change({ wateringDays: isOn ? [...spread(allowed, days)] : days });
  return html`${
    isFixed
      ? weekdaysField({
          ...{ form, key: key('weekdays'), label: words.waterOn, value: wateringDays },
          edit: (weekdays) => change({ wateringDays: [...(weekdays ?? WEEKDAYS)] }),
        })
      : numberField({
          ...{ form, key: key('days'), label: words.wateringDays, value: days },
          edit: (count) => change({ wateringDays: count ?? Number.NaN }),
        })
  }
  ${checkField({ ...{ form, key: key('fixed'), label: words.fixedDays, value: isFixed }, edit: fixed })}`;
}

interface ZoneContext {
  readonly form: FormContext['form'];
  readonly key: (name: string) => string;
  readonly change: (part: Change<Omit<PlanZone, 'id' | 'plantings'>>) => Edit;
}

function ruleField(zone: PlanZone, { form, key, change }: ZoneContext): TemplateResult {
  const { rule } = zone;
  const chosen = rule === undefined ? 'thirstiest' : rule.kind === 'planting' ? `planting:${rule.planting}` : rule.kind;
  const read = (value: string): PlanZone['rule'] => {
    if (value === 'area-weighted') return { kind: value };
    return value.startsWith('planting:') ? { kind: 'planting', planting: value.slice(9) } : undefined;
  };
  return choiceField({
    ...{ form, key: key('rule'), label: words.rule, value: chosen },
    options: [
      { value: 'thirstiest', label: words.thirstiest },
      { value: 'area-weighted', label: words.areaWeighted },
      ...zone.plantings.map(({ id, name }) => ({ value: `planting:${id}`, label: words.planting(name) })),
    ],
    edit: (value) => change({ rule: read(value) }),
  });
}

/** A share that is asked for starts from what is usual. */
const USUAL = { efficiency: 0.81, 'distribution-uniformity': 0.8 } as const;

function applicationFields({ application }: PlanZone, { form, key, change }: ZoneContext): TemplateResult {
  const asKind = (kind: string): PlanZone['application'] => {
    if (kind === 'efficiency' || kind === 'distribution-uniformity') return { kind, value: USUAL[kind] };
    return kind === 'computed' ? { kind } : undefined;
  };
  return html`${choiceField({
    ...{ form, key: key('application'), label: words.application, value: application?.kind ?? '' },
    options: [
      { value: '', label: words.applicationDefault },
      { value: 'efficiency', label: words.applicationEfficiency },
      { value: 'distribution-uniformity', label: words.applicationUniformity },
      { value: 'computed', label: words.applicationComputed },
    ],
    edit: (kind) => change({ application: asKind(kind) }),
  })}
  ${
    application === undefined || application.kind === 'computed'
      ? nothing
      : numberField({
          ...{ form, key: key('share'), label: words.share, unit: '0–1', value: application.value },
          edit: (value) => change({ application: { ...application, value: value ?? Number.NaN } }),
        })
  }`;
}
