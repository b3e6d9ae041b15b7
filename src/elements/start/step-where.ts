/** Step 1: the place, its weather, the season's days, the soil. */
import { html, nothing, type TemplateResult } from 'lit';
import { dayNumber, isoDate } from '../../engine/calendar.ts';
import { greatCircleDistanceKm } from '../../engine/climate/great-circle-distance.ts';
import { SOIL_TEXTURES } from '../../engine/soil/textures.data.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import type { FoundPlace } from '../../exchange/places/find-places.ts';
import { PLACES_LICENCE } from '../../exchange/places/load-places.ts';
import { weatherServiceOf } from '../../exchange/weather-service/weather-service.ts';
import { startWords } from '../../language/en/start.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { nameIn } from '../../language/name-in.ts';
import type { Edit } from '../../plan/edits/edit.ts';
import { seasonStart } from '../../plan/new-plan.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import { choiceField, dateField, numberField, optionsOf } from '../garden/fields.ts';
import { fieldSchema, schemaAt } from '../garden/form-context.ts';
import { todayOf } from '../shared/today-here.ts';
import { latePublishedTable, type PublishedTableField } from '../weather/late-published-table.ts';
import { NEAR_KM } from '../weather/near-km.ts';
import { PlaceFinder } from '../weather/place-finder.ts';
import { serviceSection } from '../weather/service-section.ts';
import { failureWords, sessionStatus } from '../weather/session-words.ts';
import { unpickedTemplate } from '../weather/unpicked-place.ts';
import { WeatherSession } from '../weather/weather-session.ts';
import { isAssumed, type MakeStep, type StartContext } from './start-context.ts';
import { assumable, cards, fold, stepHead } from './start-parts.ts';

const SOILS = { sand: 'sand', loam: 'loam', clay: 'clay' } as const;

interface WhereContext extends StartContext {
  readonly finder: PlaceFinder;
  readonly session: WeatherSession;
  readonly table: PublishedTableField;
}

export const makeStep: MakeStep = (host, plan) => {
  const finder = new PlaceFinder(host);
  const session = new WeatherSession(host, plan);
  const table = latePublishedTable(host, plan);
  return (context) => stepWhere({ ...context, finder, session, table });
};

function stepWhere(context: WhereContext): TemplateResult {
  const { plan, reader, format } = context;
  const say = startWords(reader.language).where;
  const { place, latitude } = plan.site;
  return html`${stepHead(say.title, say.lead)}
    <div class="two">
      <div>
        ${searchTemplate(context)}
        ${place === undefined ? nothing : html`<p class="told">${say.at(format, place, latitude)}</p>`}
        ${seasonTemplate(context)}
      </div>
      <div class="weather">${weatherTemplate(context)}</div>
    </div>
    ${soilTemplate(context)}
    ${fold(context, 'where-more', say.more, '', () => moreTemplate(context))}`;
}

function searchTemplate(context: WhereContext): TemplateResult {
  const { finder, reader } = context;
  const say = startWords(reader.language).where;
  const words = weatherWords(reader.language).place;
  const names = new Intl.DisplayNames(reader.locale, { type: 'region' });
  const countryName = (code: string) => names.of(code) ?? code;
  const typed = (event: Event) => void finder.find((event.target as HTMLInputElement).value, countryName);
  const { state } = finder;
  const where = ({ region, country }: FoundPlace) =>
    region === '' ? countryName(country) : words.state(region, countryName(country));
  const firstOnEnter = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' || state.step !== 'found' || state.places[0] === undefined) return;
    event.preventDefault();
    choose(state.places[0], context);
  };
  return html`<div class="field search">
    <label><span class="label">${say.place.label}</span>
      <input type="search" name="place" autocomplete="off" spellcheck="false" .value=${finder.typed} aria-invalid=${finder.isUnpicked ? 'true' : nothing}
        aria-describedby="place-says" @input=${typed} @change=${() => finder.leave()} @keydown=${firstOnEnter} /></label>
    <p class="help" id="place-says">${say.place.help}</p>
    <div role="status">${
      state.step === 'not-fetched'
        ? html`<p class="refused">${words.notFetched}</p>`
        : state.step !== 'found'
          ? nothing
          : state.places.length === 0
            ? html`<p>${words.none}</p>`
            : html`<ul class="places" aria-label=${words.found}>${state.places.map(
                (found) =>
                  html`<li><button @click=${() => choose(found, context)}>${words.choice(found.name, where(found))}</button></li>`,
              )}</ul>${unpickedTemplate(finder, context)}`
    }</div>
    <p class="help">${words.credit} <a href="https://www.geonames.org/" rel="noreferrer">${words.source}</a>,
      <a href=${PLACES_LICENCE} rel="noreferrer license">${words.licence}</a></p>
  </div>`;
}

/** The place brings its height and time zone; while nothing else says otherwise, its units and the months of its season too. */
function choose(found: FoundPlace, context: WhereContext): void {
  const { plan, form, finder, host } = context;
  const units: UnitSystem = found.country === 'US' ? 'us' : 'metric';
  const hasPlantings = plan.zones.some(({ plantings }) => plantings.length > 0);
  const own = hasPlantings ? plan.units : units;
  const edits: Edit[] = own === plan.units ? [] : [{ type: 'convert-units', units: own }];
  edits.push({
    type: 'change-site',
    change: {
      place: found.region === '' ? found.name : [found.name, found.region].join(', '),
      latitude: found.latitudeDeg,
      longitude: found.longitudeDeg,
      elevation: Math.round(fromSi(found.elevationM, 'elevation', own)),
      timeZone: found.timeZone,
    },
  });
  if (isAssumed(context, 'season')) {
    const firstDay = seasonStart(dayNumber(todayOf(host.today)), found.latitudeDeg < 0);
    edits.push({ type: 'set-season', season: { ...plan.season, firstDay } });
  }
  // A place is no word about the rest; but weather from far away is not that of the place.
  const others = plan.assumed?.filter((part) => part !== 'climate') ?? [];
  edits.push({
    type: 'set-assumed',
    assumed: isWeatherOfOther(plan.site, found) ? ['climate', ...others] : plan.assumed,
  });
  form.send('place', '', { type: 'together', edits }, () => {
    finder.clear();
    host.requestUpdate();
  });
}

/** Whether the weather that is known is that of a place too far away from this one. */
function isWeatherOfOther({ climate, latitude, longitude }: Plan['site'], found: FoundPlace): boolean {
  if (climate.source === '' || longitude === undefined) return false;
  return greatCircleDistanceKm({ latitudeDeg: latitude, longitudeDeg: longitude }, found) > NEAR_KM;
}

function weatherTemplate(context: WhereContext): TemplateResult {
  const { plan, reader, session, host, consumer, table } = context;
  const say = startWords(reader.language).where;
  const { view } = consumer;
  const today = todayOf(host.today);
  const service = weatherServiceOf(view.weatherService, document.baseURI);
  const { state } = session;
  const says = sessionStatus(state, reader);
  const { source, rain } = plan.site.climate;
  const hasRain = source === '' || rain.some((depth) => depth > 0);
  return html`<h3>${say.weather}</h3>
    ${source === '' ? nothing : html`<p class=${isAssumed(context, 'climate') ? 'told is-assumed' : 'told'}>${say.known(source)}</p>`}
    ${hasRain ? nothing : html`<p class="help">${say.noRain}</p>`}
    ${service === undefined ? nothing : serviceSection({ service, plan, reader, today, session })}
    <div role="status">${says === '' ? nothing : html`<p>${says} ${state.step === 'busy' ? html`<progress></progress>` : nothing}</p>`}</div>
    <div role="alert">${state.step === 'failed' ? html`<p class="refused">${failureWords(state.why, reader)}</p>` : nothing}</div>
    <div class="fields">${table(say.table, context)}</div>
    ${fold(context, 'where-weather', say.otherWeather, say.otherWeatherSays, () => html`<runnel-weather .today=${host.today} .isBesidePlace=${true}></runnel-weather>`)}`;
}

function seasonTemplate(context: StartContext): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language).where;
  const { first, last } = seasonDays(plan.season);
  const season = (firstDay: number, lastDay: number): Edit => ({
    type: 'set-season',
    season: { firstDay: isoDate(firstDay), weeks: Math.max(1, Math.round((lastDay - firstDay + 1) / 7)) },
  });
  const fields = html`<div class="fields">
    ${dateField({ key: 'first-day', words: say.firstDay, value: isoDate(first), edit: (day = '') => season(dayNumber(day), last) }, context)}
    ${dateField({ key: 'last-day', words: say.lastDay, value: isoDate(last), edit: (day = '') => season(first, dayNumber(day)) }, context)}
  </div>`;
  return assumable(context, 'season', fields);
}

function soilTemplate(context: StartContext): TemplateResult {
  const { plan, reader, form } = context;
  const say = startWords(reader.language).where;
  const { soil } = plan.site;
  const known = Object.values(SOILS).some((each) => each === soil);
  const name = SOIL_TEXTURES.find(({ id }) => id === soil)?.name;
  return html`<div id="part-soil">${cards(context, {
    key: 'soil',
    legend: say.soil,
    value: soil as keyof typeof SOILS,
    assumed: isAssumed(context, 'soil'),
    options: Object.values(SOILS).map((value) => ({ value, ...say.soils[value], drawing: value })),
    choose: (value) => form.send('soil', '', { type: 'change-site', change: { soil: value } }),
  })}
  <p class="help">${known || name === undefined ? say.soilHelp : say.otherSoil(nameIn(name, reader.language))}</p></div>`;
}

function moreTemplate(context: StartContext): TemplateResult {
  const { plan, reader } = context;
  const say = startWords(reader.language);
  const schema = schemaAt(plan, ['site']);
  const field = <Field extends 'latitude' | 'elevation' | 'slopePercent'>(key: Field) => ({
    key,
    value: plan.site[key],
    schema: fieldSchema(schema, key),
    edit: (value: number | undefined): Edit => ({ type: 'change-site', change: { [key]: value } }),
  });
  return html`<div class="fields">
    ${numberField({ ...field('latitude'), words: weatherWords(reader.language).place.latitude }, context)}
    ${numberField({ ...field('elevation'), words: say.where.elevation, quantity: 'elevation', fallback: 0 }, context)}
    ${numberField({ ...field('slopePercent'), words: say.where.slope }, context)}
    ${choiceField<Plan['units']>(
      {
        key: 'units',
        words: say.units,
        value: plan.units,
        options: optionsOf({ us: say.units.us, metric: say.units.metric }),
        edit: (units) => ({ type: 'convert-units', units }),
      },
      context,
    )}
  </div>`;
}
