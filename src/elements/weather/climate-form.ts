/** The climate by month: typed, pasted, or taken from a published table. */
import { html, nothing, type TemplateResult } from 'lit';
import { weeksWithoutClimate } from '../../explain/notices/kinds/no-climate.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanClimate } from '../../plan/schema/plan-schema.ts';
import { choiceField, numberField, optionsOf, textField } from '../garden/fields.ts';
import { type FormContext, schemaAt } from '../garden/form-context.ts';
import type { PublishedTableField } from './late-published-table.ts';
import { type MonthColumn, monthsOf, monthTable, set } from './month-table.ts';

/** `table`: where a published table can be taken there. */
export function climateForm(context: FormContext, table?: PublishedTableField): TemplateResult {
  const { plan, season, reader } = context;
  const { climate } = plan.site;
  const say = gardenPlaceWords(reader.language).climate;
  const kind = climate.eto === undefined ? 'temperature' : 'eto';
  const columns: readonly MonthColumn[] =
    kind === 'eto' ? ['eto', 'rain', 'rainDays'] : ['minTemperature', 'maxTemperature', 'rain', 'rainDays'];
  const isMissing = weeksWithoutClimate(season).length > 0;
  const hasRain = climate.rain.some((depth) => depth > 0);
  return html`${isMissing ? html`<p class="too-long">${say.noClimate}</p>` : nothing}
    <div class="fields">
      ${table?.(say.table, context)}
      ${choiceField(
        {
          key: 'climate-kind',
          words: say.kind,
          value: kind,
          options: optionsOf(say.kind.options),
          edit: (chosen) => set(asKind(climate, chosen)),
        },
        context,
      )}
      ${textField(
        {
          key: 'climate-source',
          words: say.source,
          value: climate.source,
          edit: (source = '') => set({ ...climate, source }),
        },
        context,
      )}
    </div>
    ${isMissing || hasRain ? nothing : html`<p class="too-long">${say.noRain}</p>`}
    ${monthTable(columns, context)}
    ${thresholdField(context)}`;
}

/** ETo wins where it is given, so temperatures can stay beside it; without it they are needed. */
function asKind(climate: PlanClimate, kind: 'eto' | 'temperature'): PlanClimate {
  if (kind === 'eto') return { ...climate, eto: monthsOf(climate, 'eto') };
  const { eto: _, ...rest } = climate;
  return {
    ...rest,
    minTemperature: monthsOf(climate, 'minTemperature'),
    maxTemperature: monthsOf(climate, 'maxTemperature'),
  };
}

/** The least rain of the days that are counted as rain days. */
function thresholdField(context: FormContext): TemplateResult | typeof nothing {
  const { plan, reader } = context;
  const { climate } = plan.site;
  if (climate.rainDays === undefined) return nothing;
  return html`<div class="fields">${numberField(
    {
      key: 'rain-day-threshold',
      words: weatherWords(reader.language).climate.threshold,
      value: climate.rainDayThreshold,
      schema: schemaAt({ ...plan, site: { ...plan.site, climate: { ...climate, rainDayThreshold: 1 } } }, [
        ...['site', 'climate', 'rainDayThreshold'],
      ]),
      quantity: 'depth',
      fallback: USUAL_RAIN_DAY_MM,
      edit: (rainDayThreshold) => set(changed<PlanClimate>(climate, { rainDayThreshold })),
    },
    context,
  )}</div>`;
}

/** 0.01 in, as `rainDays` counts where nothing is said. */
const USUAL_RAIN_DAY_MM = 0.254;
