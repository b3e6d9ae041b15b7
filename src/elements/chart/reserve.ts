/** What the supply has in reserve: the tank's level, or how much of an allowance is used. */
import type { Season } from '../../engine/season/season.ts';
import { seasonSupply } from '../../engine/supply/season-supply.ts';
import { fromSi, type UnitSystem } from '../../engine/units.ts';
import type { ChartPoint } from './chart-lines.ts';

export interface Reserve {
  readonly kind: 'tank' | 'allowance' | 'weekly-allowance';
  /** Litres at the end of each week: in the tank, used since the season began, or used in the week. */
  readonly weeklyLitres: Float64Array;
  /** Litres at the end of each day, where they are known by the day. */
  readonly dailyLitres?: Float64Array | undefined;
  /** What the tank holds, or the allowance. */
  readonly mostLitres: number;
}

/** A tank goes before an allowance, that of the season before that of a week. Nothing where the supply is unbounded. */
export function reserveOf(season: Season): Reserve | undefined {
  const { allowanceLitresPerSeason, allowanceLitresPerWeek, tank: own } = season.garden.supply;
  // Nothing is worked out of a supply that nothing bounds: in a large garden that takes a while.
  if (own === undefined && allowanceLitresPerSeason === undefined && allowanceLitresPerWeek === undefined) {
    return undefined;
  }
  const { tank, allowance, meteredL } = seasonSupply(season);
  if (tank !== undefined) {
    const weeklyLitres = meteredL.map((_, week) => tank.levelL[7 * week + 6] as number);
    return { kind: 'tank', weeklyLitres, dailyLitres: tank.levelL, mostLitres: tank.capacityL };
  }
  if (allowance !== undefined && allowanceLitresPerSeason !== undefined) {
    return { kind: 'allowance', weeklyLitres: allowance.cumulativeL, mostLitres: allowanceLitresPerSeason };
  }
  if (allowanceLitresPerWeek === undefined) return undefined;
  return { kind: 'weekly-allowance', weeklyLitres: meteredL, mostLitres: allowanceLitresPerWeek };
}

/** The reserve as it is drawn, in the plan's unit. */
export interface ReserveLine {
  readonly kind: Reserve['kind'];
  readonly points: readonly ChartPoint[];
  /** The tank's size, or the allowance. */
  readonly bound: number;
  /** The greater of the bound and all that is drawn. */
  readonly most: number;
}

/** Whether it stands in a drawing of its own: the allowance of a season is held against the meter, on the same scale. */
export function isApart(reserve: ReserveLine | undefined): reserve is ReserveLine {
  return reserve !== undefined && reserve.kind !== 'allowance';
}

export function reserveLine({ kind, weeklyLitres, dailyLitres, mostLitres }: Reserve, units: UnitSystem): ReserveLine {
  const volume = (litres: number) => fromSi(litres, 'volume', units);
  const [litres, daysApart] = dailyLitres === undefined ? [weeklyLitres, 7] : [dailyLitres, 1];
  const points = Array.from(litres, (value, index) => ({ x: ((index + 1) * daysApart) / 7, y: volume(value) }));
  const bound = volume(mostLitres);
  return { kind, points, bound, most: Math.max(bound, ...points.map(({ y }) => y)) };
}
