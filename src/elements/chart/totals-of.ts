import { type Cumulative, cumulative } from '../../engine/season/cumulative.ts';
import type { Season, SeasonTotals, ZoneSeason } from '../../engine/season/season.ts';
import type { UnitSystem } from '../../engine/units.ts';
import type { Selection } from '../shared/plan-context.ts';
import { type ChartLines, chartLines } from './chart-lines.ts';

const totals = new WeakMap<ZoneSeason | SeasonTotals, Cumulative>();
const lines = new WeakMap<Cumulative, Map<UnitSystem, ChartLines>>();

/** Running totals, added up once for a season's block. */
export function totalsOf(block: ZoneSeason | SeasonTotals): Cumulative {
  return remembered(totals, block, () => cumulative(block));
}

/** Lines of the running totals: the same object for the same totals and units. */
export function linesOf(sums: Cumulative, units: UnitSystem): ChartLines {
  const byUnits = remembered(lines, sums, () => new Map<UnitSystem, ChartLines>());
  const known = byUnits.get(units) ?? chartLines(sums, units);
  byUnits.set(units, known);
  return known;
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
