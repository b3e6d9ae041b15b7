/** Something that was not measured, or not as the equation wants it, and was estimated by a rule of the paper. */
export type WeatherEstimate =
  | 'vapour-pressure-from-max-humidity'
  | 'vapour-pressure-from-mean-humidity'
  | 'vapour-pressure-from-min-temperature'
  | 'radiation-from-sunshine'
  | 'radiation-from-temperature'
  | 'wind-from-height'
  | 'wind-assumed'
  | 'wind-raised'
  | 'elevation-assumed';

/** Where FAO-56 has the rule of each estimate; undefined where it has none and the kit assumes. */
export const WEATHER_ESTIMATES: Readonly<Record<WeatherEstimate, { readonly source: string | undefined }>> =
  Object.freeze({
    'vapour-pressure-from-max-humidity': { source: 'FAO-56 eq. 18' },
    'vapour-pressure-from-mean-humidity': { source: 'FAO-56 eq. 19' },
    'vapour-pressure-from-min-temperature': { source: 'FAO-56 eq. 48' },
    'radiation-from-sunshine': { source: 'FAO-56 eq. 35' },
    'radiation-from-temperature': { source: 'FAO-56 eq. 50' },
    'wind-from-height': { source: 'FAO-56 eq. 47' },
    'wind-assumed': { source: 'FAO-56 p. 63' },
    'wind-raised': { source: 'FAO-56 p. 63' },
    'elevation-assumed': { source: undefined },
  });
