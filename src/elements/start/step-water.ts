/** Step 2: the source, how much water it gives, its pressure, and what comes later in the season. */
import { html, nothing, type TemplateResult } from 'lit';
import { startWords } from '../../language/en/start.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import { changed, removedAt } from '../../plan/edits/change.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanSupply } from '../../plan/schema/plan-schema.ts';
import { sourceFlowLpm } from '../../plan/to-garden/supply.ts';
import { dateField, numberField, textField } from '../garden/fields.ts';
import { fieldSchema, schemaAt } from '../garden/form-context.ts';
import { laterSourceButton, withBegun, withSourceAt } from '../garden/later-source.ts';
import { isAssumed, type MakeStep, type StartContext } from './start-context.ts';
import { assumable, cards, caution, fold, stepHead } from './start-parts.ts';

type Source = PlanSupply['sources'][number];
type Bucket = Extract<NonNullable<Source['flow']>, { kind: 'bucket' }>;

/** A usual bucket. */
const BUCKET = { us: 5, metric: 10 } as const;

/** A bucket whose seconds are still to be typed. */
interface BegunBucket {
  volume: number | undefined;
}

export const makeStep: MakeStep = () => {
  const begun: BegunBucket = { volume: undefined };
  return (context) => stepWater(context, begun);
};

function stepWater(context: StartContext, begun: BegunBucket): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language);
  const sources = plan.supply?.sources ?? [];
  const [source = { name: say.sources.bib }] = sources;
  const isMain = source.name === say.sources.main;
  return html`${stepHead(say.water.title, say.water.lead)}
    <div class="two">
      <div>
        <div id="part-source">${cards(context, {
          key: 'source',
          legend: say.water.source,
          value: isMain ? 'main' : 'bib',
          assumed: isAssumed(context, 'source'),
          options: [
            { value: 'bib', ...say.water.bib, drawing: 'hoseBib' },
            { value: 'main', ...say.water.main, drawing: 'main' },
          ],
          choose: (kind) => context.form.send('source', '', withSource(plan, { ...source, name: say.sources[kind] })),
        })}</div>
        <p class="help">${isMain ? say.water.mainSays : say.water.bibSays}</p>
        ${caution(context, 'backflow')}
        ${isMain ? caution(context, 'digging') : nothing}
      </div>
      <div>${flowTemplate(context, source, isMain, begun)}</div>
    </div>
    ${fold(context, 'water-later', say.water.later, say.water.laterSays, () => laterTemplate(context, sources))}`;
}

/** Another source in the place of the first, with which the season begins. */
function withSource(plan: Plan, source: Source): Edit {
  return { type: 'change-supply', change: { sources: (plan.supply?.sources ?? []).toSpliced(0, 1, source) } };
}

function flowTemplate(context: StartContext, source: Source, isMain: boolean, begun: BegunBucket): TemplateResult {
  const { plan, reader, format } = context;
  const say = startWords(reader.language).water;
  const { flow } = source;
  const lpm = flow && sourceFlowLpm(flow, plan.units);
  const steps = isMain ? say.mainSteps : say.bucketSteps;
  const content = html`<h3>${isMain ? say.meter : say.bucket}</h3>
    <div class="do">${isMain ? nothing : context.draw('bucketTest')}<ol>${steps.map((step) => html`<li>${step}</li>`)}</ol></div>
    ${bucketFields(context, source, isMain, begun)}
    ${lpm === undefined ? nothing : html`<p class="result"><b>${say.comes(format, lpm)}</b> ${flow?.kind === 'bucket' ? (isMain ? say.comesFromMeter : say.comesFromBucket)(format, flow.share ?? DEFAULTS.bucketShare) : nothing}</p>`}
    <div class="fields">
      ${numberField(
        {
          key: 'flow',
          words: { ...say.flow, empty: '' },
          value: flow?.kind === 'typed' ? flow.flow : undefined,
          schema: flowSchema(plan, 'typed', 'flow'),
          quantity: 'supplyFlow',
          edit: (value) => withSource(plan, changed(source, { flow: typedFlow(value) })),
        },
        context,
      )}
    </div>`;
  return html`${assumable(context, 'flow', content)}<div class="fields">
      ${numberField(
        {
          key: 'pressure',
          words: say.pressure,
          value: source.pressure,
          schema: fieldSchema(schemaAt(withSources(plan, [source]), ['supply', 'sources', 0]), 'pressure'),
          quantity: 'pressure',
          edit: (pressure) => withSource(plan, changed(source, { pressure })),
        },
        context,
      )}
    </div>`;
}

/** What ran into a bucket, or through the meter, in so many seconds. */
function bucketFields(context: StartContext, source: Source, isMain: boolean, begun: BegunBucket): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).water;
  const bucket: Partial<Bucket> = source.flow?.kind === 'bucket' ? source.flow : {};
  const volume = bucket.volume ?? begun.volume ?? BUCKET[plan.units];
  const edit = (change: Partial<Bucket>): Edit => {
    const { seconds } = { ...bucket, ...change };
    begun.volume = change.volume ?? volume;
    if (seconds === undefined) return withSource(plan, source);
    return withSource(plan, { ...source, flow: { kind: 'bucket', ...bucket, seconds, volume: begun.volume } });
  };
  return html`<div class="fields">
    ${numberField({ key: 'bucket-volume', words: isMain ? say.meterVolume : say.volume, value: volume, schema: flowSchema(plan, 'bucket', 'volume'), quantity: 'volume', edit: (value = volume) => edit({ volume: value }) }, context)}
    ${numberField({ key: 'bucket-seconds', words: { ...(isMain ? say.meterSeconds : say.seconds), empty: '' }, value: bucket.seconds, schema: flowSchema(plan, 'bucket', 'seconds'), edit: (value) => (value === undefined ? withSource(plan, changed(source, { flow: undefined })) : edit({ seconds: value })) }, context)}
  </div>`;
}

const withSources = (plan: Plan, sources: readonly Source[]): Plan => ({
  ...plan,
  supply: { ...plan.supply, sources },
});

const typedFlow = (flow: number | undefined): Source['flow'] =>
  flow === undefined ? undefined : { kind: 'typed', flow };

function flowSchema(plan: Plan, kind: 'typed' | 'bucket', field: string) {
  const flow = kind === 'typed' ? { kind, flow: 1 } : { kind, volume: 1, seconds: 1 };
  return fieldSchema(schemaAt(withSources(plan, [{ name: '-', flow }]), ['supply', 'sources', 0, 'flow']), field);
}

function laterTemplate(context: StartContext, sources: readonly Source[]): TemplateResult {
  const { plan, reader, form } = context;
  const say = startWords(reader.language);
  const begun = withBegun(sources, say.sources.main, context);
  const later = begun.slice(1).map((source, index) => {
    const sourceIndex = index + 1;
    const key = `source-${sourceIndex}`;
    const edit = (change: Change<Source>): Edit => {
      const next = withSourceAt(sources, sourceIndex, changed<Source>(source, change), context);
      return { type: 'change-supply', change: { sources: next } };
    };
    const remove = () =>
      form.send(key, '', { type: 'change-supply', change: { sources: removedAt(sources, sourceIndex) } });
    return html`<fieldset class="later"><div class="fields">
      ${textField({ key: `${key}-name`, words: say.water.laterName, value: source.name, edit: (name = '') => edit({ name }) }, context)}
      ${dateField({ key: `${key}-from`, words: say.water.laterFrom, value: source.from, edit: (from) => edit({ from }) }, context)}
      ${numberField({ key: `${key}-flow`, words: { ...say.water.laterFlow, empty: '' }, value: source.flow?.kind === 'typed' ? source.flow.flow : undefined, schema: flowSchema(plan, 'typed', 'flow'), quantity: 'supplyFlow', edit: (flow) => edit({ flow: typedFlow(flow) }) }, context)}
      </div>${sourceIndex === sources.length ? nothing : html`<button class="plain" @click=${remove}>${say.water.remove}</button>`}
    </fieldset>`;
  });
  return html`${later}${laterSourceButton({ sources, key: 'add-source', add: say.water.addLater }, context)}`;
}
