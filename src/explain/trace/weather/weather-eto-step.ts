/** Reference ET of one day, or of a month from its means, by the equation that its readings allow. */
import type { TemperatureExtremes } from '../../../engine/climate/air-temperature.ts';
import { evaporationEquivalent } from '../../../engine/climate/evaporation-equivalent.ts';
import { extraterrestrialRadiation } from '../../../engine/climate/extraterrestrial-radiation.ts';
import { penmanMonteithFromWeather } from '../../../engine/climate/penman-monteith-from-weather.ts';
import { WEATHER_ESTIMATES } from '../../../engine/climate/weather-estimates.ts';
import { missingReadings, type WeatherReadings } from '../../../engine/climate/weather-readings.ts';
import type { GardenSite } from '../../../engine/garden.ts';
import type { TraceStep, TraceValue } from '../trace-step.ts';
import { days, depth, temperature, words } from '../trace-value.ts';

export interface WeatherEto {
  /** `eto-month:june`; `eto-day:tuesday`. */
  readonly id: string;
  /** `June`, `Tuesday`. */
  readonly name: string;
  readonly method: 'penman-monteith' | 'hargreaves-samani';
  readonly weather: WeatherReadings & TemperatureExtremes;
  readonly site: GardenSite;
  /** 1 to 366. */
  readonly dayOfYear: number;
  readonly soilHeatFluxMj: number;
  /** Days that the mean day stands for; 1 for a day. */
  readonly dayCount: number;
  /** As the season has it, mm. */
  readonly etoMm: number;
}

const MJ = 'MJ/m²/day';

export function weatherEtoStep(given: WeatherEto): TraceStep {
  return given.method === 'penman-monteith' ? penmanMonteithStep(given) : hargreavesStep(given);
}

function penmanMonteithStep(given: WeatherEto): TraceStep {
  const { id, name, weather, site, dayOfYear, soilHeatFluxMj } = given;
  const steps = penmanMonteithFromWeather({ weather, site, dayOfYear, soilHeatFluxMj });
  const estimates = steps.estimated.map((estimate) => `; ${WEATHER_ESTIMATES[estimate]}`);
  return {
    id,
    title: `Reference ET of ${name} from its weather`,
    says: 'Sun, warmth, wind and dry air together say how much water well-kept grass would use.',
    formula:
      'ETo = [0.408 Δ (Rn − G) + γ 900/(T + 273) u2 (es − ea)] / [Δ + γ (1 + 0.34 u2)], not below 0, × days; °C, kPa, m/s; ' +
      'T = mean of Tmin and Tmax, es = mean of both e°, e°(T) = 0.6108 exp(17.27 T/(T + 237.3)), ' +
      'Δ = 4098 e°(T)/(T + 237.3)², γ = 0.000665 × 101.3 ((293 − 0.0065 z)/293)^5.26',
    source: `FAO-56 eq. 6, 7, 8, 11, 12 and 13${estimates.join('')}`,
    inputs: [
      ...temperatures(weather),
      { label: 'Vapour pressure ea', value: steps.vapourPressureKpa, unit: 'kPa', digits: 3 },
      { label: 'Wind at 2 m u2', value: steps.windMs, quantity: 'windSpeed' },
      { label: 'Net radiation Rn', value: steps.netRadiationMj, unit: MJ, digits: 2 },
      { label: 'Heat into the soil G', value: soilHeatFluxMj, unit: MJ, digits: 2 },
      { label: 'Elevation z', value: steps.elevationM, quantity: 'elevation' },
      days('Days', given.dayCount),
    ],
    result: etoResult(given),
  };
}

function hargreavesStep(given: WeatherEto): TraceStep {
  const { id, name, weather, site, dayOfYear } = given;
  const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg: site.latitudeDeg, dayOfYear });
  return {
    id,
    title: `Reference ET of ${name} from temperatures`,
    says: 'With little but temperatures known, warm days with cool nights are taken to be clear and to use the most water.',
    formula: 'ETo = 0.0023 (T + 17.8) √(Tmax − Tmin) Ra, not below 0, × days; °C, T = mean of Tmin and Tmax',
    source: 'Hargreaves and Samani (1985), FAO-56 eq. 52; Ra by eq. 21, as water by eq. 20',
    inputs: [
      ...temperatures(weather),
      words('Not known', missingReadings(weather).join(', ')),
      depth('Sunlight above the air Ra, as water in a day', evaporationEquivalent(extraterrestrialMj)),
      days('Days', given.dayCount),
    ],
    result: etoResult(given),
  };
}

function temperatures({ minTemperatureC, maxTemperatureC }: TemperatureExtremes): readonly TraceValue[] {
  return [
    temperature('Lowest temperature Tmin', minTemperatureC),
    temperature('Highest temperature Tmax', maxTemperatureC),
  ];
}

function etoResult({ name, etoMm }: WeatherEto): TraceValue {
  return depth(`Reference evapotranspiration of ${name}`, etoMm);
}
