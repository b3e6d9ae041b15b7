import type { TemperatureExtremes } from './air-temperature.ts';
import { clearSkyRadiation } from './clear-sky-radiation.ts';
import { daylightHours } from './daylight-hours.ts';
import { extraterrestrialRadiation } from './extraterrestrial-radiation.ts';
import { netLongwaveRadiation, netRadiation, netSolarRadiation } from './net-radiation.ts';
import { penmanMonteith } from './penman-monteith.ts';
import { type Sky, solarRadiationOf } from './solar-radiation-of.ts';
import { vapourPressureOf } from './vapour-pressure-of.ts';
import type { WeatherEstimate } from './weather-estimates.ts';
import { isRead, type WeatherReadings, type WeatherSite } from './weather-readings.ts';
import { windOf } from './wind-of.ts';

/** FAO Penman-Monteith with every step that led to it; radiation in MJ m-2 d-1. */
export interface PenmanMonteithSteps extends Sky {
  readonly etoMm: number;
  readonly solarMj: number;
  readonly netSolarMj: number;
  readonly netLongwaveMj: number;
  readonly netRadiationMj: number;
  readonly soilHeatFluxMj: number;
  readonly vapourPressureKpa: number;
  /** At 2 m. */
  readonly windMs: number;
  readonly elevationM: number;
  readonly estimated: readonly WeatherEstimate[];
}

/**
 * Reference evapotranspiration by FAO Penman-Monteith from whatever was measured beside the extremes of temperature, mm/d. What
 * is missing follows the paper's rules (FAO-56 pp. 58-63), each named in `estimated`. By day the soil heat flux is 0 (eq. 42), by
 * month eq. 43 or 44.
 * Throws a RangeError where the highest temperature is below the lowest and radiation rests on them.
 */
export function penmanMonteithFromWeather(given: {
  readonly weather: WeatherReadings & TemperatureExtremes;
  readonly site: WeatherSite;
  readonly dayOfYear: number;
  readonly soilHeatFluxMj: number;
}): PenmanMonteithSteps {
  const { weather, site, dayOfYear, soilHeatFluxMj } = given;
  const { minTemperatureC, maxTemperatureC } = weather;
  const estimated: WeatherEstimate[] = [];
  const elevationM = elevationOf(site, estimated);
  const sky = skyOf(site.latitudeDeg, elevationM, dayOfYear);
  const vapourPressureKpa = vapourPressureOf(weather, estimated);
  const windMs = windOf(weather, site, estimated);
  const solarMj = solarRadiationOf({ ...weather, setting: site.setting ?? 'interior' }, sky, estimated);
  const netSolarMj = netSolarRadiation(solarMj);
  const { clearSkyMj } = sky;
  const netLongwaveMj = netLongwaveRadiation({
    minTemperatureC,
    maxTemperatureC,
    vapourPressureKpa,
    solarMj,
    clearSkyMj,
  });
  const netRadiationMj = netRadiation({ netSolarMj, netLongwaveMj });
  const inputs = { vapourPressureKpa, windMs, netRadiationMj, soilHeatFluxMj, elevationM };
  const etoMm = penmanMonteith({ minTemperatureC, maxTemperatureC, ...inputs });
  return { etoMm, ...sky, solarMj, netSolarMj, netLongwaveMj, ...inputs, estimated };
}

function elevationOf(site: WeatherSite, estimated: WeatherEstimate[]): number {
  if (isRead(site.elevationM)) return site.elevationM;
  estimated.push('elevation-assumed');
  return 0;
}

function skyOf(latitudeDeg: number, elevationM: number, dayOfYear: number): Sky {
  const extraterrestrialMj = extraterrestrialRadiation({ latitudeDeg, dayOfYear });
  return {
    extraterrestrialMj,
    clearSkyMj: clearSkyRadiation({ extraterrestrialMj, elevationM }),
    daylightHours: daylightHours({ latitudeDeg, dayOfYear }),
  };
}
