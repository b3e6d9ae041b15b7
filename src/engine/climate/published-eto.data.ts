import type { Names } from '../names.ts';
import type { PlaceOnEarth } from './great-circle-distance.ts';

/** Reference ET of one place, by month. */
export interface PublishedEto {
  readonly id: string;
  /** The place's. */
  readonly name: Names;
  /** Totals of the months, January first. */
  readonly etoMm: readonly number[];
  readonly source: string;
  /** Undefined where it holds for a region. */
  readonly at: PlaceOnEarth | undefined;
}

const MM_PER_INCH = 25.4;

const VACAVILLE = { source: 'municipal code of Vacaville, California, Table 14.27.030.A' };
const TITLE_23 = {
  source:
    'California Code of Regulations, Title 23, Appendix A; its monthly figures are from memory, not compared with the print',
};
const ZONES_SEEN = {
  source: 'California DWR and University of California Davis, Reference Evapotranspiration Zones (1999)',
};
const ZONES = { source: `${ZONES_SEEN.source}; its monthly figures are from memory, not compared with the print` };

/** Published in inches, turned into millimetres with the exact 25.4. */
function row(
  id: string,
  name: Names,
  { source }: { readonly source: string },
  inches: readonly number[],
  at?: PlaceOnEarth,
): PublishedEto {
  return { id, name, source, etoMm: inches.map((month) => month * MM_PER_INCH), at };
}

/** All of them in California. Coordinates to a hundredth of a degree, as GeoNames has them; those of Lagoon Valley, a part of Vacaville, from memory. */
const at = (latitudeDeg: number, longitudeDeg: number): PlaceOnEarth => ({ latitudeDeg, longitudeDeg });

/** The time zone of all of these places, which no other country shares. */
export const PUBLISHED_ETO_TIME_ZONE = 'America/Los_Angeles';

/** Reference ET zones of California, the first on top. */
const CALIFORNIA_ZONES = `
  0.93 1.4 2.48 3.3 4.03 4.5 4.65 4.03 3.3 2.48 1.2 0.62
  1.24 1.68 3.1 3.9 4.65 5.1 4.96 4.65 3.9 2.79 1.8 1.24
  1.86 2.24 3.72 4.8 5.27 5.7 5.58 5.27 4.2 3.41 2.4 1.86
  1.86 2.24 3.41 4.5 5.27 5.7 5.89 5.58 4.5 3.41 2.4 1.86
  0.93 1.68 2.79 4.2 5.58 6.3 6.51 5.89 4.5 3.1 1.5 0.93
  1.86 2.24 3.41 4.8 5.58 6.3 6.51 6.2 4.8 3.72 2.4 1.86
  0.62 1.4 2.48 3.9 5.27 6.3 7.44 6.51 4.8 2.79 1.2 0.62
  1.24 1.68 3.41 4.8 6.2 6.9 7.44 6.51 5.1 3.41 1.8 0.93
  2.17 2.8 4.03 5.1 5.89 6.6 7.44 6.82 5.7 4.03 2.7 1.86
  0.93 1.68 3.1 4.5 5.89 7.2 8.06 7.13 5.1 3.1 1.5 0.93
  1.55 2.24 3.1 4.5 5.89 7.2 8.06 7.44 5.7 3.72 2.1 1.55
  1.24 1.96 3.41 5.1 6.82 7.8 8.06 7.13 5.4 3.72 1.8 0.93
  1.24 1.96 3.1 4.8 6.51 7.8 8.99 7.75 5.7 3.72 1.8 0.93
  1.55 2.24 3.72 5.1 6.82 7.8 8.68 7.75 5.7 4.03 2.1 1.55
  1.24 2.24 3.72 5.7 7.44 8.1 8.68 7.75 5.7 4.03 2.1 1.24
  1.55 2.52 4.03 5.7 7.75 8.7 9.3 8.37 6.3 4.34 2.4 1.55
  1.86 2.8 4.65 6 8.06 9 9.92 8.68 6.6 4.34 2.7 1.86
  2.48 3.36 5.27 6.9 8.68 9.6 9.61 8.68 6.9 4.96 3 2.17
`
  .trim()
  .split('\n')
  .map((line) => line.trim().split(' ').map(Number));

/** Zone 14 was read month for month. */
function zoneRow(zone: number, inches: readonly number[]): PublishedEto {
  const name = { en: `California, reference ET zone ${zone}` };
  return row(`california-zone-${zone}`, name, zone === 14 ? ZONES_SEEN : ZONES, inches);
}

/** Monthly reference ET as governments publish it. Rain is not in these tables: it is given beside them. */
export const PUBLISHED_ETO: readonly PublishedEto[] = [
  row(
    'vacaville',
    { en: 'Vacaville, California' },
    VACAVILLE,
    [0.7, 1.4, 3.2, 5.2, 6.3, 7.6, 8.2, 7.2, 5.5, 4.3, 1.6, 1.1],
    at(38.36, -121.99),
  ),
  row(
    'lagoon-valley',
    { en: 'Lagoon Valley, California' },
    VACAVILLE,
    [1.1, 1.7, 2.8, 4, 5.5, 6.1, 7.8, 6, 4.8, 3.1, 1.4, 0.9],
    at(38.33, -122.01),
  ),
  row(
    'fresno',
    { en: 'Fresno, California' },
    TITLE_23,
    [0.9, 1.7, 3.3, 4.8, 6.7, 7.8, 8.4, 7.1, 5.2, 3.2, 1.4, 0.6],
    at(36.75, -119.77),
  ),
  row(
    'san-francisco',
    { en: 'San Francisco, California' },
    TITLE_23,
    [1.5, 1.3, 2.4, 3, 3.7, 4.6, 4.9, 4.8, 4.1, 2.8, 1.3, 0.7],
    at(37.77, -122.42),
  ),
  row(
    'los-angeles',
    { en: 'Los Angeles, California' },
    TITLE_23,
    [2.2, 2.7, 3.7, 4.7, 5.5, 5.8, 6.2, 5.9, 5, 3.9, 2.6, 1.9],
    at(34.05, -118.24),
  ),
  row(
    'san-diego',
    { en: 'San Diego, California' },
    TITLE_23,
    [2.1, 2.4, 3.4, 4.6, 5.1, 5.3, 5.7, 5.6, 4.3, 3.6, 2.4, 2],
    at(32.72, -117.16),
  ),
  row(
    'sacramento',
    { en: 'Sacramento, California' },
    TITLE_23,
    [1, 1.8, 3.2, 4.7, 6.4, 7.7, 8.4, 7.2, 5.4, 3.7, 1.7, 0.9],
    at(38.58, -121.49),
  ),
  ...CALIFORNIA_ZONES.map((inches, index) => zoneRow(index + 1, inches)),
];
