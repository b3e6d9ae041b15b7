/** The place: latitude, soil, slope, and how rain is counted. */
import { html, nothing, type TemplateResult } from 'lit';
import { SETTINGS } from '../../engine/climate/solar-radiation-from-temperature.ts';
import { MISSING_WEATHER_RULES } from '../../engine/climate/weather-readings.ts';
import { RAIN_METHODS } from '../../engine/rain/effective-rain.ts';
import { SOIL_TEXTURES } from '../../engine/soil/textures.data.ts';
import { unitOf } from '../../engine/units.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanSite } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { rainMethodNames } from '../shared/words/rain-method-words.ts';
import { choiceField, numberField, type Option } from './fields.ts';
import type { FormController } from './form-controller.ts';

export const textureOptions: readonly Option[] = SOIL_TEXTURES.map(({ id, name }) => ({ value: id, label: name }));

const change = (part: Change<PlanSite>): Edit => ({ type: 'change-site', change: part });

export function siteForm({ site, units }: Plan, form: FormController): TemplateResult {
  const method = site.rain?.method ?? DEFAULTS.rainMethod;
  return html`<div class="fields">
    ${numberField({
      ...{ form, key: 'latitude', label: words.latitude, unit: '°', value: site.latitude },
      // A new plan begins there, and hardly a garden lies on it.
      help: site.latitude === 0 ? `${help.onEquator} ${help.latitude}` : help.latitude,
      edit: (latitude) => change({ latitude }),
    })}
    ${numberField({
      ...{ form, key: 'elevation', label: words.elevation, unit: unitOf('elevation', units).name },
      ...{ value: site.elevation, otherwise: '0' },
      edit: (elevation) => change({ elevation }),
    })}
    ${choiceField({
      ...{ form, key: 'soil', label: words.soil, help: help.soil, value: site.soil, options: textureOptions },
      edit: (soil) => change({ soil: soil as PlanSite['soil'] }),
    })}
    ${numberField({
      ...{ form, key: 'slope', label: words.slope, help: help.slope, unit: '%' },
      ...{ value: site.slopePercent, otherwise: '0' },
      edit: (slopePercent) => change({ slopePercent }),
    })}
    ${choiceField({
      ...{ form, key: 'rain-method', label: words.rainMethod, help: help.rainMethod, value: method },
      options: RAIN_METHODS.map((value) => ({ value, label: rainMethodNames[value] })),
      edit: (chosen) => change({ rain: { ...site.rain, method: chosen as typeof method } }),
    })}
    ${
      method === 'fraction'
        ? numberField({
            ...{ form, key: 'rain-fraction', label: words.rainFraction, unit: '0–1' },
            ...{ value: site.rain?.fraction, otherwise: String(DEFAULTS.rainFraction) },
            edit: (fraction) =>
              change({ rain: fraction === undefined ? { method } : { ...site.rain, method, fraction } }),
          })
        : nothing
    }
  </div>
  <details class="more">
    <summary>${words.station}</summary>
    <div class="fields">${stationFields({ site, units }, form)}</div>
  </details>`;
}

/** For gardens with a weather station; what is left out has its usual value. */
function stationFields({ site, units }: Pick<Plan, 'site' | 'units'>, form: FormController): TemplateResult {
  const missing = site.missingWeather ?? 'hargreaves-samani';
  return html`${numberField({
    ...{ form, key: 'wind-height', label: words.windHeight, help: help.windHeight },
    ...{ unit: unitOf('height', units).name, value: site.windHeight, otherwise: units === 'us' ? '6.6' : '2' },
    edit: (windHeight) => change({ windHeight }),
  })}
  ${choiceField({
    ...{ form, key: 'missing-weather', label: words.missingWeather, help: help.missingWeather, value: missing },
    options: MISSING_WEATHER_RULES.map((value) => ({ value, label: words.missingWeathers[value] })),
    edit: (chosen) => change({ missingWeather: chosen as typeof missing }),
  })}
  ${
    missing === 'penman-monteith'
      ? choiceField({
          ...{ form, key: 'setting', label: words.setting, help: help.setting, value: site.setting ?? 'interior' },
          options: SETTINGS.map((value) => ({ value, label: words.settings[value] })),
          edit: (chosen) => change({ setting: chosen as NonNullable<PlanSite['setting']> }),
        })
      : nothing
  }`;
}
