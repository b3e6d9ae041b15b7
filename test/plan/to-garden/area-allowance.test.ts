import { describe, expect, it } from 'vitest';
import { seasonSupply } from '../../../src/engine/supply/season-supply.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { applyEdit } from '../../../src/plan/edits/apply-edit.ts';
import { gardenOf } from '../../../src/plan/garden-of.ts';
import type { Plan, PlanSupply } from '../../../src/plan/schema/plan-schema.ts';
import { oneBed, tomatoes, zone } from '../../support/small-plans.ts';

const LITRES_PER_GALLON = 3.785411784;

/** Weeks from June 7 to July 4. */
function allowedGallons(allowance: NonNullable<PlanSupply['allowance']>, plantings: readonly object[] = [{}]) {
  const beds = plantings.map((change, place) => tomatoes({ id: `bed-${place}`, ...change }));
  const plan: Plan = oneBed({ supply: { sources: [], allowance }, zones: [zone({ plantings: beds })] });
  return (gardenOf(plan).supply.allowanceLitresPerSeason ?? Number.NaN) / LITRES_PER_GALLON;
}

const bed = (area: number, inGround?: object) => ({ extent: { kind: 'area' as const, area }, inGround });

describe('an allowance by area', () => {
  it('is so many gallons on each square foot that is planted: 12 on 120 + 30 are 1,800', () => {
    expect(allowedGallons({ perArea: 12 }, [bed(120), bed(30)])).toBeCloseTo(1800, 9);
  });

  it('counts a bed once on which a crop follows another, and none that is out of the ground all season', () => {
    const early = bed(120, { from: '2027-05-10', to: '2027-06-20' });
    const late = bed(120, { from: '2027-06-21' });
    expect(allowedGallons({ perArea: 12 }, [early, late, bed(30)])).toBeCloseTo(1800, 9);
    const both = bed(120, { from: '2027-06-20' });
    expect(allowedGallons({ perArea: 12 }, [early, both, bed(30)])).toBeCloseTo(3240, 9);
    const before = bed(500, { from: '2027-05-10', to: '2027-06-06' });
    expect(allowedGallons({ perArea: 12 }, [early, late, bed(30), before])).toBeCloseTo(1800, 9);
  });

  it('beside one of the season is the lesser of both', () => {
    expect(allowedGallons({ perArea: 12, perSeason: 1000 }, [bed(120)])).toBeCloseTo(1000, 9);
    expect(allowedGallons({ perArea: 12, perSeason: 2000 }, [bed(120)])).toBeCloseTo(1440, 9);
    expect(allowedGallons({ perArea: 0 }, [bed(120)])).toBe(0);
  });

  it('is what the season is held against, in either units', () => {
    const plan = oneBed({ supply: { sources: [], allowance: { perArea: 1 } } });
    const left = (of: Plan) => seasonSupply(computeSeason(of)).allowance?.seasonLeftL;
    const season = computeSeason(plan);
    const used = seasonSupply(season).allowance?.cumulativeL.at(-1) ?? Number.NaN;
    expect(left(plan)).toBeCloseTo(120 * LITRES_PER_GALLON - used, 9);
    const metric = applyEdit(plan, { type: 'convert-units', units: 'metric' });
    // 1 gal on a square foot is 231/144 in, 40.75 mm.
    expect(metric.supply?.allowance?.perArea).toBeCloseTo((231 / 144) * 25.4, 2);
    expect(left(metric)).toBeCloseTo(left(plan) ?? Number.NaN, 0);
  });

  it('is the same supply while nothing that it hangs on changes', () => {
    const plan = oneBed({ supply: { sources: [], allowance: { perArea: 1 } } });
    const renamed = applyEdit(plan, { type: 'rename-plan', name: 'Another name' });
    expect(gardenOf(renamed).supply).toBe(gardenOf(plan).supply);
  });
});
