/** The form that tries a planting in another zone, and what would come of it. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Season } from '../../engine/season/season.ts';
import { describeEdit } from '../../language/describe-edit.ts';
import { formatCount } from '../../language/format/count.ts';
import { formatQuantity } from '../../language/format/quantity.ts';
import type { Reader } from '../../language/reader.ts';
import { mixFigures } from '../../remedies/mix/mix-figures.ts';
import { mixWords, trialWords } from '../shared/words/mix-words.ts';
import type { PlantingMove, Trial } from './trial.ts';

/** Stands for a zone that is not there yet; no id can be empty. */
const OWN_ZONE = '';

export interface TrialForm {
  readonly season: Season;
  readonly zoneId: string;
  readonly tryMove: (move: PlantingMove) => void;
}

export function trialForm({ season, zoneId, tryMove }: TrialForm): TemplateResult {
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
    <h3>${trialWords.title}</h3>
    <p class="quiet">${trialWords.opening}</p>
    ${
      here === undefined || here.plantings.length === 0
        ? nothing
        : html`<form @submit=${out}>
            <label>${trialWords.out}
              <select name="planting">${here.plantings.map(({ planting }) => option(planting.id, planting.name))}</select>
            </label>
            <label>${trialWords.to}
              <select name="zone">
                ${others.map(({ zone }) => option(zone.id, zone.name))}
                ${here.plantings.length > 1 ? option(OWN_ZONE, trialWords.ownZone) : nothing}
              </select>
            </label>
            <button aria-label=${trialWords.tryOut}>${trialWords.try}</button>
          </form>`
    }
    ${
      guests.length === 0
        ? nothing
        : html`<form @submit=${into}>
            <label>${trialWords.into}
              <select name="guest">
                ${guests.map(({ zone, planting }, place) => option(String(place), trialWords.from(planting.name, zone.name)))}
              </select>
            </label>
            <button aria-label=${trialWords.tryIn}>${trialWords.try}</button>
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
  readonly reading: Reader;
  /** Left out where the plan can only be looked at. */
  readonly keep: (() => void) | undefined;
  readonly drop: () => void;
}

export function trialBanner({ trial, season, reading, keep, drop }: TrialShown): TemplateResult {
  return html`<section class="tried" part="trial">
    <h3>${trialWords.trying(describeEdit(trial.from, trial.edit, reading))}</h3>
    <ul>${trial.zoneIds.map((zoneId) => html`<li>${effectOf(zoneId, trial, season, reading)}</li>`)}</ul>
    <p class="actions">
      ${keep === undefined ? nothing : html`<button @click=${keep}>${trialWords.keep}</button>`}
      <button @click=${drop}>${trialWords.drop}</button>
    </p>
  </section>`;
}

function effectOf(zoneId: string, trial: Trial, season: Season, reading: Reader): string {
  const name = trial.season.zones.find(({ zone }) => zone.id === zoneId)?.zone.name ?? zoneId;
  const said = (of: Season) => {
    const { litres, shortDays } = mixFigures(of, [zoneId]);
    return [formatQuantity(litres, 'volume', reading), formatCount(shortDays, mixWords.days, reading.locale)] as const;
  };
  const [after, daysAfter] = said(trial.season);
  if (season.zones.every(({ zone }) => zone.id !== zoneId)) return trialWords.newZone(name, after, daysAfter);
  const [before, daysBefore] = said(season);
  return trialWords.effect(name, before, after, daysBefore, daysAfter);
}
