/** The form that tries a planting in another zone, and what would come of all that is tried. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { describeShopping, describeTried } from '../../language/describe-what-if.ts';
import { mixWords } from '../../language/en/mix.ts';
import { whatIfsWords } from '../../language/en/what-ifs.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { NAME_LENGTH } from '../../plan/schema/text.ts';
import { mixFigures } from '../../remedies/mix/mix-figures.ts';
import { comparison } from './mix-comparison.ts';
import { type PlantingMove, type Trial, zonesTouched } from './trial.ts';

/** Stands for a zone that is not there yet; no id can be empty. */
const OWN_ZONE = '';

export interface TrialForm {
  readonly season: Season;
  readonly zoneId: string;
  readonly reader: Reader;
  readonly tryMove: (move: PlantingMove) => void;
}

export function trialForm({ season, zoneId, reader, tryMove }: TrialForm): TemplateResult {
  const words = mixWords(reader.language).trial;
  const here = season.zones.find(({ zone }) => zone.id === zoneId);
  const others = season.zones.filter(({ zone }) => zone.id !== zoneId);
  const guests = others.flatMap(({ zone, plantings }) => plantings.map(({ planting }) => ({ zone, planting })));
  const submitted = (move: (form: FormData) => PlantingMove) => (event: Event) => {
    event.preventDefault();
    tryMove(move(new FormData(event.target as HTMLFormElement)));
  };
  const out = submitted((form) => ({
    zoneId,
    plantingId: String(form.get('planting')),
    toZoneId: form.get('zone') === OWN_ZONE ? undefined : String(form.get('zone')),
  }));
  const into = submitted((form) => {
    const guest = guests[Number(form.get('guest'))];
    return { zoneId: guest?.zone.id ?? '', plantingId: guest?.planting.id ?? '', toZoneId: zoneId };
  });
  return html`<section class="trial">
    <h3>${words.title}</h3>
    <p class="quiet">${words.opening}</p>
    ${
      here === undefined || here.plantings.length === 0
        ? nothing
        : html`<form @submit=${out}>
            <label>${words.out}
              <select name="planting">${here.plantings.map(({ planting }) => option(planting.id, isolated(planting.name)))}</select>
            </label>
            <label>${words.to}
              <select name="zone">
                ${others.map(({ zone }) => option(zone.id, isolated(zone.name)))}
                ${here.plantings.length > 1 ? option(OWN_ZONE, words.ownZone) : nothing}
              </select>
            </label>
            <button aria-label=${words.tryOut}>${words.try}</button>
          </form>`
    }
    ${
      guests.length === 0
        ? nothing
        : html`<form @submit=${into}>
            <label>${words.into}
              <select name="guest">
                ${guests.map(({ zone, planting }, index) => option(String(index), words.from(isolated(planting.name), isolated(zone.name))))}
              </select>
            </label>
            <button aria-label=${words.tryIn}>${words.try}</button>
          </form>`
    }
  </section>`;
}

function option(value: string, label: string): TemplateResult {
  return html`<option value=${value}>${label}</option>`;
}

export interface TrialShown {
  readonly trial: Trial;
  /** As the plan stands. */
  readonly season: Season;
  readonly reader: Reader;
  /** Left out where the plan can only be looked at. */
  readonly keep: (() => void) | undefined;
  /** Keeps the changes beside the plan under a name; left out likewise, and where the plan keeps no changes of their kind. */
  readonly keepBeside: ((name: string) => void) | undefined;
  readonly drop: () => void;
  readonly takeBack: () => void;
}

export function trialBanner(shown: TrialShown): TemplateResult {
  const { trial, season, reader, keep, drop, takeBack } = shown;
  const words = mixWords(reader.language).trial;
  const together = whatIfsWords(reader.language);
  const steps = describeTried(trial.from, trial.edits, reader);
  const [only = ''] = steps;
  const shopping = describeShopping(trial.shopping, reader);
  const hasFittings = trial.shopping.tees + trial.shopping.endCaps + trial.shopping.valves > 0;
  return html`<section class="tried" part="trial">
    <h3 tabindex="-1">${steps.length === 1 ? words.trying(only) : together.trying(formatFor(reader), trial.edits.length)}</h3>
    ${steps.length === 1 ? nothing : html`<ol class="steps">${steps.map((step) => html`<li>${step}</li>`)}</ol>`}
    <ul class="effects">${zonesTouched(trial, season).map((zoneId) => html`<li>${effectOn(zoneId, trial, season, reader)}</li>`)}</ul>
    ${comparison(
      [
        { name: together.asIs, plan: trial.from, season },
        { name: together.tried, plan: trial.plan, season: trial.season },
      ],
      reader,
    )}
    ${shopping.length === 0 ? nothing : html`<h4>${together.toBuy}</h4><ul class="shopping">${shopping.map((line) => html`<li>${line}</li>`)}</ul>${hasFittings ? html`<p class="quiet small">${together.fittings}</p>` : nothing}`}
    <p class="actions">
      ${keep === undefined ? nothing : html`<button class="keep" @click=${keep}>${words.keep}</button>`}
      ${trial.edits.length < 2 ? nothing : html`<button class="take-back" @click=${takeBack}>${together.takeBack}</button>`}
      <button class="drop" @click=${drop}>${words.drop}</button>
    </p>
    ${nameForm(shown)}
  </section>`;
}

function nameForm({ trial, reader, keepBeside }: TrialShown): TemplateResult | typeof nothing {
  if (keepBeside === undefined) return nothing;
  const words = whatIfsWords(reader.language);
  const kept = (event: Event) => {
    event.preventDefault();
    const name = String(new FormData(event.target as HTMLFormElement).get('name')).trim();
    if (name !== '') keepBeside(name);
  };
  const begun = words.begun(formatFor(reader), (trial.from.whatIfs?.length ?? 0) + 1);
  return html`<form class="beside" @submit=${kept}>
    <label>${words.nameIt} <input name="name" required maxlength=${NAME_LENGTH} .value=${begun} /></label>
    <button>${words.keepBeside}</button>
  </form>`;
}

function effectOn(zoneId: string, trial: Trial, season: Season, reader: Reader): string {
  const words = mixWords(reader.language).trial;
  const format = formatFor(reader);
  const name = isolated(trial.season.zones.find(({ zone }) => zone.id === zoneId)?.zone.name ?? zoneId);
  const after = mixFigures(trial.season, [zoneId]);
  const isNew = season.zones.every(({ zone }) => zone.id !== zoneId);
  return isNew ? words.newZone(format, name, after) : words.effect(format, name, mixFigures(season, [zoneId]), after);
}
