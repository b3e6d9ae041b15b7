import { describe, expect, it } from 'vitest';
import { isApart, reserveLine, reserveOf } from '../../../src/elements/chart/reserve.ts';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import { fromSi } from '../../../src/engine/units.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { PlanSupply } from '../../../src/plan/schema/plan-schema.ts';
import { mixedGarden } from '../../support/small-plans.ts';

const seasonWith = (supply: PlanSupply) => computeSeason(mixedGarden({ supply }));
const main = { name: 'Main' };
const tank = { capacity: 500, start: 400, roofArea: 300 };

describe('reserveOf', () => {
  it('is nothing where the supply has no bound', () => {
    expect(reserveOf(seasonWith({ sources: [main] }))).toBeUndefined();
  });

  it('is the tank by the day, with each week’s end', () => {
    const season = seasonWith({ sources: [main], tank, allowance: { perSeason: 9000 } });
    const reserve = reserveOf(season);
    const level = seasonSupply(season).tank?.levelL ?? [];
    expect(reserve?.kind).toBe('tank');
    expect(reserve?.dailyLitres).toEqual(level);
    expect(reserve?.weeklyLitres[4]).toBe(level[34]);
    expect(fromSi(reserve?.mostLitres ?? 0, 'volume', 'us')).toBeCloseTo(500, 9);
  });

  it('is what the season has used of its allowance, else what the week has', () => {
    const season = seasonWith({ sources: [main], allowance: { perSeason: 9000, perWeek: 400 } });
    const reserve = reserveOf(season);
    expect(reserve?.kind).toBe('allowance');
    expect(reserve?.weeklyLitres.at(-1)).toBeCloseTo(
      seasonSupply(season).meteredL.reduce((sum, litres) => sum + litres, 0),
      6,
    );
    expect(reserveOf(seasonWith({ sources: [main], allowance: { perWeek: 400 } }))?.kind).toBe('weekly-allowance');
  });
});

describe('reserveLine', () => {
  it('runs in weeks and in the plan’s unit, on a scale that holds the allowance and what goes beyond it', () => {
    const reserve = { kind: 'allowance', weeklyLitres: Float64Array.of(100, 900), mostLitres: 500 } as const;
    expect(reserveLine(reserve, 'metric')).toEqual({
      kind: 'allowance',
      points: [
        { x: 1, y: 100 },
        { x: 2, y: 900 },
      ],
      bound: 500,
      most: 900,
    });
    const daily = { ...reserve, kind: 'tank', dailyLitres: Float64Array.of(7, 14) } as const;
    expect(reserveLine(daily, 'metric').points[1]).toEqual({ x: 2 / 7, y: 14 });
    expect([reserve, daily].map((each) => isApart(reserveLine(each, 'metric')))).toEqual([false, true]);
  });
});
