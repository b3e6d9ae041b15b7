/** The packed places as columns, each folded for the search, in steps. */
import { foldName } from './fold-name.ts';

export interface Places {
  readonly names: readonly string[];
  /** Folded; `spellings` are other ones, each after a comma. */
  readonly folded: readonly string[];
  readonly spellings: readonly string[];
  /** ISO 3166, two letters. */
  readonly countries: readonly string[];
  /** Postal code of a state of the US; else empty. */
  readonly regions: readonly string[];
  readonly zones: readonly string[];
  readonly latitudesDeg: Float64Array;
  readonly longitudesDeg: Float64Array;
  readonly heightsM: Float64Array;
  /** Doublings of the number of people. */
  readonly sizes: Uint8Array;
}

const AT_A_STRETCH = 1000;
const HUNDREDTH = 100;
const SMALLEST = 'a'.charCodeAt(0);

/** `text`: what `.build/pack-places.ts` packs, one column a line. */
export function* placesSteps(text: string): Generator<void, Places> {
  const [
    zoneNames = '',
    names = '',
    countries = '',
    regions = '',
    zones = '',
    latitudes = '',
    longitudes = '',
    heights = '',
    sizes = '',
    spellings = '',
  ] = text.split('\n');
  const ofName = names.split('\t');
  yield;
  const folded: string[] = [];
  for (const [index, name] of ofName.entries()) {
    folded.push(foldName(name));
    if (index % AT_A_STRETCH === 0) yield;
  }
  const zoneList = zoneNames.split('\t');
  const zoneIndexes = summed(zones);
  yield;
  const latitudesDeg = summed(latitudes).map((hundredths) => hundredths / HUNDREDTH);
  const longitudesDeg = Float64Array.from(longitudes.split(' '), (hundredths) => Number(hundredths) / HUNDREDTH);
  yield;
  return {
    names: ofName,
    folded,
    spellings: spellings.split('\t').map((each) => (each === '' ? '' : `,${each}`)),
    countries: ofName.map((_, index) => countries.slice(2 * index, 2 * index + 2)),
    regions: regions.split('\t'),
    zones: Array.from(zoneIndexes, (zone) => zoneList[zone] ?? ''),
    latitudesDeg,
    longitudesDeg,
    heightsM: Float64Array.from(heights.split(' '), (tens) => 10 * Number(tens)),
    sizes: Uint8Array.from(sizes, (letter) => letter.charCodeAt(0) - SMALLEST),
  };
}

/** Each value stands as its step from the one before. */
function summed(steps: string): Float64Array {
  let sum = 0;
  return Float64Array.from(steps.split(' '), (step) => {
    sum += Number(step);
    return sum;
  });
}
