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

/** Each estimate in words, with its place in FAO-56. */
export const WEATHER_ESTIMATES: Readonly<Record<WeatherEstimate, string>> = Object.freeze({
  'vapour-pressure-from-max-humidity': 'humidity from the highest relative humidity alone (FAO-56 eq. 18)',
  'vapour-pressure-from-mean-humidity': 'humidity from the mean relative humidity (FAO-56 eq. 19)',
  'vapour-pressure-from-min-temperature':
    'humidity from the lowest temperature, taken as the dew point (FAO-56 eq. 48)',
  'radiation-from-sunshine': 'radiation from hours of sunshine (FAO-56 eq. 35)',
  'radiation-from-temperature': 'radiation from the range of temperature, at most a clear sky (FAO-56 eq. 50)',
  'wind-from-height': 'wind taken down to 2 m from the height of the gauge (FAO-56 eq. 47)',
  'wind-assumed': 'wind not known, taken as 2 m/s (FAO-56 p. 63)',
  'wind-raised': 'wind below 0.5 m/s, raised to it (FAO-56 p. 63)',
  'elevation-assumed': 'elevation not known, taken as sea level (our assumption)',
});
