/** Places by the beginning of their name, in any spelling that is known. */
import { foldName } from './fold-name.ts';
import type { Places } from './unpack-places.ts';

export interface FoundPlace {
  readonly name: string;
  /** ISO 3166, two letters. */
  readonly country: string;
  /** Postal code of a state of the US; else empty. */
  readonly region: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** IANA name. */
  readonly timeZone: string;
}

/** How well a name fits: the whole of it, its beginning, another spelling, a later word. */
const FITS = { whole: 64, beginning: 32, spelling: 24, word: 16 } as const;

/**
 * The places whose name begins so, best fit and most people first. What stands after a comma is the state or country: its code, or the
 * beginning of its name as `countryName` gives it. German ae, oe and ue are read as ä, ö and ü too.
 */
export function findPlaces(
  places: Places,
  typed: string,
  {
    most = 8,
    countryName = (code: string): string => code,
  }: { readonly most?: number; readonly countryName?: (code: string) => string } = {},
): readonly FoundPlace[] {
  const [first = '', ...rest] = typed.split(',');
  const name = foldName(first);
  const where = foldName(rest.join(' '));
  if (name === '') return [];
  const spellings = [...new Set([name, name.replaceAll(/([aou])e/g, '$1')])];
  const found: { readonly index: number; readonly rank: number }[] = [];
  for (let index = 0; index < places.names.length; index += 1) {
    const fit = Math.max(...spellings.map((each) => fitOf(places, index, each)));
    if (fit > 0 && isThere(places, index, where, countryName))
      found.push({ index, rank: fit + (places.sizes[index] ?? 0) });
  }
  return found
    .sort((one, other) => other.rank - one.rank)
    .slice(0, most)
    .map(({ index }) => placeAt(places, index));
}

function fitOf({ folded, spellings }: Places, index: number, typed: string): number {
  const name = folded[index] ?? '';
  if (name === typed) return FITS.whole;
  if (name.startsWith(typed)) return FITS.beginning;
  const others = spellings[index] ?? '';
  if (others.includes(`,${typed}`)) return FITS.spelling;
  return name.includes(` ${typed}`) ? FITS.word : 0;
}

function isThere({ countries, regions }: Places, index: number, where: string, countryName: (code: string) => string) {
  if (where === '') return true;
  const [country = '', region = ''] = [countries[index], regions[index]];
  return (
    region.toLowerCase().startsWith(where) ||
    country.toLowerCase() === where ||
    foldName(countryName(country)).startsWith(where)
  );
}

function placeAt(places: Places, index: number): FoundPlace {
  return {
    name: places.names[index] ?? '',
    country: places.countries[index] ?? '',
    region: places.regions[index] ?? '',
    latitudeDeg: places.latitudesDeg[index] ?? 0,
    longitudeDeg: places.longitudesDeg[index] ?? 0,
    elevationM: places.heightsM[index] ?? 0,
    timeZone: places.zones[index] ?? '',
  };
}
