/** The place: latitude, soil, slope, and how rain is counted. */
import { html, nothing, type TemplateResult } from 'lit';
import { RAIN_METHODS } from '../../engine/rain/effective-rain.ts';
import { SOIL_TEXTURES } from '../../engine/soil/textures.data.ts';
import { unitOf } from '../../engine/units.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Change, Edit } from '../../plan/edits/edit.ts';
import type { Plan, PlanSite } from '../../plan/schema/plan-schema.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { rainMethodNames } from '../shared/words/rain-method-words.ts';
import type { FieldKeeper } from './field-keeper.ts';
import { choiceField, numberField, type Option } from './fields.ts';

export const textureOptions: readonly Option[] = SOIL_TEXTURES.map(({ id, name }) => ({ value: id, label: name }));

const change = (part: Change<PlanSite>): Edit => ({ type: 'change-site', change: part });

export function siteForm({ site, units }: Plan, keeper: FieldKeeper): TemplateResult {
  const method = site.rain?.method ?? DEFAULTS.rainMethod;
  return html`<div class="fields">
    ${numberField({
      ...{ keeper, key: 'latitude', label: words.latitude, help: help.latitude, unit: '°', value: site.latitude },
      edit: (latitude) => change({ latitude }),
    })}
    ${numberField({
      ...{ keeper, key: 'elevation', label: words.elevation, unit: unitOf('elevation', units).name },
      ...{ value: site.elevation, otherwise: '0' },
      edit: (elevation) => change({ elevation }),
    })}
    ${choiceField({
      ...{ keeper, key: 'soil', label: words.soil, help: help.soil, value: site.soil, options: textureOptions },
      edit: (soil) => change({ soil: soil as PlanSite['soil'] }),
    })}
    ${numberField({
      ...{ keeper, key: 'slope', label: words.slope, help: help.slope, unit: '%' },
      ...{ value: site.slopePercent, otherwise: '0' },
      edit: (slopePercent) => change({ slopePercent }),
    })}
    ${choiceField({
      ...{ keeper, key: 'rain-method', label: words.rainMethod, help: help.rainMethod, value: method },
      options: RAIN_METHODS.map((value) => ({ value, label: rainMethodNames[value] })),
      edit: (chosen) => change({ rain: { ...site.rain, method: chosen as typeof method } }),
    })}
    ${
      method === 'fraction'
        ? numberField({
            ...{ keeper, key: 'rain-fraction', label: words.rainFraction, unit: '0–1' },
            ...{ value: site.rain?.fraction, otherwise: String(DEFAULTS.rainFraction) },
            edit: (fraction) =>
              change({ rain: fraction === undefined ? { method } : { ...site.rain, method, fraction } }),
          })
        : nothing
    }
  </div>`;
}
