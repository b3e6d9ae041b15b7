/** The water supply: sources, window, allowance, tank. */

import { html, nothing, type TemplateResult } from 'lit';
import { bucketTestFlowLpm } from '../../engine/supply/bucket-test.ts';
import { toSi, unitOf } from '../../engine/units.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import { readerFor } from '../../language/reader.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed } from '../../plan/edits/change.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanSupply } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { checkField, choiceField, numberField, textField } from './fields.ts';
import type { FormController } from './form-controller.ts';
import { weekdaysField } from './weekdays-field.ts';

type Source = PlanSupply['sources'][number];

const change = (part: Change<PlanSupply>): Edit => ({ type: 'change-supply', change: part });

export function supplyForm(plan: Plan, form: FormController): TemplateResult {
  const supply = plan.supply ?? { sources: [] };
  const add = () =>
    form.commit(
      'add-source',
      '',
      change({ sources: [...supply.sources, { name: words.source(supply.sources.length + 1) }] }),
    );
  return html`${supply.sources.map((_, index) => sourceForm(plan, supply, index, form))}
    ${form.readOnly ? nothing : html`<button @click=${add}>${words.addSource}</button>`}
    <div class="fields">${windowFields(supply, form)} ${allowanceFields(plan, supply, form)} ${tankFields(plan, supply, form)}</div>`;
}

function sourceForm(plan: Plan, { sources }: PlanSupply, index: number, form: FormController): TemplateResult {
  const source = sources[index] as Source;
  const key = (name: string) => `source-${index}-${name}`;
  const edit = (next: Source): Edit => change({ sources: sources.with(index, next) });
  const remove = () => {
    form.forget('source-');
    form.commit(key('remove'), '', change({ sources: sources.toSpliced(index, 1) }));
  };
  return html`<fieldset>
    <legend>${source.name}</legend>
    <div class="fields">
      ${textField({
        ...{ form, key: key('name'), label: words.sourceName, value: source.name },
        edit: (name) => edit({ ...source, name: name ?? '' }),
      })}
      ${textField({
        ...{ form, key: key('from'), label: words.from, help: words.fromSeason, type: 'date', optional: true },
        value: source.from,
        edit: (from) => edit(changed(source, { from })),
      })}
      ${flowFields(plan, source, { form, key, edit })}
      ${numberField({
        ...{ form, key: key('pressure'), label: words.pressure, help: help.pressure },
        ...{ unit: unitOf('pressure', plan.units).name, value: source.pressure, otherwise: words.usual },
        edit: (pressure) => edit(changed(source, { pressure })),
      })}
    </div>
    ${form.readOnly ? nothing : html`<button class="plain" @click=${remove}>${words.of(words.remove, source.name)}</button>`}
  </fieldset>`;
}

interface SourceContext {
  readonly form: FormController;
  readonly key: (name: string) => string;
  readonly edit: (source: Source) => Edit;
}

function flowFields(plan: Plan, source: Source, { form, key, edit }: SourceContext): TemplateResult {
  const { flow } = source;
  const us = plan.units === 'us';
  const asKind = (kind: string): Source => {
    if (kind === 'typed') return { ...source, flow: { kind, flow: us ? 5 : 20 } };
    if (kind === 'bucket') return { ...source, flow: { kind, volume: us ? 5 : 20, seconds: 60 } };
    return changed(source, { flow: undefined });
  };
  return html`${choiceField({
    ...{ form, key: key('flow-kind'), label: words.flowKind, value: flow?.kind ?? '' },
    options: [
      { value: '', label: words.flowUnknown },
      { value: 'typed', label: words.flowTyped },
      { value: 'bucket', label: words.flowBucket },
    ],
    edit: (kind) => edit(asKind(kind)),
  })}
  ${
    flow?.kind === 'typed'
      ? numberField({
          ...{ form, key: key('flow'), label: words.flow, value: flow.flow },
          unit: unitOf('supplyFlow', plan.units).name,
          edit: (value) => edit({ ...source, flow: { ...flow, flow: value ?? Number.NaN } }),
        })
      : nothing
  }
  ${
    flow?.kind === 'bucket'
      ? html`${numberField({
          ...{ form, key: key('bucket'), label: words.bucketVolume, help: help.bucket, value: flow.volume },
          unit: unitOf('volume', plan.units).name,
          edit: (volume) => edit({ ...source, flow: { ...flow, volume: volume ?? Number.NaN } }),
        })}
        ${numberField({
          ...{ form, key: key('seconds'), label: words.bucketSeconds, unit: words.seconds, value: flow.seconds },
          edit: (seconds) => edit({ ...source, flow: { ...flow, seconds: seconds ?? Number.NaN } }),
        })}
        <p class="derived wide">${words.bucketGives(flowInWords(flow, plan, form))}</p>`
      : nothing
  }`;
}

function flowInWords(
  { volume, seconds }: Extract<NonNullable<Source['flow']>, { kind: 'bucket' }>,
  { units }: Plan,
  { locale }: FormController,
): string {
  const flowLpm = bucketTestFlowLpm({ volumeL: toSi(volume, 'volume', units), seconds });
  return formatQuantity(flowLpm, 'supplyFlow', readerFor(locale, units));
}

function windowFields({ window }: PlanSupply, form: FormController): TemplateResult {
  const hoursPerDay = window?.hoursPerDay ?? DEFAULTS.windowHoursPerDay;
  return html`${numberField({
    ...{ form, key: 'window-hours', label: words.hours, help: help.window, unit: words.hoursUnit },
    ...{ value: window?.hoursPerDay, otherwise: words.allDay },
    edit: (hours) => change({ window: hours === undefined ? undefined : { ...window, hoursPerDay: hours } }),
  })}
  ${weekdaysField({
    ...{ form, key: 'window-days', label: words.weekdays, value: window?.weekdays },
    edit: (weekdays) => change({ window: changed({ ...window, hoursPerDay }, { weekdays }) }),
  })}`;
}

function allowanceFields({ units }: Plan, { allowance }: PlanSupply, form: FormController): TemplateResult {
  const field = (name: 'perWeek' | 'perSeason') =>
    numberField({
      ...{ form, key: `allowance-${name}`, label: words[name], unit: unitOf('volume', units).name },
      ...{ value: allowance?.[name], otherwise: words.noLimit },
      edit: (value) => change({ allowance: changed(allowance ?? {}, { [name]: value }) }),
    });
  return html`${field('perWeek')} ${field('perSeason')}`;
}

function tankFields({ units }: Plan, { tank }: PlanSupply, form: FormController): TemplateResult {
  const us = units === 'us';
  const begun = { capacity: us ? 275 : 1000, start: 0 };
  const volume = unitOf('volume', units).name;
  const edit = (next: NonNullable<PlanSupply['tank']>): Edit => change({ tank: next });
  return html`${checkField({
    ...{ form, key: 'tank', label: words.hasTank, help: help.tank, value: tank !== undefined },
    edit: (has) => change({ tank: has ? begun : undefined }),
  })}
  ${
    tank === undefined
      ? nothing
      : html`${numberField({
          ...{ form, key: 'tank-capacity', label: words.capacity, unit: volume, value: tank.capacity },
          edit: (capacity) => edit({ ...tank, capacity: capacity ?? Number.NaN }),
        })}
        ${numberField({
          ...{ form, key: 'tank-start', label: words.startLevel, unit: volume, value: tank.start },
          edit: (start) => edit({ ...tank, start: start ?? Number.NaN }),
        })}
        ${numberField({
          ...{ form, key: 'tank-roof', label: words.roofArea, unit: unitOf('area', units).name },
          ...{ value: tank.roofArea, otherwise: words.noRoof },
          edit: (roofArea) => edit(changed(tank, { roofArea })),
        })}
        ${numberField({
          ...{ form, key: 'tank-runoff', label: words.runoff, unit: '0–1' },
          ...{ value: tank.runoffCoefficient, otherwise: String(DEFAULTS.runoffCoefficient) },
          edit: (runoffCoefficient) => edit(changed(tank, { runoffCoefficient })),
        })}`
  }`;
}
