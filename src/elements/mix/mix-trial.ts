/** The form that tries a planting in another zone, and what would come of it. */

import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { mixWords } from '../../language/en/mix.ts';
import { formatFor } from '../../language/format/format.ts';
import { isolated } from '../../language/format/isolated.ts';
import type { Reader } from '../../language/reader.ts';
import { mixFigures } from '../../remedies/mix/mix-figures.ts';
import type { PlantingMove, Trial } from './trial.ts';

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
  readonly drop: () => void;
}

export function trialBanner({ trial, season, reader, keep, drop }: TrialShown): TemplateResult {
  const words = mixWords(reader.language).trial;
  return html`<section class="tried" part="trial">
    <h3>${words.trying(describeEdit(trial.from, trial.edit, reader))}</h3>
    <ul>${trial.zoneIds.map((zoneId) => html`<li>${effectOn(zoneId, trial, season, reader)}</li>`)}</ul>
    <p class="actions">
      ${keep === undefined ? nothing : html`<button class="keep" @click=${keep}>${words.keep}</button>`}
      <button class="drop" @click=${drop}>${words.drop}</button>
    </p>
  </section>`;
}

function effectOn(zoneId: string, trial: Trial, season: Season, reader: Reader): string {
  const words = mixWords(reader.language).trial;
  const format = formatFor(reader);
  const name = trial.season.zones.find(({ zone }) => zone.id === zoneId)?.zone.name ?? zoneId;
  const after = mixFigures(trial.season, [zoneId]);
  const isNew = season.zones.every(({ zone }) => zone.id !== zoneId);
  return isNew ? words.newZone(format, name, after) : words.effect(format, name, mixFigures(season, [zoneId]), after);
}
