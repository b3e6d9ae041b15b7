/** The daily variables of the Open-Meteo layout that are read, the units they may come in, and what they become. */

import { windAtTwoMetres } from '../../../engine/climate/wind-at-two-metres.ts';
import type { RecordReading } from '../../../engine/record/daily-record.ts';
import { toSi, type UnitSystem } from '../../../engine/units.ts';

interface Variable {
  readonly reading: RecordReading;
  /** By the unit's name as the layout writes it; undefined for one that it does not have. */
  readonly toSi: (value: number, unit: string) => number | undefined;
}

/** Names are told loosely: a degree sign may have been garbled on the way. */
const isUnit = (unit: string, ...names: readonly string[]): boolean => names.includes(bare(unit));
const bare = (unit: string): string =>
  unit
    .normalize('NFKC')
    .replaceAll(/[^A-Za-z/%]/g, '')
    .toLowerCase();

const depth: Variable['toSi'] = (value, unit) => {
  if (isUnit(unit, 'mm')) return value;
  return isUnit(unit, 'inch', 'in') ? toSi(value, 'depth', 'us') : undefined;
};

const temperature: Variable['toSi'] = (value, unit) => {
  if (isUnit(unit, 'c', 'ac')) return value;
  return isUnit(unit, 'f', 'af') ? toSi(value, 'temperature', 'us') : undefined;
};

/** m/s in one unit of each. */
const WIND: Readonly<Record<string, number>> = {
  'm/s': 1,
  ms: 1,
  'km/h': 1 / 3.6,
  kmh: 1 / 3.6,
  mph: 0.44704,
  'mp/h': 0.44704,
  kn: 1852 / 3600,
};

/** Measured at 10 m. */
const wind: Variable['toSi'] = (value, unit) => {
  const factor = WIND[bare(unit)];
  return factor === undefined ? undefined : windAtTwoMetres({ windMs: value * factor, heightM: 10 });
};

const humidity: Variable['toSi'] = (value, unit) => (isUnit(unit, '%') ? value : undefined);
const radiation: Variable['toSi'] = (value, unit) => (isUnit(unit, 'mj/m') ? value : undefined);

const SECONDS_IN_AN_HOUR = 3600;
const sunshine: Variable['toSi'] = (value, unit) => {
  if (isUnit(unit, 's')) return value / SECONDS_IN_AN_HOUR;
  return isUnit(unit, 'h') ? value : undefined;
};

/** The greatest wind of a day is no mean of it, and is not read. */
export const OPEN_METEO_VARIABLES: Readonly<Record<string, Variable>> = {
  precipitation_sum: { reading: 'rainMm', toSi: depth },
  et0_fao_evapotranspiration: { reading: 'etoMm', toSi: depth },
  temperature_2m_max: { reading: 'maxTemperatureC', toSi: temperature },
  temperature_2m_min: { reading: 'minTemperatureC', toSi: temperature },
  dew_point_2m_mean: { reading: 'dewPointC', toSi: temperature },
  relative_humidity_2m_max: { reading: 'maxHumidityPercent', toSi: humidity },
  relative_humidity_2m_min: { reading: 'minHumidityPercent', toSi: humidity },
  relative_humidity_2m_mean: { reading: 'meanHumidityPercent', toSi: humidity },
  wind_speed_10m_mean: { reading: 'windMs', toSi: wind },
  shortwave_radiation_sum: { reading: 'radiationMj', toSi: radiation },
  sunshine_duration: { reading: 'sunshineHours', toSi: sunshine },
};

/** In which system a unit is. */
export function systemOfUnit(unit: string): UnitSystem {
  return isUnit(unit, 'inch', 'in', 'f', 'af') ? 'us' : 'metric';
}

/** A variable of the file: the units of depths and temperatures are shown to whoever looks at it. */
export interface OpenMeteoColumn {
  readonly variable: Variable;
  readonly unit: string;
}
