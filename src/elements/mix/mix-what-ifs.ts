/** Changes that are kept beside the plan, each under its name, compared with the plan as it is. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { mixWords } from '../../language/en/mix.ts';
import { whatIfsWords } from '../../language/en/what-ifs.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan, PlanWhatIf } from '../../plan/schema/plan-schema.ts';
import { type Compared, comparison } from './mix-comparison.ts';
import { type Trial, tryEdits } from './trial.ts';

export interface WhatIfsShown {
  readonly plan: Plan;
  readonly season: Season;
  readonly reader: Reader;
  readonly show: (trial: Trial) => void;
  /** Left out where the plan can only be looked at. */
  readonly take: ((trial: Trial) => void) | undefined;
  readonly remove: ((name: string) => void) | undefined;
}

const known = new WeakMap<Season, WeakMap<PlanWhatIf, { readonly trial: Trial | undefined }>>();

/** Worked out once for a season. */
function trialOf(plan: Plan, season: Season, whatIf: PlanWhatIf): Trial | undefined {
  const ofSeason = known.get(season) ?? new WeakMap();
  known.set(season, ofSeason);
  const trial = ofSeason.get(whatIf) ?? { trial: tryEdits(plan, season, whatIf.edits) };
  ofSeason.set(whatIf, trial);
  return trial.trial && { ...trial.trial, from: plan };
}

export function whatIfsSection(shown: WhatIfsShown): TemplateResult | typeof nothing {
  const { plan, season, reader } = shown;
  const { whatIfs = [] } = plan;
  if (whatIfs.length === 0) return nothing;
  const words = whatIfsWords(reader.language);
  const rows = whatIfs.map((whatIf): Compared => {
    const trial = trialOf(plan, season, whatIf);
    const actions = actionsOf(whatIf, trial, shown);
    const name = isolated(whatIf.name);
    return { name, plan, season: trial?.season, shopping: trial?.shopping, actions };
  });
  return html`<section class="what-ifs" part="what-ifs">
    <h3>${words.title}</h3>
    <p class="quiet">${words.about}</p>
    ${comparison([{ name: words.asIs, plan, season }, ...rows], reader)}
  </section>`;
}

function actionsOf({ name }: PlanWhatIf, trial: Trial | undefined, shown: WhatIfsShown): TemplateResult {
  const { reader, show, take, remove } = shown;
  const words = whatIfsWords(reader.language);
  const { apply, applyLabel } = mixWords(reader.language).remedies;
  const called = isolated(name);
  return html`${
    trial === undefined
      ? nothing
      : html`<button class="show" aria-label=${words.showLabel(called)} @click=${() => show(trial)}>${words.show}</button>`
  }
  ${trial === undefined || take === undefined ? nothing : html`<button class="take" aria-label=${applyLabel(called)} @click=${() => take(trial)}>${apply}</button>`}
  ${remove === undefined ? nothing : html`<button class="remove plain" aria-label=${words.removeLabel(called)} @click=${() => remove(name)}>${words.remove}</button>`}`;
}
