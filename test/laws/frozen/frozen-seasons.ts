/** Plans with the digest that their season had when it was written down, as lines of JSON, compressed. */
import { brotliCompressSync, brotliDecompressSync, constants } from 'node:zlib';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { readPlan } from '../../../src/plan/reading/read-plan.ts';
import { type Pins, seasonDigest, zonePins } from './season-digest.ts';

/** What is computed of a plan: sums by name, of the whole season and, where they are told apart, of each zone. */
export interface Digests {
  readonly exact: string;
  readonly season: Pins;
  readonly zones: readonly Pins[];
}

/** The same as it lies in the file: sums alone, by the names in its first line. */
export interface FrozenSeason {
  readonly name: string;
  /** A plan file's content. */
  readonly plan: unknown;
  readonly exact: string;
  readonly season: Sums;
  readonly zones: readonly Sums[];
}

export type Sums = ReadonlyMap<string, number>;

/** A zone's own sums are kept of plans that people look at. */
export function digestsOf(plan: unknown, byZone: boolean): Digests {
  const read = readPlan(JSON.stringify(plan));
  if (!read.ok) throw new Error(`the plan is refused: ${JSON.stringify(read.faults)}`);
  const season = computeSeason(read.plan);
  const { exact, pins } = seasonDigest(season);
  return { exact, season: pins, zones: byZone ? season.zones.map((zone) => zonePins([zone])) : [] };
}

export function packed(seasons: readonly FrozenSeason[]): Buffer {
  const names = [
    ...new Set(seasons.flatMap(({ season, zones }) => [season, ...zones].flatMap((of) => [...of.keys()]))),
  ];
  const numbered = (sums: Sums) => [...sums].map(([name, sum]) => [names.indexOf(name), sum]);
  const lines = seasons.map(({ season, zones, ...rest }) => ({
    ...rest,
    season: numbered(season),
    zones: zones.map(numbered),
  }));
  const text = [names, ...lines].map((line) => JSON.stringify(line)).join('\n');
  const { BROTLI_PARAM_QUALITY, BROTLI_PARAM_LGWIN, BROTLI_PARAM_SIZE_HINT } = constants;
  const params = { [BROTLI_PARAM_QUALITY]: 11, [BROTLI_PARAM_LGWIN]: 24, [BROTLI_PARAM_SIZE_HINT]: text.length };
  return brotliCompressSync(text, { params });
}

type Numbered = readonly (readonly [number, number])[];

export function unpacked(bytes: Uint8Array): readonly FrozenSeason[] {
  const [first = '[]', ...lines] = brotliDecompressSync(bytes).toString('utf8').split('\n');
  const names: readonly string[] = JSON.parse(first);
  const named = (sums: Numbered) => new Map(sums.map(([index, sum]) => [names[index] ?? '', sum]));
  return lines.map((line) => {
    const { season, zones, ...rest } = JSON.parse(line);
    return { ...rest, season: named(season), zones: zones.map(named) };
  });
}
