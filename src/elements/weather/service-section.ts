/** A weather service that the page's owner named: what would leave the page, and the buttons that ask it. */
import { html, nothing, type TemplateResult } from 'lit';
import { type DayNumber, dayNumber, dayNumberOf, type IsoDate } from '../../engine/calendar.ts';
import {
  archiveRequest,
  forecastRequest,
  MOST_PAST_DAYS,
  NORMAL_YEARS,
  placeSaid,
  type ServicePlace,
  type WeatherService,
} from '../../exchange/weather-service/weather-service.ts';
import { weatherWords } from '../../language/en/weather.ts';
import { formatFor } from '../../language/format/format.ts';
import type { Reader } from '../../language/reader.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { seasonDays } from '../../plan/season-weeks.ts';
import type { WeatherSession } from './weather-session.ts';

export interface ServiceContext {
  readonly service: WeatherService;
  readonly plan: Plan;
  readonly reader: Reader;
  readonly today: IsoDate;
  readonly session: WeatherSession;
}

export function serviceSection(context: ServiceContext): TemplateResult {
  const { service, plan, reader, session } = context;
  const say = weatherWords(reader.language).service;
  const place = placeOf(plan);
  const asks = service.archive !== undefined || service.forecast !== undefined;
  const [file] = service.files;
  if (asks && place === undefined && file === undefined)
    return html`<h3>${say.title}</h3><p class="quiet">${say.noPlace}</p>`;
  const isBusy = session.state.step === 'busy';
  const button = (name: string, words: string, press: () => void, rank = '') =>
    html`<button name=${name} class=${rank} ?disabled=${isBusy} @click=${press}>${words}</button>`;
  return html`<h3>${say.title}</h3>
    ${asks && place === undefined ? html`<p class="quiet">${say.noPlace}</p>` : nothing}
    <p id="service-says">${saysWhat(context, place)}</p>
    <div class="actions" role="group" aria-describedby="service-says">
      ${climateRequest(context) === undefined ? nothing : button('ask-climate', say.climate, () => void askClimate(context), 'main')}
      ${service.forecast === undefined || place === undefined ? nothing : button('ask-season', say.season, () => void askSeason(context))}
      ${file === undefined ? nothing : button('ask-file', say.file, () => void session.openAddress(fileName(file), file))}
      ${isBusy ? html`<button name="cancel" @click=${() => session.close()}>${say.cancel}</button>` : nothing}
    </div>
    ${asks ? html`<p class="help">${say.model}</p>` : nothing}`;
}

function placeOf({ site }: Plan): ServicePlace | undefined {
  return site.longitude === undefined ? undefined : { latitudeDeg: site.latitude, longitudeDeg: site.longitude };
}

/** What stands behind the last slash of an address, or its server where nothing does. */
const fileName = ({ pathname, host }: URL): string => decodedName(pathname.split('/').at(-1) ?? '') || host;

function decodedName(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}

/** Of each kind of address that can be asked now. */
function saysWhat({ service, reader }: ServiceContext, place: ServicePlace | undefined): string {
  const say = weatherWords(reader.language).service;
  const format = formatFor(reader);
  const hosts = (addresses: readonly (URL | undefined)[]) =>
    format.list([...new Set(addresses.flatMap((address) => (address === undefined ? [] : [address.host])))]);
  const asked = [service.archive, service.forecast].filter((address) => address !== undefined);
  const said = place === undefined || asked.length === 0 ? undefined : placeSaid(place);
  return [
    ...(said === undefined ? [] : [say.says(format, said.latitudeDeg, said.longitudeDeg, hosts(asked))]),
    ...(service.files.length === 0 ? [] : [say.fileSays(hosts(service.files))]),
  ].join(' ');
}

const firstOf = (year: number): DayNumber => dayNumberOf({ year, month: 0, dayOfMonth: 1 });

/** Of the years that normals are made of; undefined without an archive or a place. */
function climateRequest({ service, plan }: ServiceContext): URL | undefined {
  const place = placeOf(plan);
  if (service.archive === undefined || place === undefined) return undefined;
  return archiveRequest(service.archive, place, firstOf(NORMAL_YEARS.first), firstOf(NORMAL_YEARS.last + 1) - 1);
}

async function askClimate(context: ServiceContext): Promise<void> {
  const { reader, session } = context;
  const request = climateRequest(context);
  if (request === undefined) return;
  const say = weatherWords(reader.language).service;
  await session.ask([request], async ([file]) => {
    if (file?.record === undefined) return;
    const { firstDay, dayCount } = file.record;
    const year = (day: DayNumber) => new Date(day * 86_400_000).getUTCFullYear();
    const source = say.source(request.host, year(firstDay), year(firstDay + dayCount - 1));
    await session.climateOf(file, () => ({ source }));
  });
}

/** Of a season that began longer ago than the forecast goes back, the archive has the beginning. */
async function askSeason({ service, plan, today, session }: ServiceContext): Promise<void> {
  const place = placeOf(plan);
  if (service.forecast === undefined || place === undefined) return;
  const now = dayNumber(today);
  const { first } = seasonDays(plan.season);
  const requests = [forecastRequest(service.forecast, place, now - first)];
  if (service.archive !== undefined && now - first > MOST_PAST_DAYS) {
    requests.push(archiveRequest(service.archive, place, first, now - MOST_PAST_DAYS - 1));
  }
  await session.ask(requests, (files, work) => session.seasonOf(files, work, today));
}
