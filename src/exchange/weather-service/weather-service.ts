/**
 * A weather service that answers in the Open-Meteo layout: which addresses a page's owner named, and what is asked of them. Nothing is
 * asked here; `requestWeather` does, once for each address.
 */
import { type DayNumber, isoDate } from '../../engine/calendar.ts';

/** Addresses, as `weather-service` names them, with blanks between. */
export interface WeatherService {
  /** Ends in `/archive`: days of many years, at a place. */
  readonly archive: URL | undefined;
  /** Ends in `/forecast`: the last days and the next, at a place. */
  readonly forecast: URL | undefined;
  /** Any other: a file that is fetched as it is, without a place; in any layout that is read. */
  readonly files: readonly URL[];
}

/** `base`: what relative addresses are taken from. Undefined where none is named, or one is no address of the web. */
export function weatherServiceOf(named: string | undefined, base: string): WeatherService | undefined {
  const texts = (named ?? '').split(/\s+/).filter((text) => text !== '');
  const addresses = texts.flatMap((text) => (URL.canParse(text, base) ? [new URL(text, base)] : []));
  const isWeb = addresses.every(({ protocol }) => protocol === 'https:' || protocol === 'http:');
  if (addresses.length === 0 || addresses.length < texts.length || !isWeb) return undefined;
  const endsIn = (end: string) => addresses.find(({ pathname }) => pathname.endsWith(end));
  const [archive, forecast] = [endsIn('/archive'), endsIn('/forecast')];
  return { archive, forecast, files: addresses.filter((address) => address !== archive && address !== forecast) };
}

export interface ServicePlace {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** About 5 km: nearer than the service's grid, and no garden's address. */
const DEGREES_SAID = 0.05;

/** The place as it leaves the page. */
export function placeSaid({ latitudeDeg, longitudeDeg }: ServicePlace): ServicePlace {
  const rounded = (degrees: number) => Number((Math.round(degrees / DEGREES_SAID) * DEGREES_SAID).toFixed(2)) + 0;
  return { latitudeDeg: rounded(latitudeDeg), longitudeDeg: rounded(longitudeDeg) };
}

const DAILY = 'temperature_2m_max,temperature_2m_min,precipitation_sum,et0_fao_evapotranspiration';

/** The first and last year that normals are asked for: those that weather services compare with at present (from memory). */
export const NORMAL_YEARS = { first: 1991, last: 2020 } as const;

/** Days of many years, both included. */
export function archiveRequest(address: URL, place: ServicePlace, first: DayNumber, last: DayNumber): URL {
  return withQuery(address, place, { start_date: isoDate(first), end_date: isoDate(last) });
}

/** Most days back and ahead that the layout has. */
export const MOST_PAST_DAYS = 92;
const FORECAST_DAYS = 10;

/** The last days, and the next ten. */
export function forecastRequest(address: URL, place: ServicePlace, pastDays: number): URL {
  const past = Math.min(MOST_PAST_DAYS, Math.max(0, pastDays));
  return withQuery(address, place, { past_days: String(past), forecast_days: String(FORECAST_DAYS) });
}

/** What the address asks already is kept, such as a key. */
function withQuery(address: URL, place: ServicePlace, more: Readonly<Record<string, string>>): URL {
  const { latitudeDeg, longitudeDeg } = placeSaid(place);
  const query = {
    latitude: String(latitudeDeg),
    longitude: String(longitudeDeg),
    ...more,
    daily: DAILY,
    timezone: 'auto',
  };
  const url = new URL(address);
  for (const [name, value] of Object.entries(query)) url.searchParams.set(name, value);
  return url;
}
