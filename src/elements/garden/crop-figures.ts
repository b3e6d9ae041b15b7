/** A crop's growth stages and coefficients, where a gardener knows them better than the published tables. */
import { html, nothing, type TemplateResult } from 'lit';
import { findCrop } from '../../engine/plants/find-crop.ts';
import { changed } from '../../plan/edits/change.ts';
import type { PlanNeed } from '../../plan/schema/plan-schema.ts';
import { stageDaysOf } from '../../plan/to-garden/coefficient.ts';
import { gardenHelp as help } from '../shared/words/garden-help.ts';
import { gardenWords as words } from '../shared/words/garden-words.ts';
import { checkField, numberField } from './fields.ts';
import type { PlantingContext } from './form-context.ts';

type CropNeed = Extract<PlanNeed, { kind: 'crop' }>;

/** Each starts from what is published. */
export function cropFigures(need: CropNeed, { form, key, change }: PlantingContext): TemplateResult {
  const edit = (next: CropNeed) => change({ need: next });
  const { stages, coefficients } = need;
  return html`${checkField({
    ...{ form, key: key('stages'), label: words.ownStages, help: help.stages, value: stages !== undefined },
    edit: (has) => edit(changed(need, { stages: has ? publishedStages(need) : undefined })),
  })}
  ${
    stages === undefined
      ? nothing
      : (['initial', 'development', 'mid', 'late'] as const).map((stage) =>
          numberField({
            ...{
              form,
              key: key(`stage-${stage}`),
              label: words.stage[stage],
              unit: words.days,
              value: stages[stage],
            },
            edit: (days) => edit({ ...need, stages: { ...stages, [stage]: days ?? Number.NaN } }),
          }),
        )
  }
  ${checkField({
    ...{ form, key: key('kc'), label: words.ownCoefficients, help: help.coefficients },
    value: coefficients !== undefined,
    edit: (has) => edit(changed(need, { coefficients: has ? publishedCoefficients(need) : undefined })),
  })}
  ${
    coefficients === undefined
      ? nothing
      : (['initial', 'mid', 'end'] as const).map((stage) =>
          numberField({
            ...{ form, key: key(`kc-${stage}`), label: words.coefficient[stage], value: coefficients[stage] },
            edit: (kc) => edit({ ...need, coefficients: { ...coefficients, [stage]: kc ?? Number.NaN } }),
          }),
        )
  }`;
}

function publishedStages(need: CropNeed): NonNullable<CropNeed['stages']> {
  const [initial, development, mid, late] = stageDaysOf(need);
  return { initial, development, mid, late };
}

function publishedCoefficients({ crop }: CropNeed): NonNullable<CropNeed['coefficients']> {
  const { kcIni, kcMid, kcEnd } = findCrop(crop);
  return { initial: kcIni, mid: kcMid, end: kcEnd };
}
