/**
 * Reference evapotranspiration, written from FAO Irrigation and Drainage Paper 56 (Allen, Pereira, Raes, Smith 1998).
 * mm and MJ m-2 a day, degrees Celsius, kPa, m/s at 2 m, metres, hours.
 */
export interface Place {
  readonly latitudeDeg: number;
  readonly elevationM?: number | undefined;
  readonly setting?: 'interior' | 'coastal' | undefined;
}

export interface FullWeather {
  readonly minC: number;
  readonly maxC: number;
  readonly actualVapourKpa: number;
  readonly windMs: number;
  /** Measured radiation, or else the hours of sunshine, or else none: by the range of temperature. */
  readonly radiationMj?: number | undefined;
  readonly sunshineHours?: number | undefined;
  readonly soilHeatMj: number;
}

/** Eq. 11. */
export function saturationKpa(celsius: number): number {
  return 0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));
}

/** Eq. 21, 23, 24, 25 and 34: radiation above the air, and the hours of daylight. */
export function sky(latitudeDeg: number, dayOfYear: number): { readonly raMj: number; readonly daylightHours: number } {
  const latitude = (latitudeDeg * Math.PI) / 180;
  const distance = 1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365);
  const declination = 0.409 * Math.sin((2 * Math.PI * dayOfYear) / 365 - 1.39);
  const cosine = -Math.tan(latitude) * Math.tan(declination);
  const sunset = Math.acos(Math.max(-1, Math.min(1, cosine)));
  const raMj =
    ((24 * 60) / Math.PI) *
    0.082 *
    distance *
    (sunset * Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset));
  return { raMj: Math.max(0, raMj), daylightHours: (24 / Math.PI) * sunset };
}

/** Eq. 52. Never below 0: a colder mean than -17.8 C evaporates nothing. */
export function hargreaves(place: Place, dayOfYear: number, minC: number, maxC: number): number {
  const raMm = 0.408 * sky(place.latitudeDeg, dayOfYear).raMj;
  return Math.max(0, 0.0023 * ((minC + maxC) / 2 + 17.8) * Math.sqrt(maxC - minC) * raMm);
}

/** Eq. 6 with eq. 7, 8, 12, 13, 35, 37, 38, 39; wind at least 0.5 m/s (p. 63). Never below 0. */
export function penmanMonteith(place: Place, dayOfYear: number, weather: FullWeather): number {
  const { minC, maxC, actualVapourKpa } = weather;
  const meanC = (minC + maxC) / 2;
  const pressureKpa = 101.3 * ((293 - 0.0065 * elevationOf(place)) / 293) ** 5.26;
  const gamma = 0.000665 * pressureKpa;
  const slope = (4098 * saturationKpa(meanC)) / (meanC + 237.3) ** 2;
  const saturation = (saturationKpa(minC) + saturationKpa(maxC)) / 2;
  const wind = Math.max(0.5, weather.windMs);
  const energy = 0.408 * slope * (netRadiation(place, dayOfYear, weather) - weather.soilHeatMj);
  const drying = gamma * (900 / (meanC + 273)) * wind * (saturation - actualVapourKpa);
  return Math.max(0, (energy + drying) / (slope + gamma * (1 + 0.34 * wind)));
}

function netRadiation(place: Place, dayOfYear: number, weather: FullWeather): number {
  const { raMj, daylightHours } = sky(place.latitudeDeg, dayOfYear);
  const clearSky = (0.75 + 2e-5 * elevationOf(place)) * raMj;
  const solar = solarOf(place, weather, { raMj, daylightHours, clearSky });
  const kelvin4 = ((weather.minC + 273.16) ** 4 + (weather.maxC + 273.16) ** 4) / 2;
  const humidity = 0.34 - 0.14 * Math.sqrt(weather.actualVapourKpa);
  // In the polar night no daylight tells the cloud: the middle of what p. 75 takes for nights in humid climates.
  const clearness = clearSky > 0 ? Math.min(1, solar / clearSky) : 0.5;
  const longwave = 4.903e-9 * kelvin4 * humidity * (1.35 * clearness - 0.35);
  return 0.77 * solar - longwave;
}

/** Where it is not known the season takes sea level: our assumption. */
function elevationOf({ elevationM }: Place): number {
  return elevationM ?? 0;
}

interface Sky {
  readonly raMj: number;
  readonly daylightHours: number;
  readonly clearSky: number;
}

/** As measured, by eq. 35, or by eq. 50 and never above a clear sky's (p. 61). */
function solarOf(place: Place, weather: FullWeather, { raMj, daylightHours, clearSky }: Sky): number {
  if (weather.radiationMj !== undefined) return weather.radiationMj;
  if (weather.sunshineHours !== undefined) return solarFromSunshine(raMj, daylightHours, weather.sunshineHours);
  const kRs = place.setting === 'coastal' ? 0.19 : 0.16;
  return Math.min(clearSky, kRs * Math.sqrt(weather.maxC - weather.minC) * raMj);
}

/** Eq. 47; at 2 m the reading itself, as Table 2.9 prints it. Where wind was not measured 2 m/s, the mean of the world (p. 63). */
export function windAtTwoMetres(windMs: number | undefined, heightM: number): number {
  if (windMs === undefined) return 2;
  return heightM === 2 ? windMs : (windMs * 4.87) / Math.log(67.8 * heightM - 5.42);
}

function solarFromSunshine(raMj: number, daylightHours: number, sunshineHours: number): number {
  const share = daylightHours > 0 ? Math.min(1, sunshineHours / daylightHours) : 0;
  return (0.25 + 0.5 * share) * raMj;
}

/** Eq. 14, 17 and 18, in the paper's order of preference; undefined where neither dew point nor RHmax was seen. */
export function actualVapour(air: {
  readonly minC: number;
  readonly maxC: number;
  readonly dewPointC?: number | undefined;
  readonly maxHumidityPercent?: number | undefined;
  readonly minHumidityPercent?: number | undefined;
}): number | undefined {
  if (air.dewPointC !== undefined) return saturationKpa(air.dewPointC);
  if (air.maxHumidityPercent === undefined) return undefined;
  const morning = (saturationKpa(air.minC) * air.maxHumidityPercent) / 100;
  if (air.minHumidityPercent === undefined) return morning;
  return (morning + (saturationKpa(air.maxC) * air.minHumidityPercent) / 100) / 2;
}
