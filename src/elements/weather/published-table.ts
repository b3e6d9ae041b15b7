/** Reference ET by month out of a published table, chosen by the name of its place; the nearest to the garden stand first. */
import type { TemplateResult } from 'lit';
import { PUBLISHED_ETO, type PublishedEto } from '../../engine/climate/published-eto.data.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { choiceField, type FieldWords, namedOptions } from '../garden/fields.ts';
import type { FormContext } from '../garden/form-context.ts';
import { type TableByDistance, type TablesBySite, tablesBySite } from './near-tables.ts';

/** `words.empty`: of the choice of none. */
export function publishedTableField(
  words: FieldWords & { readonly empty: string },
  context: FormContext,
): TemplateResult {
  const tables = tablesBySite(context.plan.site);
  return choiceField(
    {
      key: 'climate-table',
      words: { ...words, help: helpOf(tables, context) },
      value: '',
      options: [{ value: '', label: words.empty }, ...optionsBySite(tables, context)],
      edit: (id) => takeTable(id, tables, context),
    },
    context,
  );
}

function helpOf(tables: TablesBySite | undefined, { reader, format }: FormContext): string {
  const say = weatherWords(reader.language).tables;
  if (tables === undefined) return say.placeFirst;
  const [nearest] = tables.far;
  if (tables.near.length > 0 || nearest === undefined) return say.nearFirst;
  return say.noneNear(format, nameIn(nearest.table.name, reader.language), nearest.km);
}

function optionsBySite(tables: TablesBySite | undefined, context: FormContext) {
  if (tables === undefined) return namedOptions(PUBLISHED_ETO, context);
  const { reader, format } = context;
  const say = weatherWords(reader.language).tables;
  const inGroup = (group: string, places: readonly TableByDistance[]) =>
    places.map(({ table: { id, name }, km }) => ({
      value: id,
      label: say.away(format, nameIn(name, reader.language), km),
      group,
    }));
  const regions = namedOptions(tables.regions, context).map((option) => ({ ...option, group: say.regions }));
  return [...inGroup(say.near, tables.near), ...regions, ...inGroup(say.far, tables.far)];
}

/** A table of a place far away says so in its source, and what it brings is assumed. */
function takeTable(id: string, tables: TablesBySite | undefined, { plan, reader, format }: FormContext): Edit {
  const { climate } = plan.site;
  const row = PUBLISHED_ETO.find((candidate) => candidate.id === id);
  if (row === undefined) return { type: 'set-climate', climate };
  const far = tables?.far.find(({ table }) => table === row);
  const source = sourceOf(row, reader.language);
  const eto = inPlanUnits(row.etoMm, plan.units);
  if (far === undefined) return { type: 'set-climate', climate: { ...climate, source, eto } };
  const said = weatherWords(reader.language).tables.ofOtherPlace(format, source, far.km);
  const others = plan.assumed?.filter((part) => part !== 'climate') ?? [];
  return {
    type: 'together',
    edits: [
      { type: 'set-climate', climate: { ...climate, source: said, eto } },
      { type: 'set-assumed', assumed: ['climate', ...others] },
    ],
  };
}

const sourceOf = ({ name, source }: PublishedEto, language: FormContext['reader']['language']): string =>
  `${nameIn(name, language)}: ${source}`;

/** Published figures are in SI: as a person would write them in the plan's units. */
function inPlanUnits(valuesMm: readonly number[], units: UnitSystem): readonly number[] {
  return valuesMm.map((mm) => Number(fromSi(mm, 'depth', units).toFixed(units === 'us' ? 2 : 1)));
}
