/** Reference ET of one day, or of a month from its means, by the equation that its readings allow. */
import { type DayNumber, dayOfYear, daysInMonth } from '../../../engine/calendar.ts';
import { meanTemperature, type TemperatureExtremes } from '../../../engine/climate/air-temperature.ts';
import { evaporationEquivalent } from '../../../engine/climate/evaporation-equivalent.ts';
import { extraterrestrialRadiation } from '../../../engine/climate/extraterrestrial-radiation.ts';
import { midMonthDayOfYear } from '../../../engine/climate/mid-month-day-of-year.ts';
import { monthlyReadings } from '../../../engine/climate/monthly-readings.ts';
import { type MonthlyReferenceEt, monthlyReferenceEt } from '../../../engine/climate/monthly-reference-et.ts';
import { penmanMonteithFromWeather } from '../../../engine/climate/penman-monteith-from-weather.ts';
import { DAILY_SOIL_HEAT_FLUX_MJ, monthlySoilHeatFlux } from '../../../engine/climate/soil-heat-flux.ts';
import { WEATHER_ESTIMATES, type WeatherEstimate } from '../../../engine/climate/weather-estimates.ts';
import { missingReadings, type WeatherReadings } from '../../../engine/climate/weather-readings.ts';
import type { GardenSite } from '../../../engine/garden.ts';
import type { EtoEquation } from '../step-kinds.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { code, days, depth, input, temperature } from '../trace-value.ts';

/** Normals belong to no year. */
const COMMON_YEAR = 2001;

/** A step for each of the calendar months, or none where the climate gives its ETo as such. */
export function monthEtoSteps(site: GardenSite, months: readonly number[]): readonly TraceStep[] {
  if (site.climate.etoMm !== undefined) return [];
  const readings = monthlyReadings(site.climate);
  const computed = monthlyReferenceEt(readings, site);
  // Months without temperatures were refused.
  const ofMonth = (month: number) => readings[month % 12] as Weather;
  return months.map((month) => {
    const { method, etoMm } = computed[month] as MonthlyReferenceEt;
    return {
      id: 'eto-month',
      month,
      variant: method,
      ...derived(method, {
        weather: ofMonth(month),
        site,
        dayOfYear: midMonthDayOfYear(month),
        soilHeatFluxMj: monthlySoilHeatFlux({
          previousMeanC: meanTemperature(ofMonth(month + 11)),
          nextMeanC: meanTemperature(ofMonth(month + 1)),
        }),
        dayCount: daysInMonth(COMMON_YEAR, month),
      }),
      result: depth(etoMm),
    };
  });
}

/** `weather`: as it was observed on the day. `etoMm`: as the season has it. */
export function dayEtoStep(
  day: DayNumber,
  variant: EtoEquation,
  { weather, site, etoMm }: { readonly weather: Weather; readonly site: GardenSite; readonly etoMm: number },
): TraceStep {
  return {
    id: 'eto-day',
    day,
    variant,
    ...derived(variant, {
      weather,
      site,
      dayOfYear: dayOfYear(day),
      soilHeatFluxMj: DAILY_SOIL_HEAT_FLUX_MJ,
      dayCount: 1,
    }),
    result: depth(etoMm),
  };
}

export type Weather = WeatherReadings & TemperatureExtremes;

interface MeanDay {
  readonly weather: Weather;
  readonly site: GardenSite;
  /** 1 to 366. */
  readonly dayOfYear: number;
  readonly soilHeatFluxMj: number;
  /** Days that the mean day stands for; 1 for a day. */
  readonly dayCount: number;
}

type Derivation = Pick<TraceStep, 'source' | 'inputs'>;

function derived(equation: EtoEquation, given: MeanDay): Derivation {
  return equation === 'penman-monteith' ? byPenmanMonteith(given) : byHargreavesSamani(given);
}

function byPenmanMonteith({ dayCount, ...given }: MeanDay): Derivation {
  const { vapourPressureKpa, windMs, netRadiationMj, elevationM, estimated } = penmanMonteithFromWeather(given);
  return {
    source: ['FAO-56 eq. 6–8, 11–13', ...estimated.map(estimateNote)],
    inputs: [
      ...temperatures(given.weather),
      input('vapour-pressure', { value: vapourPressureKpa, unit: 'kPa', digits: 3 }),
      input('wind-2m', { value: windMs, quantity: 'windSpeed' }),
      input('net-radiation', { value: netRadiationMj, unit: 'MJ/m²/d', digits: 2 }),
      input('soil-heat', { value: given.soilHeatFluxMj, unit: 'MJ/m²/d', digits: 2 }),
      input('elevation', { value: elevationM, quantity: 'elevation' }),
      input('mean-days', days(dayCount)),
    ],
  };
}

function estimateNote(estimate: WeatherEstimate): TraceSource {
  const { source } = WEATHER_ESTIMATES[estimate];
  return { id: 'estimate', estimate, ...(source === undefined ? {} : { cite: source }) };
}

function byHargreavesSamani({ weather, site, dayOfYear: dayInYear, dayCount }: MeanDay): Derivation {
  const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg: site.latitudeDeg, dayOfYear: dayInYear });
  return {
    source: ['Hargreaves and Samani (1985); FAO-56 eq. 20, 21, 52'],
    inputs: [
      ...temperatures(weather),
      input('not-known', code('reading', missingReadings(weather))),
      input('extraterrestrial-radiation', depth(evaporationEquivalent(extraterrestrialMj))),
      input('mean-days', days(dayCount)),
    ],
  };
}

function temperatures({ minTemperatureC, maxTemperatureC }: TemperatureExtremes): readonly TraceValue[] {
  return [
    input('min-temperature', temperature(minTemperatureC)),
    input('max-temperature', temperature(maxTemperatureC)),
  ];
}
