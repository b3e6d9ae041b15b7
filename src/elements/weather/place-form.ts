/** Where the garden lies: found by name, or entered. */
import { html, nothing, type TemplateResult } from 'lit';
import { fromSi } from '../../engine/units.ts';
import type { FoundPlace } from '../../exchange/places/find-places.ts';
import { PLACES_LICENCE } from '../../exchange/places/load-places.ts';
import { weatherWords } from '../../language/en/weather.ts';
import type { Change } from '../../plan/edits/edit.ts';
import type { PlanSite } from '../../plan/schema/plan-schema.ts';
import { type FieldTable, tableFields } from '../garden/field-table.ts';
import { type FormContext, type FormPart, schemaAt } from '../garden/form-context.ts';
import type { PlaceFinder } from './place-finder.ts';
import { unpickedTemplate } from './unpicked-place.ts';

type PlaceFields = Pick<PlanSite, 'place' | 'latitude' | 'longitude' | 'elevation' | 'timeZone'>;

const PLACE_FIELDS: FieldTable<PlaceFields, FormContext> = {
  place: { kind: 'text', isOptional: true },
  latitude: { kind: 'number' },
  longitude: { kind: 'number' },
  elevation: { kind: 'number', quantity: 'elevation', fallback: 0 },
  timeZone: { kind: 'text', isOptional: true },
};

export function placeForm(context: FormContext, finder: PlaceFinder): TemplateResult {
  const { plan, form, reader } = context;
  const say = weatherWords(reader.language).place;
  const part: FormPart<PlanSite> = {
    value: plan.site,
    schema: schemaAt(plan, ['site']),
    key: (field) => `weather-${field}`,
    change: (change) => ({ type: 'change-site', change }),
  };
  const names = new Intl.DisplayNames(reader.locale, { type: 'region' });
  const countryName = (code: string) => names.of(code) ?? code;
  return html`<h3>${say.title}</h3>
    ${form.readOnly ? nothing : searchTemplate(context, finder, countryName)}
    <div class="fields">${tableFields(PLACE_FIELDS, say, part, context)}</div>`;
}

function searchTemplate(
  context: FormContext,
  finder: PlaceFinder,
  countryName: (code: string) => string,
): TemplateResult {
  const say = weatherWords(context.reader.language).place;
  const typed = (event: Event) => void finder.find((event.target as HTMLInputElement).value, countryName);
  return html`<div class="field search">
    <label><span class="label">${say.search.label}</span>
      <input type="search" autocomplete="off" spellcheck="false" .value=${finder.typed} aria-invalid=${finder.isUnpicked ? 'true' : nothing}
        aria-describedby="search-says" @input=${typed} @change=${() => finder.leave()} />
    </label>
    <div id="search-says"><p class="help">${say.search.help}</p></div>
    <div role="status">${foundTemplate(context, finder, countryName)}</div>
    ${'geolocation' in navigator ? html`<button class="plain" @click=${() => useHere(context, finder)}>${say.here}</button>` : nothing}
    <p class="help">${say.credit} <a href="https://www.geonames.org/" rel="noreferrer">${say.source}</a>,
      <a href=${PLACES_LICENCE} rel="noreferrer license">${say.licence}</a></p>
  </div>`;
}

function foundTemplate(
  context: FormContext,
  finder: PlaceFinder,
  countryName: (code: string) => string,
): TemplateResult | typeof nothing {
  const say = weatherWords(context.reader.language).place;
  const { state } = finder;
  if (state.step === 'not-fetched') return html`<p class="refused">${say.notFetched}</p>`;
  if (state.step !== 'found') return nothing;
  if (state.places.length === 0) return html`<p>${say.none}</p>`;
  const where = ({ region, country }: FoundPlace) =>
    region === '' ? countryName(country) : say.state(region, countryName(country));
  return html`<ul class="places" aria-label=${say.found}>
    ${state.places.map(
      (place) =>
        html`<li><button @click=${(event: Event) => choose(place, context, finder, event)}>${say.choice(place.name, where(place))}</button></li>`,
    )}
  </ul>
  ${unpickedTemplate(finder, context)}`;
}

function choose(found: FoundPlace, { plan, form }: FormContext, finder: PlaceFinder, { currentTarget }: Event): void {
  const field = (currentTarget as Element).closest('.search')?.querySelector('input');
  const height = fromSi(found.elevationM, 'elevation', plan.units);
  const change: Change<PlanSite> = {
    place: found.region === '' ? found.name : [found.name, found.region].join(', '),
    latitude: found.latitudeDeg,
    longitude: found.longitudeDeg,
    elevation: Math.round(height),
    timeZone: found.timeZone,
  };
  form.send('weather-place', '', { type: 'change-site', change }, () => {
    finder.clear();
    field?.focus();
  });
}

/** Where the browser says that it is; the browser asks first. A name that the plan has is of elsewhere. */
function useHere({ plan, form, reader, format }: FormContext, finder: PlaceFinder): void {
  const held = format.number(plan.site.latitude, 6);
  const failed = () => form.refuse('weather-latitude', held, () => weatherWords(reader.language).place.hereFailed);
  navigator.geolocation.getCurrentPosition(({ coords }) => {
    const near = (degrees: number) => Number(degrees.toFixed(2));
    const change: Change<PlanSite> = {
      latitude: near(coords.latitude),
      longitude: near(coords.longitude),
      place: undefined,
      timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    };
    form.send('weather-latitude', '', { type: 'change-site', change }, () => finder.clear());
  }, failed);
}
