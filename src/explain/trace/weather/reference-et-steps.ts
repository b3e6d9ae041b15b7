/** Reference ET of a week's days, from whatever told it. */
import { dayOfYear } from '../../../engine/calendar.ts';
import type { TemperatureExtremes } from '../../../engine/climate/air-temperature.ts';
import { ETO_METHODS, monthlyEtoMm } from '../../../engine/climate/daily-eto.ts';
import { DAILY_SOIL_HEAT_FLUX_MJ } from '../../../engine/climate/soil-heat-flux.ts';
import type { WeatherReadings } from '../../../engine/climate/weather-readings.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type DaySpan, placesIn, sumAt } from '../day-span.ts';
import { inId, weekdayName } from '../names.ts';
import type { TraceStep } from '../trace-step.ts';
import { depth } from '../trace-value.ts';
import { monthEtoSteps } from './month-eto-step.ts';
import { normalsStep, placeMonths } from './normals-step.ts';
import { weatherEtoStep } from './weather-eto-step.ts';
import { weekTotalStep } from './week-total-step.ts';

type Method = (typeof ETO_METHODS)[number];

const FROM: Readonly<Record<Method, string>> = {
  normals: 'from the normals',
  observed: 'as observed',
  'penman-monteith': 'by Penman-Monteith',
  'hargreaves-samani': 'by Hargreaves-Samani',
  'observed-week': 'from the observed total of the week',
};

const SOURCES: Readonly<Record<Exclude<Method, 'normals'>, string>> = {
  observed: 'Observed, from the log',
  'penman-monteith': 'FAO-56 eq. 6',
  'hargreaves-samani': 'FAO-56 eq. 52',
  'observed-week': 'Observed week, from the log',
};

/** `span` lies within one week and has at least one day. */
export function referenceEtSteps(season: Season, span: DaySpan): readonly TraceStep[] {
  const { eto } = season.weather;
  const parts = ETO_METHODS.map((method, index) => ({
    method,
    places: placesIn(span, (place) => eto.method[place] === index),
  })).filter(({ places }) => places.length > 0);
  const { source } = season.garden.site.climate;
  return [
    ...parts.flatMap(({ method, places }) => detailOf(season, method, places)),
    {
      id: 'reference-et',
      title: 'Reference evapotranspiration',
      says: 'This is what well-kept grass would use in these days: the measure of how thirsty the weather is.',
      formula: 'ETo = sum over the days',
      source: parts
        .map(({ method }) => (method === 'normals' ? `Monthly normals: ${source}` : SOURCES[method]))
        .join('; '),
      inputs: parts.map(({ method, places }) =>
        depth(`${dayWords(places.length)} ${FROM[method]}`, sumAt(eto.mm, places)),
      ),
      result: depth('Reference evapotranspiration ETo', sumAt(eto.mm, placesIn(span))),
    },
  ];
}

function detailOf(season: Season, method: Method, places: readonly number[]): readonly TraceStep[] {
  const { eto } = season.weather;
  switch (method) {
    case 'observed':
      return [];
    case 'normals':
      return fromNormals(season, places);
    case 'observed-week':
      return [
        weekTotalStep(season, {
          id: 'eto-week-total',
          of: 'reference ET',
          totalOf: ({ etoMm }) => etoMm,
          daily: eto.mm,
          isShared: (place) => eto.method[place] === ETO_METHODS.indexOf('observed-week'),
          places,
        }),
      ];
    default:
      return places.map((place) => fromWeather(season, method, place));
  }
}

function fromNormals(season: Season, places: readonly number[]): readonly TraceStep[] {
  const { site, span } = season.garden;
  return [
    ...monthEtoSteps(site, placeMonths(span.firstDay, places)),
    normalsStep(season, {
      id: 'eto-normals',
      of: 'reference ET',
      totals: monthlyEtoMm(site),
      daily: season.weather.eto.mm,
      places,
    }),
  ];
}

function fromWeather(season: Season, method: 'penman-monteith' | 'hargreaves-samani', place: number): TraceStep {
  const day = season.garden.span.firstDay + place;
  const weather = season.garden.observed.days.get(day) as WeatherReadings & TemperatureExtremes;
  const name = weekdayName(day);
  return weatherEtoStep({
    id: `eto-day:${inId(name)}`,
    name,
    method,
    weather,
    site: season.garden.site,
    dayOfYear: dayOfYear(day),
    soilHeatFluxMj: DAILY_SOIL_HEAT_FLUX_MJ,
    dayCount: 1,
    etoMm: season.weather.eto.mm[place] as number,
  });
}

function dayWords(count: number): string {
  return count === 1 ? '1 day' : `${count} days`;
}
