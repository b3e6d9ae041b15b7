/** How notices are found: in steps, and those of a zone once for as long as nothing that they hang on is another. */
import type { Season, ZoneSeason } from '../../engine/season/season.ts';
import type { FoundNotice } from './notice.ts';

/** In the garden's order. Yields what a step took, in zones looked at. */
export type NoticeFinder = (season: Season) => Generator<number, readonly FoundNotice[]>;

type Find = (season: Season) => readonly FoundNotice[];

/** Notices of the garden as a whole. */
export function inGarden(find: Find): NoticeFinder {
  return function* (season) {
    yield season.zones.length;
    return find(season);
  };
}

/** Rough: what a kind of notice looks through of a planting takes as long as looking at so many zones. */
const PLANTING_EFFORT = 20;

export interface InZones {
  /** Of a season with one zone alone. */
  readonly find: Find;
  /** While it is the same object, and what `hangsOn` gives is the same, the zone has the same notices. */
  readonly keptBy: (zone: ZoneSeason) => object;
  readonly hangsOn: (season: Season, zone: ZoneSeason) => readonly unknown[];
}

/** Notices of each zone by itself. */
export function inZones({ find, keptBy, hangsOn }: InZones): NoticeFinder {
  const known = new WeakMap<object, { readonly on: readonly unknown[]; readonly found: readonly FoundNotice[] }>();
  return function* (season) {
    const all: FoundNotice[] = [];
    for (const zone of season.zones) {
      const on = hangsOn(season, zone);
      const before = known.get(keptBy(zone));
      const isKept = before?.on.every((part, index) => Object.is(part, on[index])) === true;
      const found = isKept ? before.found : find({ ...season, zones: [zone] });
      if (!isKept) {
        known.set(keptBy(zone), { on, found });
        yield PLANTING_EFFORT * zone.plantings.length;
      }
      for (const notice of found) all.push(notice);
    }
    return all;
  };
}

/** Of a zone's season: its figures, week by week. */
export const ofSeason = (zone: ZoneSeason): object => zone;

/** Of what grows and lies in a zone, whatever was watered. */
export const ofGround = (zone: ZoneSeason): object => zone.zone.plantings;
