import { type Cumulative, cumulative } from '../../engine/season/cumulative.ts';
import type { Season, SeasonTotals, ZoneSeason } from '../../engine/season/season.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { YearBand } from '../../engine/years/year-band.ts';
import type { Selection } from '../../store/plan-view.ts';
import { type ChartLines, chartLines } from './chart-lines.ts';
import { type Reserve, type ReserveLine, reserveLine, reserveOf } from './reserve.ts';
import { type BandLines, bandLines } from './year-band-lines.ts';

const totals = new WeakMap<ZoneSeason | SeasonTotals, Cumulative>();
const lines = new WeakMap<Cumulative, Map<UnitSystem, ChartLines>>();

const reserves = new WeakMap<Season, { readonly reserve: Reserve | undefined }>();
const reserveLines = new WeakMap<Reserve, Map<UnitSystem, ReserveLine>>();
const bands = new WeakMap<YearBand, Map<UnitSystem, BandLines>>();

/** Running totals, added up once for a season's block. */
export function totalsOf(block: ZoneSeason | SeasonTotals): Cumulative {
  return remembered(totals, block, () => cumulative(block));
}

/** Lines of the running totals: the same object for the same totals and units. */
export function linesOf(sums: Cumulative, units: UnitSystem): ChartLines {
  return inUnits(lines, sums, units, () => chartLines(sums, units));
}

/** What a season's supply has in reserve: the same object for the same season. */
export function reserveIn(season: Season): Reserve | undefined {
  return remembered(reserves, season, () => ({ reserve: reserveOf(season) })).reserve;
}

/** Its line, likewise. */
export function reserveLineOf(reserve: Reserve | undefined, units: UnitSystem): ReserveLine | undefined {
  return reserve && inUnits(reserveLines, reserve, units, () => reserveLine(reserve, units));
}

/** Lines of the years, likewise. */
export function bandLinesOf(band: YearBand, units: UnitSystem): BandLines {
  return inUnits(bands, band, units, () => bandLines(band, units));
}

/** The selected zone, where there is one in the season. */
export function selectedZone(season: Season, selection: Selection): ZoneSeason | undefined {
  return season.zones.find(({ zone }) => zone.id === selection.zone);
}

function remembered<K extends object, V>(memory: WeakMap<K, V>, key: K, make: () => V): V {
  const known = memory.get(key) ?? make();
  memory.set(key, known);
  return known;
}

function inUnits<K extends object, V>(
  memory: WeakMap<K, Map<UnitSystem, V>>,
  key: K,
  units: UnitSystem,
  make: () => V,
): V {
  const byUnits = remembered(memory, key, () => new Map<UnitSystem, V>());
  const known = byUnits.get(units) ?? make();
  byUnits.set(units, known);
  return known;
}
