import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { SUPPLY_FIELDS } from '../../../src/engine/season/season.ts';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import { tankSeason } from '../../../src/engine/supply/tank.ts';
import { toSi } from '../../../src/engine/units.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { deepFrozen } from '../../support/deep-frozen.ts';
import { arbitrarySuppliedGarden } from '../../support/garden-supply.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';

const sum = (values: ArrayLike<number>) => Array.from(values).reduce((total, value) => total + value, 0);

describe('the supply over a season', () => {
  it('of the same season is the same object, and leaves the season as it is', () => {
    const season = deepFrozen(computeSeason(mixedGarden()));
    expect(seasonSupply(season)).toBe(seasonSupply(season));
  });

  it('draws each week what the season says, on any garden', () => {
    fc.assert(
      fc.property(arbitrarySuppliedGarden({ mostWeeks: 8 }), (garden) => {
        const season = runSeason(garden);
        const { drawL } = seasonSupply(season);
        for (let week = 0; week < garden.span.weeks; week += 1) {
          const litres = season.totals.figures.at(SUPPLY_FIELDS.litres, week);
          expect(sum(drawL.slice(7 * week, 7 * week + 7))).toBeCloseTo(litres, 6);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('without a tank meters all of it and has no allowance to keep', () => {
    const season = computeSeason(oneBed());
    const { meteredL, tank, allowance, drawL } = seasonSupply(season);
    expect(sum(meteredL)).toBeCloseTo(sum(drawL), 9);
    expect(sum(meteredL)).toBeGreaterThan(0);
    expect([tank, allowance]).toEqual([undefined, undefined]);
  });

  it('counts the weeks over an allowance: 600 gal a week in the mixed garden', () => {
    const season = computeSeason(mixedGarden());
    const { allowance, meteredL } = seasonSupply(season);
    const over = [...meteredL.keys()].filter((week) => (meteredL[week] as number) > toSi(600, 'volume', 'us'));
    expect(allowance?.weeksOver).toEqual(over);
    expect(allowance?.seasonLeftL).toBeUndefined();
  });
});

describe('the tank over a season', () => {
  const tanked = arbitrarySuppliedGarden({ mostWeeks: 8 }).filter(({ supply }) => supply.tank !== undefined);

  it('keeps its water: roof + besides - draw - overflow = change, day by day to 1e-9; never above its rim', () => {
    let overflowed = 0;
    let lacked = 0;
    fc.assert(
      fc.property(tanked, (garden) => {
        const season = runSeason(garden);
        const { tank, drawL } = seasonSupply(season);
        let level = garden.supply.tank?.startLitres as number;
        tank?.levelL.forEach((next, day) => {
          const at = (values: Float64Array) => values[day] as number;
          const change = at(tank.roofL) + at(tank.besidesL) - at(drawL) - at(tank.overflowL);
          expect(next - level).toBeCloseTo(change, 9);
          expect(next).toBeGreaterThanOrEqual(0);
          expect(next).toBeLessThanOrEqual(tank.capacityL);
          level = next;
          if (at(tank.overflowL) > 0) overflowed += 1;
          if (at(tank.besidesL) > 0) lacked += 1;
        });
      }),
      { numRuns: 150 },
    );
    expect(Math.min(overflowed, lacked)).toBeGreaterThan(50);
  });

  it('fills with all the rain that falls on its roof, less what runs off elsewhere', () => {
    fc.assert(
      fc.property(tanked, (garden) => {
        const season = runSeason(garden);
        const { roofAreaM2 = 0, runoffCoefficient = 0 } = garden.supply.tank ?? {};
        const roofL = seasonSupply(season).tank?.roofL ?? [];
        expect(sum(roofL)).toBeCloseTo(sum(season.weather.rain.mm) * roofAreaM2 * runoffCoefficient, 6);
      }),
      { numRuns: 50 },
    );
  });

  it('of the size that lasts never lacks water; where none lasts some is missing whatever its size', () => {
    const seen = { lasts: 0, none: 0 };
    fc.assert(
      fc.property(tanked, (garden) => {
        const { tank, drawL } = seasonSupply(runSeason(garden));
        if (tank === undefined) return;
        const { sizeThatLasts: size, roofL } = tank;
        const capacityL = size.lasts ? size.capacityL : 1e12;
        const startL = garden.supply.tank?.startLitres as number;
        const { shortL } = tankSeason({ capacityL, startL, roofL, drawL, mainsTopUp: false });
        expect(sum(shortL)).toBeCloseTo(size.lasts ? 0 : size.missingL, 6);
        seen[size.lasts ? 'lasts' : 'none'] += 1;
      }),
      { numRuns: 150 },
    );
    expect(Math.min(seen.lasts, seen.none)).toBeGreaterThan(10);
  });

  it('gives before the source does: only what it lacks is metered', () => {
    fc.assert(
      fc.property(tanked, (garden) => {
        const { tank, meteredL } = seasonSupply(runSeason(garden));
        expect(sum(meteredL)).toBeCloseTo(sum(tank?.besidesL ?? []), 6);
        const other = garden.supply.sources.length > 0 ? tank?.shortL : tank?.mainsL;
        expect(sum(other ?? [])).toBe(0);
      }),
      { numRuns: 50 },
    );
  });
});
