/** The place of a file, where it has days of several. */
import type { FilePlace, WeatherFile, WeatherFileChoice } from './weather-file.ts';

/** The only place, or the one that a person chose; else it is asked for. */
export function choosePlace(
  places: readonly FilePlace[],
  { place: wanted }: WeatherFileChoice,
): Pick<WeatherFile, 'places' | 'place' | 'asked'> {
  const place = places.length > 1 ? places.find(({ id }) => id === wanted) : places[0];
  return { places, place, asked: places.length > 1 && place === undefined ? ['place'] : [] };
}
