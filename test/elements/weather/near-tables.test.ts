/** Published tables beside the places of GeoNames: which of them is near, and which is not offered as if it fitted. */
import { beforeAll, describe, expect, it } from 'vitest';
import { NEAR_KM } from '../../../src/elements/weather/near-km.ts';
import { tablesBySite } from '../../../src/elements/weather/near-tables.ts';
import { PUBLISHED_ETO, PUBLISHED_ETO_TIME_ZONE } from '../../../src/engine/climate/published-eto.data.ts';
import { type FoundPlace, findPlaces } from '../../../src/exchange/places/find-places.ts';
import { placesText } from '../../../src/exchange/places/load-places.ts';
import { type Places, placesSteps } from '../../../src/exchange/places/unpack-places.ts';
import type { PlanSite } from '../../../src/plan/schema/plan-schema.ts';

let places: Places;

beforeAll(async () => {
  const steps = placesSteps(await placesText());
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  places = step.value;
});

const found = (typed: string): FoundPlace => {
  const [place] = findPlaces(places, typed, { most: 1 });
  if (place === undefined) throw new Error(`There is no ${typed}.`);
  return place;
};

const siteOf = ({ latitudeDeg, longitudeDeg, timeZone }: FoundPlace): PlanSite => ({
  ...{ latitude: latitudeDeg, longitude: longitudeDeg, timeZone },
  ...{ soil: 'loam', climate: { source: '', rain: [], eto: [] } },
});

const tables = (typed: string) => {
  const all = tablesBySite(siteOf(found(typed)));
  if (all === undefined) throw new Error('Its place is known.');
  return all;
};

describe('tablesBySite', () => {
  it('has each place where GeoNames has it', () => {
    const towns = PUBLISHED_ETO.filter(({ at, id }) => at !== undefined && id !== 'lagoon-valley');
    expect(towns).toHaveLength(6);
    for (const { name, at } of towns) {
      const { latitudeDeg, longitudeDeg } = found(name.en.replace('California', 'CA'));
      expect({ latitudeDeg, longitudeDeg }).toEqual(at);
    }
  });

  it.each([
    ['Davis, CA', ['sacramento', 'lagoon-valley', 'vacaville']],
    ['Oakland, CA', ['san-francisco', 'lagoon-valley', 'vacaville']],
    ['Santa Monica, CA', ['los-angeles']],
  ])('has the nearest first in %s', (typed, ids) => {
    const { near, far } = tables(typed);
    expect(near.map(({ table }) => table.id).toSorted()).toEqual(ids.toSorted());
    expect(near[0]?.km).toBeLessThanOrEqual(NEAR_KM);
    const distances = [...near, ...far].map(({ km }) => km);
    expect(distances).toEqual(distances.toSorted((one, other) => one - other));
    expect(near.length + far.length).toBe(7);
  });

  // Tijuana is 25 km from San Diego, and in Mexico.
  it.each(['Seattle, WA', 'Phoenix, AZ', 'Tijuana, MX', 'Lyon, FR', 'Sydney, AU'])('has none near %s', (typed) => {
    const { near, far, regions } = tables(typed);
    expect(near).toEqual([]);
    expect(far).toHaveLength(7);
    expect(regions).toEqual([]);
  });

  it('offers the zones of California to every place there, and knows its time zone for one of the United States alone', () => {
    const fresno = found('Fresno, CA');
    let [inCalifornia, offered] = [0, 0];
    const countries = new Set<string>();
    for (const [index, country] of places.countries.entries()) {
      if (places.zones[index] === PUBLISHED_ETO_TIME_ZONE) countries.add(country);
      if (country !== 'US' || places.regions[index] !== 'CA') continue;
      inCalifornia += 1;
      const [latitudeDeg = 0, longitudeDeg = 0] = [places.latitudesDeg[index], places.longitudesDeg[index]];
      const place = { ...fresno, latitudeDeg, longitudeDeg };
      offered += tablesBySite(siteOf(place))?.regions.length === 18 ? 1 : 0;
    }
    expect([...countries]).toEqual(['US']);
    expect(inCalifornia).toBeGreaterThan(300);
    expect(offered).toBe(inCalifornia);
  });

  it('knows no distance while the place is not named', () => {
    expect(tablesBySite({ latitude: 0, soil: 'loam', climate: { source: '', rain: [], eto: [] } })).toBeUndefined();
  });
});
