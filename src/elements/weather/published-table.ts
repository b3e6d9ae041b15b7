/** Reference ET by month out of a published table, chosen by the name of its place. */
import type { TemplateResult } from 'lit';
import { PUBLISHED_ETO } from '../../engine/climate/published-eto.data.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { choiceField, type FieldWords, namedOptions } from '../garden/fields.ts';
import type { FormContext } from '../garden/form-context.ts';

/** `words.empty`: of the choice of none. */
export function publishedTableField(
  words: FieldWords & { readonly empty: string },
  context: FormContext,
): TemplateResult {
  return choiceField(
    {
      key: 'climate-table',
      words,
      value: '',
      options: [{ value: '', label: words.empty }, ...namedOptions(PUBLISHED_ETO, context)],
      edit: (id) => takeTable(id, context),
    },
    context,
  );
}

function takeTable(id: string, { plan, reader }: FormContext): Edit {
  const { climate } = plan.site;
  const row = PUBLISHED_ETO.find((candidate) => candidate.id === id);
  if (row === undefined) return { type: 'set-climate', climate };
  const source = `${nameIn(row.name, reader.language)}: ${row.source}`;
  return { type: 'set-climate', climate: { ...climate, source, eto: inPlanUnits(row.etoMm, plan.units) } };
}

/** Published figures are in SI: as a person would write them in the plan's units. */
function inPlanUnits(valuesMm: readonly number[], units: UnitSystem): readonly number[] {
  return valuesMm.map((mm) => Number(fromSi(mm, 'depth', units).toFixed(units === 'us' ? 2 : 1)));
}
