/** Watering days of a zone that differ by month: a row for every month of the season. */
import { html, type TemplateResult } from 'lit';
import { monthOfWeek } from '../../engine/calendar.ts';
import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import { WEEKDAYS } from '../../plan/schema/supply.ts';
import { type DaysByMonth, monthKey } from '../../plan/watering-days-in.ts';
import { weekdaysField } from './boxes-field.ts';
import { factsText } from './field-facts.ts';
import { numberField } from './fields.ts';
import { type FormContext, type FormPart, fieldSchema, innerSchema } from './form-context.ts';

/** Folded: most gardens do with the same days all season. A month that is left empty waters as the rest of the season. */
export function daysByMonthFields(
  zone: FormPart<Pick<PlanZone, 'wateringDaysByMonth'>>,
  context: FormContext,
): TemplateResult {
  const { wateringDaysByMonth: byMonth = {} } = zone.value;
  const { format, reader, season } = context;
  const say = gardenZonesWords(reader.language).zone.daysByMonth;
  const months = monthsOf(season.garden.span);
  const set = months.filter((month) => byMonth[monthKey(month)] !== undefined);
  return html`<details class="wide">
    <summary>${set.length === 0 ? html`${say.none} <span class="quiet">${factsText([], format)}</span>` : say.some(format, set)}</summary>
    <div class="part-body">
      <p class="help">${say.help}</p>
      <div class="fields">${months.map((month) => monthField(month, zone, context))}</div>
    </div>
  </details>`;
}

function monthField(
  month: number,
  { value: { wateringDaysByMonth }, schema, key, change }: FormPart<Pick<PlanZone, 'wateringDaysByMonth'>>,
  context: FormContext,
): TemplateResult {
  const { format, reader } = context;
  const say = gardenZonesWords(reader.language).zone.daysByMonth;
  const value = wateringDaysByMonth?.[monthKey(month)];
  const label = say.of(format.month(month));
  const set = (days: DaysByMonth[string] | undefined) => {
    const next = changed<DaysByMonth>(wateringDaysByMonth ?? {}, { [monthKey(month)]: days });
    return change({ wateringDaysByMonth: Object.keys(next).length === 0 ? undefined : next });
  };
  const field = key(`wateringDays-${monthKey(month)}`);
  if (Array.isArray(value)) {
    return weekdaysField(
      { key: field, words: { label }, value, edit: (weekdays) => set([...(weekdays ?? WEEKDAYS)]) },
      context,
    );
  }
  return numberField(
    {
      key: field,
      words: { label, empty: say.asAlways },
      value: value as number | undefined,
      schema: fieldSchema(innerSchema(schema, 'wateringDaysByMonth', wateringDaysByMonth ?? {}), monthKey(month)),
      edit: (count) => set(count),
    },
    context,
  );
}

/** The months in which a week of the season lies, 0 = January, in order. */
function monthsOf({ firstDay, weeks }: { readonly firstDay: number; readonly weeks: number }): readonly number[] {
  const months = Array.from({ length: weeks }, (_, week) => monthOfWeek(firstDay + 7 * week));
  return [...new Set(months)];
}
