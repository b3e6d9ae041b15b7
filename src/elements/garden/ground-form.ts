/** What a planting grows in, what covers its ground, how far its water spreads and when it rests; folded under what is there. */
import { html, nothing, type TemplateResult } from 'lit';
import type { GardenPlanting } from '../../engine/garden.ts';
import { emitterWidthsM } from '../../engine/line/wetted-share.ts';
import { gardenGroundWords } from '../../language/en/garden-ground.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { monthsField } from './boxes-field.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { checkField, choiceField, numberField, optionsOf } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart } from './form-context.ts';
import { plantingInGarden } from './planting-in-garden.ts';

export type GroundFields = Pick<
  PlanPlanting,
  'container' | 'mulch' | 'wettedShare' | 'soak' | 'dryDownDays' | 'leaflessMonths'
>;
type Container = NonNullable<PlanPlanting['container']>;
type GroundPart = FormPart<GroundFields>;

const wordsOf = ({ reader }: FormContext) => gardenGroundWords(reader.language);

const GROUND_FIELDS: FieldTable<GroundFields, GroundContext> = {
  container: { kind: 'own', fields: containerFields },
  mulch: { kind: 'own', fields: mulchFields },
  wettedShare: { kind: 'own', fields: wettedFields },
  dryDownDays: { kind: 'number' },
  soak: { kind: 'own', fields: soakFields },
  leaflessMonths: { kind: 'own', fields: leaflessFields },
};

const CONTAINER_FIELDS: FieldTable<Container, FormContext> = {
  volume: { kind: 'number', quantity: 'volume' },
  count: { kind: 'number' },
  mix: { kind: 'choice', options: (context) => optionsOf(wordsOf(context).container.mix.options), fallback: 'potting' },
  rainShare: { kind: 'number', fallback: 1 },
  opening: { kind: 'number', quantity: 'diameter' },
  availableWater: { kind: 'number' },
};

interface GroundContext extends FormContext {
  /** As the engine sees it; undefined while the season is of another plan. */
  readonly planting: GardenPlanting | undefined;
}

export function groundForm(planting: FormPart<PlanPlanting>, context: FormContext): TemplateResult {
  const say = wordsOf(context);
  const found = plantingInGarden(context.season.garden, planting.value);
  const part = planting as unknown as GroundPart;
  const fields = () => tableFields(GROUND_FIELDS, say, part, { ...context, planting: found });
  return fieldsFold(say.more, fields, context);
}

function containerFields(ground: GroundPart, context: GroundContext): TemplateResult {
  const { container } = ground.value;
  const say = wordsOf(context);
  const begun: Container = { volume: context.plan.units === 'us' ? 5 : 20 };
  return html`${choiceField(
    {
      key: ground.key('growsIn'),
      words: say.growsIn,
      value: container === undefined ? 'ground' : 'container',
      options: optionsOf(say.growsIn.options),
      edit: (kind) => ground.change({ container: kind === 'ground' ? undefined : begun }),
    },
    context,
  )}
  ${container === undefined ? nothing : tableFields(CONTAINER_FIELDS, say.container, innerPart(ground, 'container', container), context)}`;
}

function mulchFields(ground: GroundPart, context: GroundContext): TemplateResult {
  const { mulch } = ground.value;
  const say = wordsOf(context);
  const begun = { none: undefined, organic: { kind: 'organic' }, plastic: { kind: 'plastic' } } as const;
  const kind = choiceField(
    {
      key: ground.key('mulch'),
      words: say.mulchKind,
      value: mulch?.kind ?? 'none',
      options: optionsOf(say.mulchKind.options),
      edit: (chosen) => ground.change({ mulch: begun[chosen] }),
    },
    context,
  );
  if (mulch?.kind !== 'organic') return kind;
  const part = innerPart(ground, 'mulch', mulch);
  const cover = {
    key: part.key('cover'),
    words: say.cover,
    value: mulch.cover,
    fallback: 1,
    schema: fieldSchema(part.schema, 'cover'),
    edit: (share: number | undefined) => part.change({ cover: share }),
  };
  return html`${kind} ${numberField(cover, context)}`;
}

/** With what follows from its lines. Pots are wetted whole. */
function wettedFields(ground: GroundPart, context: GroundContext): TemplateResult | typeof nothing {
  const { container, wettedShare } = ground.value;
  const { planting, format } = context;
  if (container !== undefined) return nothing;
  const { computed, unknown, ...words } = wordsOf(context).wettedShare;
  const share = planting === undefined || wettedShare !== undefined ? undefined : (planting.wettedShare ?? 1);
  return html`${numberField(
    {
      key: ground.key('wettedShare'),
      words: { ...words, empty: share === undefined ? unknown : computed(format, share) },
      value: wettedShare,
      schema: fieldSchema(ground.schema, 'wettedShare'),
      edit: (typed) => ground.change({ wettedShare: typed }),
    },
    context,
  )}${widthsText(planting, context)}`;
}

function widthsText(planting: GardenPlanting | undefined, { season, format, ...context }: GroundContext) {
  const zone = season.garden.zones.find(({ plantings }) => planting !== undefined && plantings.includes(planting));
  if (planting === undefined || zone === undefined) return nothing;
  const widthsM = emitterWidthsM(planting, zone.soil.texture);
  return widthsM.length === 0
    ? nothing
    : html`<p class="help">${gardenGroundWords(context.reader.language).widths(format, widthsM)}</p>`;
}

function soakFields(ground: GroundPart, context: GroundContext): TemplateResult | typeof nothing {
  const { container, soak = false } = ground.value;
  const { planting, format } = context;
  const say = wordsOf(context);
  if (container !== undefined) return nothing;
  const litres = soak ? planting?.soakLitres : undefined;
  return html`${checkField(
    {
      key: ground.key('soak'),
      words: say.soak,
      value: soak,
      edit: (isOn) => ground.change({ soak: isOn ? true : undefined }),
    },
    context,
  )}${litres === undefined || litres === 0 ? nothing : html`<p class="help">${say.soakNeeds(format, litres)}</p>`}`;
}

function leaflessFields(ground: GroundPart, context: GroundContext): TemplateResult {
  return monthsField(
    {
      key: ground.key('leaflessMonths'),
      words: wordsOf(context).leaflessMonths,
      value: ground.value.leaflessMonths ?? [],
      edit: (months) => ground.change({ leaflessMonths: months.length === 0 ? undefined : [...months] }),
    },
    context,
  );
}
