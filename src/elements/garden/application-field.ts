/** How much of what runs out stays where it is wanted: as usual, or one of the figures that somebody knows. */
import { html, nothing, type TemplateResult } from 'lit';
import { defaultEfficiency } from '../../engine/application/efficiency.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import type { SchemaNode } from '../../plan/schema/walk.ts';
import { choiceField, numberField, optionsOf } from './fields.ts';
import { type FormContext, fieldSchema, innerSchema } from './form-context.ts';

/** Zones and lines have one; a line's is never computed. */
export type Application = NonNullable<PlanZone['application']>;

/** A part of the plan that has one. */
export interface ApplicationPart<Kind extends Application['kind']> {
  readonly value: { readonly application?: Extract<Application, { kind: Kind }> | undefined };
  readonly schema: SchemaNode;
  readonly key: (field: string) => string;
  readonly change: (change: Change<{ readonly application: Extract<Application, { kind: Kind }> }>) => Edit;
}

/** What a share that is asked for begins with. */
const BEGUN: Readonly<Record<Application['kind'], Application>> = {
  efficiency: { kind: 'efficiency', value: defaultEfficiency('drip') },
  'distribution-uniformity': { kind: 'distribution-uniformity', value: 0.8 },
  computed: { kind: 'computed' },
};

/** `options`: what can be chosen, in words; `usual` stands before them, for where nothing is. */
export function applicationField<Kind extends Application['kind']>(
  part: ApplicationPart<Kind>,
  { options, usual }: { readonly options: Readonly<Record<Kind, string>>; readonly usual: string },
  context: FormContext,
): TemplateResult {
  const { application } = part.value;
  const say = gardenZonesWords(context.reader.language).zone;
  const set = (next: Application | undefined) =>
    part.change({ application: next as Extract<Application, { kind: Kind }> | undefined });
  return html`${choiceField<Kind | ''>(
    {
      key: part.key('application'),
      words: say.application,
      value: application?.kind ?? '',
      options: [{ value: '', label: usual }, ...optionsOf(options)],
      edit: (kind) => set(kind === '' ? undefined : BEGUN[kind]),
    },
    context,
  )}
  ${application === undefined ? nothing : shareField(part, application, set, context)}`;
}

function shareField(
  { schema, key }: Pick<ApplicationPart<Application['kind']>, 'schema' | 'key'>,
  application: Application,
  set: (next: Application) => Edit,
  context: FormContext,
): TemplateResult | typeof nothing {
  if (application.kind === 'computed') return nothing;
  return numberField(
    {
      key: key('application-value'),
      words: gardenZonesWords(context.reader.language).zone.share[application.kind],
      value: application.value,
      schema: fieldSchema(innerSchema(schema, 'application', application), 'value'),
      edit: (value = Number.NaN) => set({ ...application, value }),
    },
    context,
  );
}
