/** The place: latitude, soil, slope, how rain is counted, and its weather station. */
import { html, nothing, type TemplateResult } from 'lit';
import { gardenGroundWords } from '../../language/en/garden-ground.ts';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { PlanSite } from '../../plan/schema/plan-schema.ts';
import { type FieldTable, tableFields } from './field-table.ts';
import { choiceField, numberField, optionsOf } from './fields.ts';
import { fieldsFold } from './fields-fold.ts';
import { type FormContext, type FormPart, fieldSchema, innerPart, schemaAt } from './form-context.ts';
import { textureOptions } from './texture-options.ts';

/** Height at which wind is taken to be measured where the plan does not say, m: that of reference ET (FAO-56). */
const WIND_HEIGHT_M = 2;

/** For gardens with a weather station. */
type StationFields = Pick<PlanSite, 'windHeight' | 'missingWeather' | 'setting'>;

/** The weather's element has the others; exposure is a text that no figure hangs on. */
type WeatherFields = 'place' | 'longitude' | 'timeZone' | 'climate' | 'years' | 'departures';
type SiteFields = Omit<PlanSite, keyof StationFields | WeatherFields | 'exposure'>;

const SITE_FIELDS: FieldTable<SiteFields, FormContext> = {
  latitude: { kind: 'number' },
  elevation: { kind: 'number', quantity: 'elevation', fallback: 0 },
  soil: { kind: 'choice', options: textureOptions },
  availableWater: { kind: 'number' },
  slopePercent: { kind: 'number', fallback: DEFAULTS.slopePercent },
  rain: { kind: 'own', fields: rainFields },
};

const STATION_FIELDS: FieldTable<StationFields, FormContext> = {
  windHeight: { kind: 'number', quantity: 'height', fallback: WIND_HEIGHT_M },
  missingWeather: {
    kind: 'choice',
    fallback: 'hargreaves-samani',
    options: ({ reader }) => optionsOf(gardenPlaceWords(reader.language).site.missingWeather.options),
  },
  setting: { kind: 'own', fields: settingField },
};

export function siteForm(context: FormContext): TemplateResult {
  const { site } = context.plan;
  const { site: say, station, onEquator } = gardenPlaceWords(context.reader.language);
  const { availableWater } = gardenGroundWords(context.reader.language);
  const part: FormPart<PlanSite> = {
    value: site,
    schema: schemaAt(context.plan, ['site']),
    key: (field) => `site-${field}`,
    change: (change) => ({ type: 'change-site', change }),
  };
  // A new plan begins on the equator, and hardly a garden lies on it.
  const latitude = site.latitude === 0 ? { ...say.latitude, help: onEquator(say.latitude.help) } : say.latitude;
  return html`<div class="fields">${tableFields(SITE_FIELDS, { ...say, availableWater, latitude }, part, context)}</div>
    ${fieldsFold(station, () => tableFields(STATION_FIELDS, say, part, context), context)}`;
}

function rainFields(site: FormPart<SiteFields>, context: FormContext): TemplateResult {
  const say = gardenPlaceWords(context.reader.language).rain;
  const { rain } = site.value;
  const method = rain?.method ?? DEFAULTS.rainMethod;
  const part = innerPart(site, 'rain', { ...rain, method });
  return html`${choiceField(
    {
      key: part.key('method'),
      words: say.method,
      value: method,
      options: optionsOf(say.method.options),
      edit: (chosen) => part.change({ method: chosen }),
    },
    context,
  )}
  ${
    method === 'fraction'
      ? numberField(
          {
            key: part.key('fraction'),
            words: say.fraction,
            value: rain?.fraction,
            schema: fieldSchema(part.schema, 'fraction'),
            fallback: DEFAULTS.rainFraction,
            edit: (fraction) => part.change({ fraction }),
          },
          context,
        )
      : nothing
  }`;
}

/** Asked only where radiation is estimated from temperatures. */
function settingField(
  { value: { missingWeather, setting }, key, change }: FormPart<StationFields>,
  context: FormContext,
): TemplateResult | typeof nothing {
  if (missingWeather !== 'penman-monteith') return nothing;
  const words = gardenPlaceWords(context.reader.language).site.setting;
  return choiceField(
    {
      key: key('setting'),
      words,
      value: setting ?? 'interior',
      options: optionsOf(words.options),
      edit: (chosen) => change({ setting: chosen }),
    },
    context,
  );
}
