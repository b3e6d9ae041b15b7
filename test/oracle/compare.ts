/** Engine and oracle side by side, figure by figure. */
import type { Garden } from '../../src/engine/garden.ts';
import { plantingWeek } from '../../src/engine/season/planting-week.ts';
import { runSeason } from '../../src/engine/season/run-season.ts';
import { zoneWeek } from '../../src/engine/season/zone-week.ts';
import { simulate, type ZoneResult } from './simulate.ts';

export interface Difference {
  readonly zone: string;
  /** Undefined where it is the zone's own figure. */
  readonly planting: string | undefined;
  readonly week: number;
  readonly figure: string;
  readonly engine: number | string;
  readonly oracle: number | string;
}

export interface Comparison {
  readonly oracle: readonly ZoneResult[];
  readonly figures: number;
  readonly differences: readonly Difference[];
  /** Zones left out of them: they differ, and one of their decisions lay within rounding of its limit. */
  readonly setAside: readonly string[];
}

/**
 * Compares every figure of every week, to a millionth of the larger side and never finer than a millionth; words, days, masks and
 * cycles are whole numbers and so the same or not.
 */
export function compare(garden: Garden): Comparison {
  const season = runSeason(garden);
  const found: Difference[] = [];
  let figures = 0;
  const look = (place: Omit<Difference, 'figure' | 'engine' | 'oracle'>, engine: object, oracle: object) => {
    const ours = new Map<string, number | string>(Object.entries(engine));
    for (const [figure, theirs] of Object.entries(oracle) as [string, number | string][]) {
      figures += 1;
      const own = ours.get(figure);
      if (own === undefined) throw new Error(`the engine has no ${figure}`);
      if (!agree(own, theirs)) found.push({ ...place, figure, engine: own, oracle: theirs });
    }
  };
  const oracle = simulate(garden);
  oracle.forEach((oracleZone, z) => {
    const engineZone = season.zones[z];
    if (engineZone === undefined) throw new Error(`the engine has no zone ${oracleZone.id}`);
    for (let week = 0; week < garden.span.weeks; week++) {
      const place = { zone: oracleZone.id, planting: undefined, week };
      look(place, zoneWeek(engineZone, week), oracleZone.weeks[week] ?? {});
      oracleZone.plantings.forEach(({ id, weeks }, p) => {
        const enginePlanting = engineZone.plantings[p];
        if (enginePlanting === undefined) throw new Error(`the engine has no planting ${id}`);
        look({ ...place, planting: id }, plantingWeek(enginePlanting, week), weeks[week] ?? {});
      });
    }
  });
  const mayDiffer = oracle.filter(({ nearTies }) => nearTies > 0).map(({ id }) => id);
  const differing = new Set(found.map(({ zone }) => zone));
  return {
    oracle,
    figures,
    differences: found.filter(({ zone }) => !mayDiffer.includes(zone)),
    setAside: mayDiffer.filter((id) => differing.has(id)),
  };
}

function agree(one: number | string, other: number | string): boolean {
  if (typeof one === 'string' || typeof other === 'string') return one === other;
  return Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one), Math.abs(other));
}
